// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** An arrow that points to where the top of the painted tile, as it hangs, lies on a drawing. Solid black. */
final class UpArrow {
  private static final double HEAD = 0.45;
  private static final double HEAD_HALF = 0.2;

  private UpArrow() {}

  /**
   * Draws an arrow.
   *
   * @param turn by how much the tile is turned from how it hangs, degrees counter-clockwise
   * @param length from end to point, mm
   */
  static void draw(Canvas canvas, Vec middle, double turn, double length) throws IOException {
    Motion lay = Motion.turn(turn, Vec.ZERO);
    Vec point = middle.plus(lay.of(new Vec(0, length / 2)));
    Vec end = middle.plus(lay.of(new Vec(0, -length / 2)));
    Vec neck = point.towards(end, HEAD);
    Vec aside = lay.of(new Vec(length * HEAD_HALF, 0));
    canvas.line(end, neck, length > 5 ? Pen.HEAVY : Pen.THICK);
    canvas.fill(List.of(Contour.polygon(List.of(point, neck.minus(aside), neck.plus(aside)))), 0);
  }
}
