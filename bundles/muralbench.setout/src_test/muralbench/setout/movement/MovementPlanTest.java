// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tiles of 6 in with joints of 1/8 in: a module of 6-1/8 in; counts by ceil(length / spacing) - 1. */
class MovementPlanTest {
  private static final double IN = 25.4;
  private static final double FOOT = 12 * IN;

  private static PanelSetOut wall(double feetWide, double feetHigh, String bond, double offset)
      throws InputException {
    return wall(feetWide, feetHigh, 6, bond, offset);
  }

  private static PanelSetOut wall(double feetWide, double feetHigh, double tileHigh, String bond, double offset)
      throws InputException {
    TileSpec tile = new TileSpec("T", 6 * IN, tileHigh * IN, 0, 0, -1);
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", tile, IN / 8, 0,
        Contour.rectangle(0, 0, feetWide * FOOT, feetHigh * FOOT), List.of(),
        new BondSpec(bond, offset, 0, Map.of()), new OriginSpec.At(Vec.ZERO));
    return SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
  }

  private static MovementPlan plan(PanelSetOut panel, Box... keepOut) {
    return MovementPlan.of(panel, "exterior", 100, List.of(keepOut));
  }

  private static List<Double> at(MovementPlan plan, MovementAxis axis) {
    return plan.lines().stream().filter(line -> line.axis() == axis).map(MovementLine::at).toList();
  }

  @Test
  void needsNoneAtExactlyTwelveFeet() throws InputException {
    MovementPlan plan = plan(wall(12, 12, "grid", 0));
    assertEquals(List.of(), plan.lines());
    assertEquals(12 * FOOT, plan.greatestBay(), 1e-9);
  }

  /** 30 ft: two joints, bays of about 10 ft, on the joints of the grid at whole modules less half a joint. */
  @Test
  void dividesThirtyFeetInThree() throws InputException {
    MovementPlan plan = plan(wall(30, 8, "grid", 0));
    assertEquals(2, plan.lines().size());
    assertEquals((20 * 6.125 - 0.0625) * IN, plan.lines().get(0).at(), 1e-6);
    assertEquals((39 * 6.125 - 0.0625) * IN, plan.lines().get(1).at(), 1e-6);
    assertEquals(0.5 * IN, plan.width(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"30, 8, 3", "30, 12, 2", "30, 10, 3", "25, 25, 0", "12.1, 12, 1"})
  void neverLeavesABayOverTheGreatest(double feet, double greatest, int joints) throws InputException {
    PanelSetOut wall = wall(feet, 4, "grid", 0);
    MovementPlan plan = MovementPlan.of(wall, MovementRule.of("exterior", "wall"), greatest * FOOT, 100, List.of());
    assertEquals(joints, plan.lines().size());
    assertTrue(plan.greatestBay() <= greatest * FOOT + 1e-6, () -> "bay " + plan.greatestBay() / FOOT);
  }

  @Test
  void keepsOutOfAFace() throws InputException {
    PanelSetOut wall = wall(20, 4, "grid", 0);
    double middle = plan(wall).lines().get(0).at();
    Box face = new Box(middle - 8 * IN, 0, middle + 5 * IN, 20 * IN);
    double moved = plan(wall, face).lines().get(0).at();
    assertTrue(moved > face.maxX() && moved < face.maxX() + 6.125 * IN, () -> "moved to " + moved / IN);
  }

  @Test
  void cutsAFaceThatLeavesNoOtherWay() throws InputException {
    MovementPlan plan = plan(wall(20, 4, "grid", 0), new Box(3 * FOOT, 0, 17 * FOOT, FOOT));
    assertEquals(1, plan.lines().size());
    assertTrue(plan.lines().get(0).throughKeepOut());
  }

  @Test
  void followsTheCoursesOfARunningBondAndCutsTileAcrossThem() throws InputException {
    MovementPlan plan = plan(wall(20, 20, "running", 0.5));
    assertEquals(List.of(10 * FOOT), at(plan, MovementAxis.VERTICAL));
    assertTrue(plan.lines().get(0).throughTile());
    assertFalse(plan.lines().get(1).throughTile());
    assertEquals(Math.rint((plan.lines().get(1).at() / IN + 0.0625) / 6.125),
        (plan.lines().get(1).at() / IN + 0.0625) / 6.125, 1e-9);
  }

  /** A basket weave is closed by straight joints around its blocks; a herringbone locks everywhere. */
  @ParameterizedTest
  @CsvSource({"basket, false", "herringbone, true"})
  void findsTheStraightJointsOfAnyBond(String bond, boolean cut) throws InputException {
    MovementPlan plan = plan(wall(20, 20, 2.9375, bond, 0));
    assertEquals(List.of(cut, cut), plan.lines().stream().map(MovementLine::throughTile).toList());
  }

  @Test
  void leavesTheRoomAlone() throws InputException {
    MovementPlan plan = MovementPlan.of(wall(25, 12, "grid", 0), "interior-dry", 0, List.of());
    assertEquals(List.of(), plan.lines());
  }
}
