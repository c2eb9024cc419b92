// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** A balanced start with a focal point lays a face centre or a joint crossing on it. */
class FocalPointTest {
  private static final double IN = 25.4;

  @Test
  void aFaceCentreOrACrossingLiesOnThePoint() throws Exception {
    for (double x = 20; x < 30; x += 1.3) {
      Vec focus = new Vec(x * IN, 31.1 * IN);
      PanelSetOut setOut = Walls.rectangle(0, 0, 100, 60).focus(x, 31.1).setOut();
      assertTrue(centred(setOut, focus) || crossed(setOut, focus), "focus at " + x + " in");
    }
  }

  @Test
  void ofBothTheOneWithTheWiderCutsIsTaken() throws Exception {
    // In the middle of 100 in a crossing leaves 0.9375 in at the ends, a face centre 4 in: the exact half-tile rule.
    PanelSetOut setOut = Walls.rectangle(0, 0, 100, 100).focus(50, 50).setOut();
    assertTrue(centred(setOut, new Vec(50 * IN, 50 * IN)));
    assertEquals(4 * IN, setOut.pieces().get(0).box().width(), 1e-6);
  }

  @Test
  void aCrossingIsTakenWhereThatIsBetter() throws Exception {
    // 48 7/8 in are eight whole tiles about a crossing in the middle.
    PanelSetOut setOut = Walls.rectangle(0, 0, 48.875, 48.875).focus(24.4375, 24.4375).setOut();
    assertTrue(crossed(setOut, new Vec(24.4375 * IN, 24.4375 * IN)));
    assertEquals(0, setOut.cut());
  }

  @Test
  void aRunningBondHasItsPointToo() throws Exception {
    Vec focus = new Vec(33 * IN, 20 * IN);
    PanelSetOut setOut = Walls.rectangle(0, 0, 100, 60).bond("running", 0.5, 0).focus(33, 20).setOut();
    assertTrue(centred(setOut, focus) || crossed(setOut, focus));
  }

  @Test
  void aTurnedGridHasItsPointToo() throws Exception {
    Vec focus = new Vec(33 * IN, 20 * IN);
    PanelSetOut setOut = Walls.rectangle(0, 0, 100, 60).bond("grid", 0, 45).focus(33, 20).setOut();
    Optional<Piece> face = setOut.pieces().stream()
        .filter(piece -> piece.face().box().centre().distance(focus) < 1e-6).findAny();
    double half = (6 + 1 / 8.0) * IN / Math.sqrt(2);
    Optional<Piece> below = setOut.pieces().stream().filter(piece ->
        piece.face().box().centre().distance(focus.minus(new Vec(0, half))) < 1e-6).findAny();
    assertTrue(face.isPresent() || below.isPresent());
  }

  @Test
  void aPatternWithoutRowsLaysItsOwnCentreThere() throws Exception {
    Vec focus = new Vec(33 * IN, 20 * IN);
    PanelSetOut setOut = Walls.rectangle(0, 0, 100, 60).bond("hexagon", 0, 0).focus(33, 20).setOut();
    double[] away = setOut.pieces().stream().mapToDouble(piece -> piece.face().box().centre().distance(focus)).sorted()
        .toArray();
    assertTrue(away[0] < 1e-6 || away[1] - away[0] < 1e-6, "neither a centre nor between two faces");
  }

  private static boolean centred(PanelSetOut setOut, Vec focus) {
    return setOut.pieces().stream().anyMatch(piece -> piece.face().box().centre().distance(focus) < 1e-6);
  }

  /** A face whose lower left corner is half a joint right of and above the point. */
  private static boolean crossed(PanelSetOut setOut, Vec focus) {
    Vec corner = focus.plus(new Vec(IN / 16, IN / 16));
    return setOut.pieces().stream().map(piece -> piece.face().box())
        .anyMatch(box -> new Vec(box.minX(), box.minY()).distance(corner) < 1e-6);
  }
}
