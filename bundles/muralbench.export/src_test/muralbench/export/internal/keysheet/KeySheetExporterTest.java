// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExporterRegistry;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeySheetExporterTest {
  @TempDir
  Path folder;

  private static MuralSetOut splash() throws InputException {
    return TrialWalls.mural(LengthUnit.INCH, TrialWalls.splash());
  }

  @Test
  void isAmongTheStandardExporters() {
    assertTrue(ExporterRegistry.standard().find("key-sheets").isPresent());
  }

  @Test
  void equalMuralsGiveEqualFiles() throws Exception {
    Path one = PrintedSheets.print(folder.resolve("one"), splash(), Paper.A4, Progress.NONE);
    Path two = PrintedSheets.print(folder.resolve("two"), splash(), Paper.A4, Progress.NONE);
    assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
  }

  @Test
  void cancellingLeavesNothing() {
    Progress impatient = new Progress() {
      @Override
      public void begin(String task, int steps) {}

      @Override
      public void step(int steps) {
        throw new CancelledException();
      }
    };
    Path target = folder.resolve("x");
    assertThrows(CancelledException.class, () -> PrintedSheets.print(target, splash(), Paper.A4, impatient));
    assertFalse(Files.exists(target));
  }

  @Test
  void progressIsReportedToTheEnd() throws Exception {
    List<Integer> steps = new ArrayList<>();
    Progress counting = new Progress() {
      @Override
      public void begin(String task, int count) {
        steps.add(-count);
      }

      @Override
      public void step(int count) {
        steps.add(count);
      }
    };
    PrintedSheets.print(folder, TrialWalls.mural(LengthUnit.INCH, TrialWalls.facade()), Paper.LETTER, counting);
    assertEquals(0, steps.stream().mapToInt(Integer::intValue).sum());
    assertTrue(steps.size() > 6, "a chance to cancel at every sheet");
  }

  @Test
  void bookmarksAndPageLabelsLeadToThePanels() throws Exception {
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, TrialWalls.splash(),
        TrialWalls.round())) {
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
      }
      assertEquals(List.of("Whole wall and index of sheets", "S · Low water", "R · Compass"), titles);
      assertEquals("2", document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices()[1]);
    }
  }

  @Test
  void aMuralWithoutPanelsIsRefused() {
    assertThrows(InputException.class,
        () -> PrintedSheets.print(folder, TrialWalls.mural(LengthUnit.INCH), Paper.A4, Progress.NONE));
  }

  @Test
  void titlesOfAnyScriptArePrinted() throws Exception {
    PanelSetOut panel = TrialWalls.grid("T", "潮 \u0007 Łódź \uD840\uDC00 אבג", TrialWalls.rectangle(0, 0, 48, 36));
    try (PDDocument document = PrintedSheets.printed(folder, Paper.A4, LengthUnit.MILLIMETRE, panel)) {
      assertEquals(2, document.getNumberOfPages());
    }
  }

  @Test
  void floorsAreShownAsAPlanWithoutHeights() throws Exception {
    PanelSpec wall = TrialWalls.splash().spec();
    PanelSpec floor = new PanelSpec(wall.id(), wall.title(), "floor", wall.mounting(), wall.tile(), wall.joint(), 0,
        wall.outline(), wall.openings(), wall.bond(), wall.origin());
    PanelSetOut panel = SetOut.panel(floor, BondRegistry.standard(), Progress.NONE);
    try (PDDocument document = PrintedSheets.printed(folder, Paper.A4, LengthUnit.MILLIMETRE, panel)) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("plan of the floor") && !text.contains("finished floor"), text);
    }
  }

  @Test
  void movementJointsAreDrawnAndToldFromTheDatum() throws Exception {
    MovementJoint joint = new MovementJoint(MovementAxis.VERTICAL, 36 * 25.4, 9.525);
    PanelSpec wall = TrialWalls.splash().spec().withMovement(new MovementSpec.Given(List.of(joint)));
    PanelSetOut panel = SetOut.panel(wall, BondRegistry.standard(), Progress.NONE);
    assertEquals(2, thickUprights(TrialWalls.splash(), panel));
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panel)) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("movement joint: sealant, not grout"), text);
      assertTrue(text.replaceAll("\\s+", " ").contains("3/8 in wide, middle "), text);
    }
  }

  /** How many thick upright lines the second has more than the first, outside frames and rectangles. */
  private long thickUprights(PanelSetOut plain, PanelSetOut panel) throws Exception {
    long[] counts = new long[2];
    for (int i = 0; i < 2; i++) {
      try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, i == 0 ? plain : panel)) {
        counts[i] = ReadSheet.paths(document.getPage(1)).stream().filter(path -> !path.filled()
            && Math.abs(path.width() - 0.5) < 0.01 && path.points().size() == 2
            && Math.abs(path.points().get(0).x() - path.points().get(1).x()) < 1e-3).count();
      }
    }
    return counts[1] - counts[0];
  }

  @Test
  void manyPanelsMakeALongerIndex() throws Exception {
    PanelSetOut[] panels = new PanelSetOut[60];
    for (int i = 0; i < panels.length; i++) {
      panels[i] = TrialWalls.grid("P" + i, "Panel", TrialWalls.rectangle(20 * i, 36, 18.25, 18.25));
    }
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, panels)) {
      assertTrue(document.getNumberOfPages() > 61, document.getNumberOfPages() + " sheets");
    }
  }

  @Test
  void tenThousandPiecesAreQuick() throws Exception {
    MuralSetOut mural = TrialWalls.mural(LengthUnit.INCH, TrialWalls.tenThousand());
    Assertions.assertTimeout(Duration.ofSeconds(60),
        () -> PrintedSheets.print(folder, mural, Paper.TABLOID, Progress.NONE));
  }

  @Test
  void fileIsReadableAsPdf() throws Exception {
    Path file = PrintedSheets.print(folder, splash(), Paper.A3, Progress.NONE);
    assertEquals("key-sheets.pdf", file.getFileName().toString());
    Loader.loadPDF(file.toFile()).close();
  }
}
