// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NarrownessTest {
  private static final Contour OBLONG = Contour.rectangle(0, 0, 200, 100);

  private static Narrowness of(Contour face, Contour outline, double turn) {
    Motion placed = Motion.turn(turn, new Vec(700, -300));
    return Narrowness.of(new Piece("A-01-01", 1, 1, PieceKind.TRIMMED, "T", outline.area(), outline.moved(placed),
        List.of(), new Cell(0, 0, face), placed));
  }

  private static Contour triangle(double x1, double y1, double x2, double y2, double x3, double y3) {
    return Contour.polygon(List.of(new Vec(x1, y1), new Vec(x2, y2), new Vec(x3, y3)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 45, 90, 211})
  void measuresAStripAgainstTheSideItWasCutFrom(double turn) {
    Narrowness strip = of(OBLONG, Contour.rectangle(0, 0, 80, 100), turn);
    assertEquals(80, strip.width(), 1e-9);
    assertEquals(0.4, strip.share(), 1e-9);
  }

  /** A face cut from corner to corner is half a tile. */
  @Test
  void leavesHalfATileOnEachSideOfADiagonal() {
    assertEquals(0.5, of(Contour.rectangle(0, 0, 150, 150), triangle(0, 0, 150, 0, 0, 150), 0).share(), 1e-9);
    assertEquals(0.5, of(OBLONG, triangle(0, 0, 200, 0, 0, 100), 30).share(), 1e-9);
  }

  /** Legs of 50: the height over the long side is 50 / sqrt 2, of a face that is 150 sqrt 2 wide that way: a sixth. */
  @Test
  void measuresACornerAcrossItsLongSide() {
    Narrowness corner = of(Contour.rectangle(0, 0, 150, 150), triangle(0, 0, 50, 0, 0, 50), 0);
    assertEquals(50 / Math.sqrt(2), corner.width(), 1e-9);
    assertEquals(1 / 6.0, corner.share(), 1e-9);
  }

  @Test
  void looksAcrossTheHullOfANotchedPiece() {
    Contour angle = Contour.polygon(List.of(Vec.ZERO, new Vec(200, 0), new Vec(200, 10), new Vec(10, 10),
        new Vec(10, 100), new Vec(0, 100)));
    assertEquals(0.5, of(OBLONG, angle, 0).share(), 0.05);
  }
}
