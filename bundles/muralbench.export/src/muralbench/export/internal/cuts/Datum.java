// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.function.Predicate;
import muralbench.base.Messages;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The corner of the uncut face that a cut is measured from. Its two factory edges are those of which the piece keeps
 * more, so that a tile which is a little larger or smaller than it should be gives a piece of the right size.
 *
 * @param face the box of the face, its lower left corner at (0, 0), mm
 * @param right whether distances run from the right edge, else from the left
 * @param above whether distances run from the upper edge, else from the lower
 */
record Datum(Box face, boolean right, boolean above) {
  private static final Messages TEXT = Messages.of(Datum.class);
  private static final double CLOSE = 0.01;

  /** Where to measure a shape from; left and below if nothing speaks for the other edges. */
  static Datum of(CutGroup group) {
    Box face = group.face().box();
    Contour piece = group.outline();
    boolean right = kept(piece, p -> at(p.x(), face.maxX())) > kept(piece, p -> at(p.x(), 0)) + CLOSE;
    boolean above = kept(piece, p -> at(p.y(), face.maxY())) > kept(piece, p -> at(p.y(), 0)) + CLOSE;
    return new Datum(face, right, above);
  }

  private static double kept(Contour piece, Predicate<Vec> onEdge) {
    return piece.segments().stream().filter(Segment::straight)
        .filter(side -> onEdge.test(side.start()) && onEdge.test(side.end())).mapToDouble(Segment::length).sum();
  }

  private static boolean at(double place, double edge) {
    return Math.abs(place - edge) < CLOSE;
  }

  /** Distance of a point from the edge at the left or right, mm, below 0 beyond it. */
  double across(Vec point) {
    return right ? face.maxX() - point.x() : point.x();
  }

  /** Distance of a point from the lower or upper edge, mm, below 0 beyond it. */
  double up(Vec point) {
    return above ? face.maxY() - point.y() : point.y();
  }

  /** The corner itself. */
  Vec corner() {
    return new Vec(right ? face.maxX() : 0, above ? face.maxY() : 0);
  }

  /** Words for the edge of {@link #across}. */
  String acrossFrom() {
    return TEXT.text(right ? "from.right" : "from.left");
  }

  /** Words for the edge of {@link #up}. */
  String upFrom() {
    return TEXT.text(above ? "from.above" : "from.below");
  }
}
