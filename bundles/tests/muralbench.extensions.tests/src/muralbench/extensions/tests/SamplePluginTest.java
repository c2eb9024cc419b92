// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.Paper;
import muralbench.extensions.Contributions;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.testsupport.SampleWalls;
import org.eclipse.core.runtime.RegistryFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sample plug-in's bond and exporter do their work, reached only through the registries. */
class SamplePluginTest {
  private static final double MODULE = 152.4 + 3.175;

  private final Contributions contributions = Contributions.of(RegistryFactory.getRegistry());

  @TempDir
  Path folder;

  @Test
  void aPanelIsSetOutInTheContributedBond() throws Exception {
    PanelSetOut panel = SampleWalls.laidIn("half-drop", contributions.bonds());
    List<Double> feet = panel.pieces().stream().filter(piece -> piece.kind() == PieceKind.WHOLE)
        .map(piece -> (piece.box().minY() - panel.origin().y()) / MODULE * 2).toList();
    assertTrue(feet.stream().allMatch(foot -> Math.abs(foot - Math.rint(foot)) < 1e-6), "on half modules");
    assertTrue(feet.stream().anyMatch(foot -> Math.rint(foot) % 2 != 0), "some columns are dropped");
    assertTrue(feet.stream().anyMatch(foot -> Math.rint(foot) % 2 == 0), "and some are not");
  }

  @Test
  void thePiecesAndTheirJointsFillThePanel() throws Exception {
    PanelSetOut panel = SampleWalls.laidIn("half-drop", contributions.bonds());
    double tiled = panel.pieces().stream().mapToDouble(Piece::area).sum();
    double share = tiled / panel.area();
    // Away from the edges the faces take up (face / module) squared; at an edge there may be no joint.
    assertTrue(share > Math.pow(152.4 / MODULE, 2) - 1e-9 && share < 1, "share " + share);
  }

  @Test
  void theContributedExporterWritesEveryKey() throws Exception {
    MuralSetOut mural = SampleWalls.inches();
    Exporter exporter = contributions.exporters().find("key-index").orElseThrow();
    try (OutputFolder output = OutputFolder.open(folder)) {
      exporter.export(new ExportContext(mural, List.of(), Paper.A4, LocalDate.of(2026, 3, 14)), output, Progress.NONE);
      output.commit();
    }
    List<String> expected = new ArrayList<>();
    mural.panels().forEach(panel -> panel.pieces().forEach(
        piece -> expected.add(piece.key() + ' ' + piece.kind().word())));
    assertEquals(expected, Files.readAllLines(folder.resolve("key-index.txt")));
  }
}
