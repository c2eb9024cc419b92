// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.export.Exporter;
import muralbench.export.ExporterRegistry;
import muralbench.extensions.Contributions;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.junit.jupiter.api.Test;

/** Contributions made only through plugin.xml, in the running framework. */
class ContributionsTest {
  private final Contributions contributions = Contributions.of(RegistryFactory.getRegistry());

  @Test
  void theBondsAreTheProgramsOwnAndThoseOfOthers() {
    List<String> own = BondRegistry.standard().all().stream().map(Bond::kind).toList();
    List<String> all = contributions.bonds().all().stream().map(Bond::kind).toList();
    assertEquals(own, all.subList(0, own.size()));
    assertEquals(List.of("half-drop"), all.subList(own.size(), all.size()));
  }

  @Test
  void theExportersAreTheProgramsOwnAndThoseOfOthers() {
    List<String> own = ExporterRegistry.standard().all().stream().map(Exporter::id).toList();
    List<String> all = contributions.exporters().all().stream().map(Exporter::id).toList();
    assertEquals(own, all.subList(0, own.size()));
    assertEquals(List.of("key-index"), all.subList(own.size(), all.size()));
  }

  @Test
  void aMissingClassIsReported() {
    reported("NoSuchBond", "NoSuchBond");
  }

  @Test
  void aClassOfAnotherTypeIsReported() {
    reported("NotABond", "muralbench.setout.bond.Bond");
  }

  @Test
  void aKindThatIsTakenIsReported() {
    reported("SecondGrid", "grid");
  }

  @Test
  void anIdThatIsTakenIsReported() {
    reported("SecondPieces", "pieces");
  }

  @Test
  void aConstructorThatThrowsIsReported() {
    reported("ThrowingBond", "out of glaze");
  }

  @Test
  void aClassThatCannotBeLoadedIsReported() {
    reported("UnloadableBond", "never");
  }

  @Test
  void aMissingNameIsReported() {
    reported("NamelessBond", "null");
  }

  @Test
  void anElementWithoutClassIsReported() {
    assertEquals(1, contributions.problems().stream().filter(f -> f.values().get("class").equals("null")).count());
  }

  @Test
  void nothingElseIsReported() {
    assertEquals(8, contributions.problems().size(), () -> contributions.problems().toString());
  }

  private void reported(String type, String reason) {
    List<Finding> found = contributions.problems().stream()
        .filter(finding -> finding.values().get("class").toString().endsWith('.' + type)).toList();
    assertEquals(1, found.size(), type);
    assertEquals("extension.unusable", found.get(0).code());
    assertEquals(Grade.WARNING, found.get(0).grade());
    assertEquals("muralbench.extensions.tests", found.get(0).place());
    assertTrue(found.get(0).message().contains(reason), found.get(0).message());
  }
}
