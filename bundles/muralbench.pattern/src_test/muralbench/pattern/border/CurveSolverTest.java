// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** Bands on curves worked out by hand; sector formulas of the circle. */
class CurveSolverTest {
  private static final Curve CIRCLE = Curve.circle(new Vec(700, 800), 500);

  private static CurveSolver.Result solve(Curve curve, double tile, double width, int repeat, JointRange joint,
      Permits permits) {
    try {
      return CurveSolver.solve(new CurveBorder(curve, BandRow.of(tile, width, repeat), joint, permits), LengthUnit.MILLIMETRE);
    } catch (InputException refused) {
      throw new AssertionError(refused);
    }
  }

  /** The length of each of n pieces along the middle circle of radius 450, with joints of 3. */
  private static double length(int n) {
    return 900 * (Math.PI / n - Math.asin(3 / 900.0));
  }

  @Test
  void aCircleClosesByTheJoint() {
    CurveLayout layout = solve(CIRCLE, length(28), 100, 2, new JointRange(2, 2.5, 4), Permits.NONE).best().orElseThrow();
    assertEquals(28, layout.wedges());
    assertEquals(14, layout.repeats());
    assertEquals(3, layout.joint(), 1e-9);
    assertEquals(Set.of(Means.JOINT), layout.means());
  }

  @Test
  void aCircleClosesByPiecesALittleLonger() {
    CurveLayout layout = solve(CIRCLE, 100, 100, 3, JointRange.fixed(3), Permits.NONE.scale(0.05)).best().orElseThrow();
    assertEquals(27, layout.wedges());
    assertEquals(length(27) / 100 - 1, layout.stretch(), 1e-12);
    assertEquals(Set.of(Means.SCALE), layout.means());
  }

  @Test
  void aCircleClosesMovedIn() {
    // 27 pieces of 100 and joints of 3 at the radius R of the middle: pi/27 = asin(3/2R) + 100/2R.
    CurveLayout layout = solve(CIRCLE, 100, 100, 1, JointRange.fixed(3), Permits.NONE.move(20, 0)).best().orElseThrow();
    double middle = 450 - layout.move();
    assertEquals(27, layout.wedges());
    assertEquals(Math.PI / 27, Math.asin(1.5 / middle) + 50 / middle, 1e-12);
  }

  @Test
  void blanksAndChordsFollowTheSector() {
    CurveLayout layout = solve(CIRCLE, 100, 100, 3, JointRange.fixed(3), Permits.NONE.scale(0.05)).best().orElseThrow();
    double outer = Math.PI / 27 - Math.asin(3 / 1000.0);
    double inner = Math.PI / 27 - Math.asin(3 / 800.0);
    assertEquals(1000 * Math.sin(outer), layout.outerChord(), 1e-9);
    assertEquals(800 * Math.sin(inner), layout.innerChord(), 1e-9);
    assertEquals(500 - 400 * Math.cos(inner), layout.blankHeight(), 1e-9);
  }

  @Test
  void theFieldInACircleIsADisc() {
    CurveLayout layout = solve(CIRCLE, 100, 100, 3, JointRange.fixed(3), Permits.NONE.scale(0.05)).best().orElseThrow();
    assertEquals(Math.PI * 397 * 397, layout.field().orElseThrow().area(), 1e-6);
  }

  /** An arch 1000 wide with 14 pieces on its arc and 8 in each leg, all as long as the tile, with joints of 3.2. */
  private static CurveLayout arch() {
    double tile = 900 * (Math.PI / 28 - Math.asin(3.2 / 900));
    // Each leg: 8 tiles, 7 joints and half of one at the springing line.
    Curve arch = Curve.arch(Vec.ZERO, 1000, 8 * tile + 7.5 * 3.2);
    return solve(arch, tile, 100, 2, new JointRange(2, 3, 5), Permits.NONE.scale(0.05)).best().orElseThrow();
  }

  @Test
  void anArchClosesItsLegsAndItsArcWithOneJoint() {
    CurveLayout layout = arch();
    assertEquals(3.2, layout.joint(), 1e-9);
    assertEquals(8, layout.legTiles());
    assertEquals(14, layout.wedges());
    assertEquals(Set.of(Means.JOINT), layout.means());
    assertEquals(0, layout.legResidual(), 1e-9);
  }

  @Test
  void aLayoutIsToldWithItsBlanks() {
    // 1000 sin(pi/28 - asin(0.0032)) = 108.78; 500 - 400 cos(pi/28 - asin(0.004)) = 102.34.
    String text = new BandWords(LengthUnit.MILLIMETRE).describe(arch());
    assertEquals("joint 3.2 mm; 14 pieces on the curve, 97.78 mm along the middle, each from a blank of 108.78 mm by "
        + "102.34 mm; 8 tiles of 97.78 mm in each leg", text);
  }

  @Test
  void theFootOfALegIsCutWhereThatIsPermitted() {
    CurveLayout layout = solve(Curve.arch(Vec.ZERO, 1000, 870), 100, 100, 1, JointRange.fixed(3),
        Permits.NONE.scale(0.05).ends(0.4)).best().orElseThrow();
    // 870 less eight tiles, eight joints and half a joint at the springing line.
    assertEquals(870 - 8 * 103 - 1.5, layout.foot(), 1e-9);
    assertTrue(layout.means().contains(Means.ENDS));
  }

  @Test
  void theFieldInAnArchIsAnArch() {
    double radius = 500 - 100 - 3.2;
    double leg = arch().border().curve().leg();
    assertEquals(2 * radius * leg + Math.PI * radius * radius / 2, arch().field().orElseThrow().area(), 1e-6);
  }

  @Test
  void whatWouldWorkInsteadIsTold() {
    // 27 pieces with joints take 103 each at the radius 27 x 103 / 2 pi = 442.6, or 101.72 each at 450.
    CurveSolver.Result result = solve(CIRCLE, 100, 100, 3, JointRange.fixed(3), Permits.NONE);
    assertEquals(List.of(), result.layouts());
    assertTrue(result.message().contains("with the band moved in by 7.39 mm"), result.message());
    assertTrue(result.message().contains("with tiles 1.72 % longer"), result.message());
  }

  @Test
  void aRowTooWideForItsCircleIsRefused() {
    InputException refused = assertThrows(InputException.class, () -> CurveSolver.solve(
        new CurveBorder(Curve.circle(Vec.ZERO, 90), BandRow.of(50, 100, 1), JointRange.fixed(3), Permits.NONE),
        LengthUnit.MILLIMETRE));
    assertEquals("/curve/radius", refused.place());
  }
}
