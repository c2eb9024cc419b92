// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.BondSpec;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tiles of 6 in with joints of 1/8 in, laid from the lower left corner or balanced. */
class MovementLayingTest {
  private static final double IN = 25.4;
  private static final double FOOT = 12 * IN;
  private static final OriginSpec CORNER = new OriginSpec.At(Vec.ZERO);
  private static final OriginSpec BALANCED = new OriginSpec.Balanced();
  private static final MovementSpec OUTDOORS = new MovementSpec.ByRule(MovementRule.of("exterior", "wall"), 100);

  private static PanelSetOut wall(double wide, double high, BondSpec bond, OriginSpec origin, MovementSpec movement)
      throws InputException {
    TileSpec tile = new TileSpec("T", 6 * IN, 6 * IN, 0, 0, -1);
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", tile, IN / 8, 0,
        Contour.rectangle(0, 0, wide, high), List.of(), bond, origin);
    return SetOut.panel(panel.withMovement(movement), BondRegistry.standard(), Progress.NONE);
  }

  private static MovementSpec vertical(double at, double width) {
    return new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, at * IN, width * IN)));
  }

  private static Box box(PanelSetOut panel, String key) {
    return panel.pieces().stream().filter(piece -> piece.key().equals(key)).findFirst().orElseThrow().box();
  }

  /** Five tiles in a row, the joint after the second opened from 1/8 to 1/2 in: tiles 3 to 5 stand 3/8 in farther. */
  @Test
  void opensTheNearestJointAndShiftsWhatIsBeyondIt() throws InputException {
    PanelSetOut wall = wall(5 * 6.125 * IN, 6 * IN, BondSpec.grid(), CORNER, vertical(13, 0.5));
    assertEquals((2 * 6.125 - 0.125 + 0.25) * IN, wall.movement().get(0).at(), 1e-6);
    assertEquals(0.5 * IN, wall.movement().get(0).width(), 1e-9);
    assertEquals(6.125 * IN, box(wall, "A-01-02").minX(), 1e-6);
    assertEquals((2 * 6.125 + 0.375) * IN, box(wall, "A-01-03").minX(), 1e-6);
    assertEquals(5.75 * IN, box(wall, "A-01-05").width(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"30, 8, grid, 0, 2, 0", "30, 30, grid, 0, 2, 2", "12, 12, grid, 0, 0, 0", "20, 20, running, 0, 0, 1",
      "20, 30, running, 90, 1, 0", "20, 20, grid, 180, 1, 1"})
  void followsTheRuleWhereTheBondHasStraightJoints(double wide, double high, String kind, double turn, int vertical,
      int horizontal) throws InputException {
    double offset = kind.equals("running") ? 0.5 : 0;
    BondSpec bond = new BondSpec(kind, offset, turn, Map.of());
    PanelSetOut wall = wall(wide * FOOT, high * FOOT, bond, BALANCED, OUTDOORS);
    assertEquals(vertical, wall.movement().stream().filter(one -> one.axis() == MovementAxis.VERTICAL).count());
    assertEquals(horizontal, wall.movement().stream().filter(one -> one.axis() == MovementAxis.HORIZONTAL).count());
    assertOpen(wall);
  }

  /** No piece reaches into a movement joint, and tiles stand on both sides of it. */
  private static void assertOpen(PanelSetOut wall) {
    for (MovementJoint joint : wall.movement()) {
      boolean vertical = joint.axis() == MovementAxis.VERTICAL;
      double low = joint.at() - joint.width() / 2;
      double high = joint.at() + joint.width() / 2;
      int flush = 0;
      for (Piece piece : wall.pieces()) {
        double from = vertical ? piece.box().minX() : piece.box().minY();
        double to = vertical ? piece.box().maxX() : piece.box().maxY();
        assertTrue(to <= low + 1e-6 || from >= high - 1e-6, () -> piece.key() + " lies in the joint at " + joint.at());
        flush += Math.abs(to - low) < 1e-6 || Math.abs(from - high) < 1e-6 ? 1 : 0;
      }
      assertTrue(flush > 1, "tiles stand along the joint");
    }
  }

  /** What is left of a balanced wall stays balanced: equal cuts at both ends, half a tile at least. */
  @ParameterizedTest
  @CsvSource({"30", "25.3", "28.7", "40"})
  void balancesTheWallWithItsJointsOpened(double feet) throws InputException {
    PanelSetOut wall = wall(feet * FOOT, 4 * FOOT, BondSpec.grid(), BALANCED, OUTDOORS);
    List<Piece> row = wall.pieces().stream().filter(piece -> piece.course() == 2).toList();
    double left = row.get(0).box().width();
    assertEquals(left, row.get(row.size() - 1).box().width(), 1e-6);
    assertTrue(left >= 3 * IN - 1e-6, () -> "cut " + left / IN);
    assertEquals(0, row.get(0).box().minX(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"24, 100", "24.5, 100", "36, 130", "47.9, 100", "60, 145"})
  void keepsEveryBayWithinTheRuleAfterOpening(double feet, double swing) throws InputException {
    MovementRule rule = MovementRule.of("exterior", "wall");
    PanelSetOut wall = wall(feet * FOOT, 4 * FOOT, BondSpec.grid(), BALANCED, new MovementSpec.ByRule(rule, swing));
    double bay = MovementPlan.greatestBay(wall, wall.movement().stream().map(MovementJoint::line).toList());
    assertTrue(bay <= 12 * FOOT + 1e-6, () -> "bay " + bay / FOOT);
    wall.movement().forEach(joint -> assertEquals(rule.width(bay, swing, IN / 8), joint.width(), 1e-9));
    assertOpen(wall);
  }

  /** One joint is needed in 20 ft, at 8 to 12 ft; the middle would be nearest. */
  @Test
  void keepsOutOfAFocalAreaWhileAnotherJointWillDo() throws InputException {
    Box face = new Box(9.2 * FOOT, 0, 11.1 * FOOT, 2 * FOOT);
    MovementSpec kept = new MovementSpec.ByRule(MovementRule.of("exterior", "wall"), 100, List.of(face));
    double free = wall(20 * FOOT, 4 * FOOT, BondSpec.grid(), BALANCED, OUTDOORS).movement().get(0).at();
    assertTrue(free > face.minX() && free < face.maxX(), () -> "without it at " + free / FOOT);
    PanelSetOut wall = wall(20 * FOOT, 4 * FOOT, BondSpec.grid(), BALANCED, kept);
    assertEquals(1, wall.movement().size());
    double at = wall.movement().get(0).at();
    assertTrue(at < face.minX() || at > face.maxX(), () -> "at " + at / FOOT);
    assertTrue(at >= 8 * FOOT && at <= 12 * FOOT, () -> "at " + at / FOOT);
  }

  @Test
  void sealsTheWholeHeightBesideTiles() throws InputException {
    PanelSetOut wall = wall(20 * FOOT, 20 * FOOT, BondSpec.grid(), BALANCED, OUTDOORS);
    List<Box> strips = MovementStrips.of(wall, wall.movement().get(0));
    assertEquals(1, strips.size());
    assertEquals(20 * FOOT, strips.get(0).height(), IN / 4);
    assertEquals(wall.movement().get(0).width(), strips.get(0).width(), 1e-9);
  }

  /** A face centre or a crossing of joints lies on the focus, also beyond an opened joint. */
  @ParameterizedTest
  @CsvSource({"20", "90", "200", "300"})
  void keepsTheFocusOfABalancedWall(double x) throws InputException {
    Vec focus = new Vec(x * IN, 24 * IN);
    PanelSetOut wall = wall(30 * FOOT, 4 * FOOT, BondSpec.grid(), new OriginSpec.Balanced(Optional.of(focus)), OUTDOORS);
    assertEquals(2, wall.movement().size());
    double off = wall.pieces().stream().map(Piece::face).map(Contour::box)
        .mapToDouble(face -> Math.min(Math.abs(face.centre().x() - focus.x()),
            Math.min(Math.abs(face.minX() - IN / 16 - focus.x()), Math.abs(face.maxX() + IN / 16 - focus.x())))).min()
        .orElseThrow();
    assertEquals(0, off, 1e-6);
  }

  @Test
  void refusesJointsThatCannotBe() {
    BondSpec half = new BondSpec("running", 0.5, 0, Map.of());
    assertThrows(InputException.class, () -> wall(60 * IN, 48 * IN, half, CORNER, vertical(30, 0.5)));
    assertThrows(InputException.class, () -> wall(60 * IN, 48 * IN, BondSpec.grid(), CORNER, vertical(30, 0.1)));
    MovementJoint one = new MovementJoint(MovementAxis.VERTICAL, 30 * IN, 12);
    MovementSpec twice = new MovementSpec.Given(List.of(one, new MovementJoint(one.axis(), 31 * IN, 12)));
    assertThrows(InputException.class, () -> wall(60 * IN, 48 * IN, BondSpec.grid(), CORNER, twice));
  }
}
