// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import muralbench.export.internal.LabelSpot;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The room that a shape offers to a text, lying or upright, in full size.
 *
 * @param words size of the text with a little air around it, as printed at the smallest allowed height
 * @param lying the best place for the lying text
 * @param upright the best place for the text read upwards
 */
record KeyRoom(Words words, LabelSpot lying, LabelSpot upright) {
  /**
   * A text and its size on paper.
   *
   * @param text the text
   * @param width mm, air included
   * @param height mm, air included
   */
  record Words(String text, double width, double height) {}

  /** Looks for room in a shape. */
  static KeyRoom in(Contour outline, List<Contour> holes, Words words) {
    double proportion = words.width() / words.height();
    if (holes.isEmpty() && isUprightRectangle(outline)) {
      Box box = outline.box();
      return new KeyRoom(words, inRectangle(box, proportion), inRectangle(box, 1 / proportion));
    }
    return new KeyRoom(words, LabelSpot.in(outline, holes, proportion), LabelSpot.in(outline, holes, 1 / proportion));
  }

  private static LabelSpot inRectangle(Box box, double proportion) {
    return new LabelSpot(box.centre(), Math.min(box.height(), box.width() / proportion));
  }

  private static boolean isUprightRectangle(Contour outline) {
    if (outline.segments().size() != 4 || !outline.straight()) {
      return false;
    }
    for (Segment side : outline.segments()) {
      Vec way = side.end().minus(side.start());
      if (way.x() != 0 && way.y() != 0) {
        return false;
      }
    }
    return true;
  }

  /** How many times larger than the smallest allowed the lying text can be at a reduction; below 1 it does not fit. */
  double lyingFit(double reduction) {
    return lying.height() / reduction / words.height();
  }

  /** As {@link #lyingFit} for the text read upwards. */
  double uprightFit(double reduction) {
    return upright.height() / reduction / words.width();
  }

  /** Whether the text fits one way or the other. */
  boolean fits(double reduction) {
    return lyingFit(reduction) >= 1 || uprightFit(reduction) >= 1;
  }

  /** A point well inside the shape, for the start of a leader. */
  Vec middle() {
    return upright.height() * words.height() > lying.height() * words.width() ? upright.middle() : lying.middle();
  }
}
