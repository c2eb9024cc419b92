// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.BoardSpec;
import muralbench.setout.BondSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoardPlanTest {
  private static final double IN = 25.4;
  /** 24.25 by 32.375 in: 12 tiles of 8 by 8 in, which weigh 22.0 kg 8 mm thick on the usual board, worked by hand. */
  private static final Contour PANEL = Contour.rectangle(10 * IN, 40 * IN, 24.25 * IN, 32.375 * IN);

  private static BoardPlan plan(Contour outline, double thickness, BoardSpec board, OpeningSpec... openings)
      throws InputException {
    TileSpec tile = new TileSpec("T", 8 * IN, 8 * IN, thickness, 0, -1);
    PanelSpec spec = new PanelSpec("A", "", "wall", "removable", tile, 0.125 * IN, 0, outline, List.of(openings),
        BondSpec.grid(), new OriginSpec.Balanced());
    return BoardPlan.of(SetOut.panel(spec.withBoard(board), BondRegistry.standard(), Progress.NONE));
  }

  private static BoardSpec board(double reveal, double capacity) {
    return new BoardSpec("fibre-cement-on-plywood", 0, 0, reveal, "none", capacity);
  }

  @Test
  void theUsualBoardWeighsWhatIsWorkedByHand() throws InputException {
    PanelMass mass = plan(PANEL, 8, BoardSpec.usual()).mass().orElseThrow();
    assertEquals(7.93, mass.tile(), 0.005);
    assertEquals(22.0, mass.total(), 0.05);
  }

  /** 12.7 kg/m² for 0.42 in of fibre cement, 11 for 3/4 in of plywood; the rest is density times thickness. */
  @ParameterizedTest
  @CsvSource({"fibre-cement, 0, 0, 12.7", "fibre-cement, 6.35, 0, 7.56", "plywood, 0, 0, 11", "plywood, 12.7, 0, 7.333",
      "plywood, 19.05, 600, 11.43", "fibre-cement-on-plywood, 0, 0, 23.7", "fibre-cement-on-plywood, 23.368, 0, 20.033",
      "other, 10, 1500, 15"})
  void aSquareMetreOfBoardWeighs(String material, double thickness, double density, double mass) {
    assertEquals(mass, PanelMass.perSquareMetre(new BoardSpec(material, thickness, density, 0, "none", 0)), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"0, 24.25, 32.375", "0.5, 25.25, 33.375", "-0.125, 24, 32.125"})
  void theRevealChangesTheSizeOfTheBoard(double reveal, double width, double height) throws InputException {
    BoardPlan plan = plan(PANEL, 8, board(reveal * IN, 0));
    assertEquals(width * IN, plan.width(), 1e-9);
    assertEquals(height * IN, plan.height(), 1e-9);
    assertEquals(width * height * IN * IN, plan.area(), 1e-6);
  }

  @Test
  void aBoardThatStaysTooFarBehindIsNone() throws InputException {
    BoardPlan plan = plan(PANEL, 8, board(-40 * IN, 0));
    assertEquals(List.of(0.0, 0.0, 0.0, 0), List.of(plan.width(), plan.height(), plan.area(), plan.points().size()));
  }

  /** A disc of radius 400 with a reveal of 10 is one of 410. */
  @Test
  void roundBoardsGrowRound() throws InputException {
    assertEquals(Math.PI * 410 * 410, plan(Contour.circle(new Vec(0, 500), 400), 8, board(10, 0)).area(), 1e-3);
  }

  /** 22.0 kg: two points of 11 kg do, of 10.9 kg it takes four, of 5 kg six. */
  @ParameterizedTest
  @CsvSource({"0, 2", "25, 2", "11.1, 2", "10.9, 4", "5.51, 4", "5.4, 6", "5, 6"})
  void pointsComeInPairsAndCarryTheMass(double capacity, int count) throws InputException {
    BoardPlan plan = plan(PANEL, 8, board(0, capacity));
    assertEquals(count, plan.points().size());
    assertEquals(plan.mass().orElseThrow().total() / count, plan.load().orElseThrow(), 1e-9);
    assertTrue(capacity == 0 || plan.load().orElseThrow() <= capacity);
  }

  @Test
  void pointsLieEvenlyAboutTheMiddleInTheUpperPart() throws InputException {
    List<Vec> points = plan(PANEL, 8, board(0, 0)).points();
    assertEquals(24.25 * IN / 4, points.get(0).x(), 1e-9);
    assertEquals(24.25 * IN * 3 / 4, points.get(1).x(), 1e-9);
    assertEquals(32.375 * IN * 5 / 6, points.get(1).y(), 1e-9);
  }

  @Test
  void pointsKeepClearOfOpeningsAndOfSlopingEdges() throws InputException {
    OpeningSpec opening = new OpeningSpec("A1", "switch", Contour.rectangle(15 * IN, 60 * IN, 3 * IN, 8 * IN));
    Vec beside = plan(PANEL, 8, board(0, 0), opening).points().get(0);
    assertTrue(beside.y() < 20 * IN - 35, beside.toString());
    Contour gable = Contour.polygon(List.of(new Vec(0, 0), new Vec(800, 0), new Vec(800, 400), new Vec(400, 900),
        new Vec(0, 400)));
    assertTrue(plan(gable, 8, board(0, 0)).points().get(0).y() < 650 - 50);
  }

  @Test
  void withoutAThicknessNothingIsWeighed() throws InputException {
    BoardPlan plan = plan(PANEL, 0, board(0, 10));
    assertEquals(List.of(Optional.empty(), Optional.empty()), List.of(plan.mass(), plan.load()));
    assertEquals(2, plan.points().size());
  }
}
