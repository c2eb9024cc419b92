// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Lettering;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PanelPlannerTest {
  private static PanelPlan inches(PanelSetOut panel, Paper paper) throws Exception {
    return PrintedSheets.plan(panel, paper, LengthUnit.INCH);
  }

  @Test
  void splashOfSixFeetFitsOneLyingLetter() throws Exception {
    PanelPlan plan = inches(TrialWalls.splash(), Paper.LETTER);
    assertEquals(1, plan.sheets().size());
    assertEquals("1 in = 1 ft (1:12)", plan.scale().name());
    assertTrue(plan.sheets().get(0).layout().size().landscape());
  }

  @Test
  void narrowHighPanelStandsUpright() throws Exception {
    PanelPlan plan = inches(TrialWalls.grid("N", "", TrialWalls.rectangle(0, 0, 25, 60)), Paper.TABLOID);
    assertEquals(1, plan.sheets().size());
    assertTrue(!plan.sheets().get(0).layout().size().landscape());
  }

  @Test
  void scaleIsAsLargeAsTheFewestSheetsAllow() throws Exception {
    assertEquals("3 in = 1 ft (1:4)",
        inches(TrialWalls.grid("N", "", TrialWalls.rectangle(0, 0, 25, 12)), Paper.LETTER).scale().name());
  }

  @Test
  void metricPanelsHaveScalesOfIso5455() throws Exception {
    PanelPlan plan = PrintedSheets.plan(TrialWalls.round(), Paper.A3, LengthUnit.MILLIMETRE);
    assertEquals("1:10", plan.scale().name());
    assertEquals(1, plan.sheets().size());
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyKeyIsOnExactlyOneSheet(Paper paper) throws Exception {
    for (PanelSetOut panel : List.of(TrialWalls.facade(), TrialWalls.round(), TrialWalls.slivers())) {
      List<String> planned = inches(panel, paper).sheets().stream().flatMap(sheet -> sheet.keys().stream())
          .map(Label::text).sorted().toList();
      assertEquals(PrintedSheets.keys(panel), planned);
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void windowsCoverThePanelAndStayInTheirRoom(Paper paper) throws Exception {
    PanelPlan plan = inches(TrialWalls.facade(), paper);
    double area = 0;
    for (SheetPlan sheet : plan.sheets()) {
      area += sheet.window().width() * sheet.window().height();
      Box room = sheet.gutters().room(sheet.layout().drawing());
      assertTrue(room.grown(1e-6).holds(sheet.shown()), sheet.shown() + " in " + room);
    }
    assertEquals(144 * 96 * 25.4 * 25.4, area, 1);
  }

  @Test
  void sheetsPartAtJointsWherePossible() throws Exception {
    PanelPlan plan = inches(TrialWalls.grid("G", "", TrialWalls.rectangle(0, 0, 120, 60)), Paper.LETTER);
    assertEquals(2, plan.grid().columns());
    assertTrue(plan.facts().columns().contains(plan.grid().across().get(1)), plan.grid().toString());
  }

  @Test
  void keysKeepOffMatchLines() throws Exception {
    for (SheetPlan sheet : inches(TrialWalls.facade(), Paper.LETTER).sheets()) {
      for (Label key : sheet.keys()) {
        boolean inside = key.leader().isPresent() || sheet.shown().holds(key.place());
        assertTrue(inside, key.toString());
      }
    }
  }

  @Test
  void slopingBondsAreShownToo() throws Exception {
    BondSpec turned = new BondSpec("grid", 0, 45, Map.of());
    PanelSetOut panel = TrialWalls.panel("D", "", 6, TrialWalls.rectangle(0, 36, 60, 40), turned,
        new OriginSpec.Balanced());
    PanelPlan plan = inches(panel, Paper.TABLOID);
    assertEquals(panel.pieces().size(), plan.sheets().stream().mapToInt(sheet -> sheet.keys().size()).sum());
  }

  @Test
  void mosaicTooSmallForItsKeysIsDrawnLarger() throws Exception {
    PanelSetOut panel = TrialWalls.panel("Q", "", 0.375, TrialWalls.rectangle(0, 36, 12, 6), BondSpec.grid(),
        new OriginSpec.Balanced());
    PanelPlan plan = inches(panel, Paper.LETTER);
    assertEquals("2:1", plan.scale().name());
    assertEquals(panel.pieces().size(), plan.sheets().stream().mapToInt(sheet -> sheet.keys().size()).sum());
  }

  @Test
  void tilesTooSmallForTheirKeysAtTenTimesTheirSizeAreRefused() throws Exception {
    String longest = "Q".repeat(16);
    PanelSetOut panel = TrialWalls.panel(longest, "", 0.13, TrialWalls.rectangle(0, 36, 3, 2), BondSpec.grid(),
        new OriginSpec.Balanced());
    InputException refusal = assertThrows(InputException.class, () -> inches(panel, Paper.LETTER));
    assertEquals(longest, refusal.place());
  }

  @Test
  void refusalNamesThePaperThatWouldDo() throws Exception {
    try (Lettering lettering = Lettering.open()) {
      PanelPlanner planner = new PanelPlanner(new KeyLetters(lettering), LengthUnit.INCH, 2);
      InputException refusal =
          assertThrows(InputException.class, () -> planner.plan(TrialWalls.facade(), Paper.LETTER));
      assertTrue(refusal.remedy().contains("tabloid"), refusal.getMessage());
    }
  }
}
