// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.setout.BondSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every sheet of a panel on several sheets must say so that it can be set out from that sheet. */
class SplitPanelTest {
  @TempDir
  Path folder;

  /** A floor of 2.4 m by 1.8 m with a drain, laid in hexagons of 150 mm. */
  private static PanelSetOut hexagons(String surface) throws InputException {
    TileSpec tile = new TileSpec("H150", 150, 173.2, 9, 0.8, 0.3);
    PanelSpec spec = new PanelSpec("H", "Floor", surface, "fixed", tile, 4, 0, Contour.rectangle(0, 0, 2400, 1800),
        List.of(new OpeningSpec("H1", "drain", Contour.circle(new Vec(1200, 900), 60))),
        new BondSpec("hexagon", 0, 0, Map.of()), new OriginSpec.Balanced());
    return SetOut.panel(spec, BondRegistry.standard(), Progress.NONE);
  }

  private List<List<String>> texts(PanelSetOut panel, Paper paper, LengthUnit units)
      throws InputException, IOException {
    List<List<String>> texts = new ArrayList<>();
    try (PDDocument document = PrintedSheets.printed(folder, paper, units, panel)) {
      for (int page = 1; page < document.getNumberOfPages(); page++) {
        texts.add(ReadSheet.texts(document, page).stream().map(ReadSheet.Text::text).toList());
      }
    }
    return texts;
  }

  private static long count(List<String> texts, String wanted) {
    return texts.stream().filter(wanted::equals).count();
  }

  @Test
  void everyAxisHasItsZeroOrNamesTheSheetThatHas() throws Exception {
    PanelPlan plan = PrintedSheets.plan(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    List<List<String>> sheets = texts(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    String datum = "sheet " + (plan.firstTileSheet() + 2);
    for (int i = 0; i < sheets.size(); i++) {
      long elsewhere = count(sheets.get(i), datum);
      assertEquals(2, count(sheets.get(i), "0") + elsewhere, "sheet " + (i + 2));
      assertEquals(elsewhere, count(sheets.get(i), "datum on"), "sheet " + (i + 2));
    }
  }

  @Test
  void everySheetHasALevelWithItsHeightAboveTheFloor() throws Exception {
    PanelPlan plan = PrintedSheets.plan(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    List<List<String>> sheets = texts(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    for (int i = 0; i < sheets.size(); i++) {
      String start = plan.zeroUp(plan.sheets().get(i)).isEmpty() ? "level datum line, " : "course line ";
      assertEquals(1, sheets.get(i).stream().filter(text -> text.startsWith(start)
          && text.contains(" above finished floor")).count(), sheets.get(i).toString());
    }
  }

  @Test
  void everySheetNamesTheSheetOfTheFirstTile() throws Exception {
    PanelPlan plan = PrintedSheets.plan(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    String wanted = "marked with a ring on sheet " + (plan.firstTileSheet() + 2) + ",";
    for (List<String> sheet : texts(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH)) {
      assertTrue(String.join(" ", sheet).contains(wanted), sheet.toString());
    }
  }

  @Test
  void firstTileLiesWhollyOnOneSheetWithItsKeyLyingInIt() throws Exception {
    PanelPlan plan = PrintedSheets.plan(hexagons("floor"), Paper.A4, LengthUnit.MILLIMETRE);
    assertTrue(plan.sheets().size() > 1);
    SheetPlan sheet = plan.sheets().get(plan.firstTileSheet());
    Piece first = plan.facts().first().piece();
    assertTrue(sheet.window().grown(0.1).holds(first.box()), first.key());
    Label key = sheet.keys().stream().filter(label -> label.text().equals(first.key())).findFirst().orElseThrow();
    assertTrue(!key.upwards() && key.leader().isEmpty());
  }

  @Test
  void floorsSpeakOfNoHeightsAndNoPlumbLine() throws Exception {
    for (List<String> sheet : texts(hexagons("floor"), Paper.A4, LengthUnit.MILLIMETRE)) {
      String all = String.join(" ", sheet);
      for (String wrong : List.of("plumb", "level", "finished floor", "from the front")) {
        assertTrue(!all.contains(wrong), wrong + " in " + all);
      }
      assertTrue(all.contains("seen from above") && all.contains("line square to the base line"), all);
    }
  }

  @Test
  void dimensionsOfFloorsCountFromTheMarkedCorner() throws Exception {
    PanelPlan plan = PrintedSheets.plan(hexagons("floor"), Paper.A4, LengthUnit.MILLIMETRE);
    assertEquals(new Vec(0, 0), plan.facts().zero());
    assertEquals(0, RunningDimensions.across(plan.facts()).datum());
    assertEquals(0, RunningDimensions.up(plan.facts()).datum());
  }

  @Test
  void coursesOfHexagonsAreDimensionedAtTheirLowestCorners() throws Exception {
    PanelSetOut panel = hexagons("wall");
    PanelPlan plan = PrintedSheets.plan(panel, Paper.A4, LengthUnit.MILLIMETRE);
    RunningDimensions up = RunningDimensions.up(plan.facts());
    // Courses of regular hexagons lie three quarters of a hexagon's height apart; common practice: 1.5 edges.
    double step = Math.sqrt(3) / 2 * (150 + 4);
    for (int course = 0; course < panel.courses() - 2; course++) {
      double line = up.datum() + course * step;
      assertTrue(up.places().stream().anyMatch(place -> Math.abs(place - line) < 0.1), course + ": " + up);
    }
  }

  @Test
  void tilesOfTheFirstCourseOfHexagonsAreDimensionedAcross() throws Exception {
    PanelPlan plan = PrintedSheets.plan(hexagons("wall"), Paper.A4, LengthUnit.MILLIMETRE);
    RunningDimensions across = RunningDimensions.across(plan.facts());
    int course = plan.facts().first().piece().course();
    List<Piece> row = plan.facts().panel().pieces().stream().filter(piece -> piece.course() == course).toList();
    for (Piece piece : row.subList(1, row.size())) {
      double left = piece.face().box().minX();
      assertTrue(across.places().stream().anyMatch(place -> Math.abs(place - left) < 0.1), piece.key());
    }
  }

  @Test
  void overviewShowsTheFloorBelowTheWall() throws Exception {
    WallPlan plan = WallPlan.of(List.of(hexagons("floor"), TrialWalls.splash()), Paper.A4, LengthUnit.MILLIMETRE);
    WallPlan.View wall = plan.views().get(0);
    WallPlan.View floor = plan.views().get(1);
    assertEquals("S", wall.drawn().get(0).spec().id());
    assertEquals("H", floor.drawn().get(0).spec().id());
    assertTrue(floor.placing().of(floor.window()).maxY() < wall.placing().of(wall.window()).minY());
    try (PDDocument document =
        PrintedSheets.printed(folder, Paper.A4, LengthUnit.MILLIMETRE, hexagons("floor"), TrialWalls.splash())) {
      List<String> texts = ReadSheet.texts(document, 0).stream().map(ReadSheet.Text::text).toList();
      assertTrue(texts.contains("Plan of the floor, seen from above") && texts.contains("2400"), texts.toString());
    }
  }

  @Test
  void noNoteIsDroppedOrCutShort() throws Exception {
    PanelPlan plan = PrintedSheets.plan(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    PanelNotes notes = new PanelNotes(Messages.of(PanelNotes.class), LengthUnit.INCH);
    List<List<String>> sheets = texts(TrialWalls.facade(), Paper.LETTER, LengthUnit.INCH);
    for (int i = 0; i < sheets.size(); i++) {
      Box window = plan.sheets().get(i).window();
      int first = plan.firstTileSheet() + 2;
      String all = String.join(" ", sheets.get(i));
      for (String note : i == 0 ? notes.of(plan.facts(), window, first)
          : notes.further(plan.facts(), window, first, 2)) {
        assertTrue(all.contains(note), note + " is not in " + all);
      }
    }
  }

  @Test
  void notesThatFindNoRoomGoOnInAStripAboveTheDrawing() throws Exception {
    try (Lettering lettering = Lettering.open()) {
      SheetLayout layout = SheetLayout.of(SheetSize.of(Paper.LETTER, true)).withMore(12);
      List<String> notes = Collections.nCopies(8, "A note of some length that says what is to be done and where.");
      SheetNotes set = SheetNotes.of(notes, layout.notes(true), layout.more().width(), lettering);
      String all = String.join(" ", set.column().lines()) + " " + String.join(" ", set.more().lines());
      assertTrue(!set.more().lines().isEmpty() && set.column().height() <= layout.notes(true).height());
      assertEquals(String.join(" ", notes), all);
      assertTrue(layout.more().minY() >= layout.drawing().maxY() - 7.001);
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void nothingIsPrintedSmallerThanSevenPoint(Paper paper) throws Exception {
    try (PDDocument document =
        PrintedSheets.printed(folder, paper, LengthUnit.INCH, TrialWalls.facade(), hexagons("floor"))) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        for (ReadSheet.Text text : ReadSheet.texts(document, page)) {
          assertTrue(text.height() > 1.79, text.toString());
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void theSafetyLineStandsInFullOnTheFirstSheetOfAPanelOnly(Paper paper) throws Exception {
    List<List<String>> sheets = texts(TrialWalls.facade(), paper, LengthUnit.INCH);
    String full = Messages.of(SheetFurniture.class).text("safety");
    for (int i = 0; i < sheets.size(); i++) {
      String all = String.join(" ", sheets.get(i));
      assertEquals(i == 0, all.contains(full), all);
      assertEquals(i > 0, all.contains("read the safety line on sheet 2"), all);
    }
  }
}
