// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.Finding;
import muralbench.export.Exporter;
import muralbench.export.ExporterRegistry;
import muralbench.extensions.internal.ContributedObjects;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.core.runtime.IExtensionRegistry;

/**
 * The bonds and exporters of the program together with those that other plug-ins contribute through the extension
 * points {@code muralbench.extensions.bonds} and {@code muralbench.extensions.exporters}. A contribution that cannot be
 * used (its class is missing or of another type, its constructor throws, its name is taken) is left out and reported;
 * the others work as if it were not there.
 *
 * @param bonds all bonds that can be used, the program's own first
 * @param exporters all exporters that can be used, the program's own first
 * @param problems one finding for every contribution left out; the place is the id of the plug-in
 */
public record Contributions(BondRegistry bonds, ExporterRegistry exporters, List<Finding> problems) {
  /** The extension point for bonds. */
  public static final String BONDS = "muralbench.extensions.bonds";
  /** The extension point for exporters. */
  public static final String EXPORTERS = "muralbench.extensions.exporters";

  public Contributions {
    problems = List.copyOf(problems);
  }

  /** Reads both extension points. */
  public static Contributions of(IExtensionRegistry extensions) {
    List<Finding> problems = new ArrayList<>();
    return new Contributions(bonds(extensions, problems), exporters(extensions, problems), problems);
  }

  /** All bonds that can be used; see {@link #of} for what could not. */
  public static BondRegistry bonds(IExtensionRegistry extensions) {
    return bonds(extensions, new ArrayList<>());
  }

  /** All exporters that can be used; see {@link #of} for what could not. */
  public static ExporterRegistry exporters(IExtensionRegistry extensions) {
    return exporters(extensions, new ArrayList<>());
  }

  private static BondRegistry bonds(IExtensionRegistry extensions, List<Finding> problems) {
    BondRegistry standard = BondRegistry.standard();
    List<String> taken = standard.all().stream().map(Bond::kind).toList();
    ContributedObjects<Bond> contributed = new ContributedObjects<>(BONDS, Bond.class, Bond::kind, Bond::label);
    return standard.with(contributed.read(extensions, taken, problems));
  }

  private static ExporterRegistry exporters(IExtensionRegistry extensions, List<Finding> problems) {
    ExporterRegistry standard = ExporterRegistry.standard();
    List<String> taken = standard.all().stream().map(Exporter::id).toList();
    ContributedObjects<Exporter> contributed =
        new ContributedObjects<>(EXPORTERS, Exporter.class, Exporter::id, Exporter::label);
    return standard.with(contributed.read(extensions, taken, problems));
  }
}
