// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import muralbench.app.internal.Pictures;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.export.Exporter;
import muralbench.export.Paper;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** What was chosen in the export wizard the last time. */
final class LastChoices {
  private static final String PAPER = "paper";
  private static final String UNCHECKED = "unchecked";

  private final Preferences preferences;

  LastChoices(Preferences preferences) {
    this.preferences = preferences;
  }

  static LastChoices ofWorkbench() {
    return new LastChoices(InstanceScope.INSTANCE.getNode(Pictures.BUNDLE).node("export"));
  }

  /** The paper of the last time; the first time letter for inches and A4 for millimetres. */
  Paper paper(LengthUnit unit) {
    return Paper.find(preferences.get(PAPER, "")).orElse(unit == LengthUnit.INCH ? Paper.LETTER : Paper.A4);
  }

  /** The documents left out the last time, by id. */
  Set<String> unchecked() {
    return Arrays.stream(preferences.get(UNCHECKED, "").split(",")).filter(id -> !id.isEmpty())
        .collect(Collectors.toSet());
  }

  /** A folder beside the mural's file that carries its name; for a new mural one in the home folder. */
  Path folder(OpenMural mural) {
    Path home = Path.of(System.getProperty("user.home"));
    String title = mural.mural().getTitle() == null ? "" : mural.mural().getTitle();
    return mural.file().map(file -> file.resolveSibling(base(file.getFileName().toString()) + "-sheets"))
        .orElseGet(() -> home.resolve(plain(title) + "-sheets"));
  }

  private static String base(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private static String plain(String title) {
    String plain = title.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "mural" : plain;
  }

  void remember(ExportOrder order, List<Exporter> all) {
    preferences.put(PAPER, order.paper().word());
    preferences.put(UNCHECKED, all.stream().filter(exporter -> !order.exporters().contains(exporter)).map(Exporter::id)
        .collect(Collectors.joining(",")));
    try {
      preferences.flush();
    } catch (BackingStoreException e) {
      ILog.of(LastChoices.class).warn("The choices of the export could not be kept.", e);
    }
  }
}
