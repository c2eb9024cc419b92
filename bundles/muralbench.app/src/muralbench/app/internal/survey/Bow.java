// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;

/**
 * Where the lower or upper edge of a wall is farthest from the straight line between its ends.
 *
 * @param station the station there, counted from 1; 0 if there are none between the ends
 * @param off how much higher the edge is than the straight line, mm
 */
record Bow(int station, double off) {
  private static final Messages TEXTS = Messages.of(Bow.class);

  /** Of the lower or the upper edge of a wall whose points are as in {@link AdjustedWall#fourCorners}. */
  static Bow of(AdjustedWall wall, boolean lower) {
    List<Vec> all = wall.corners();
    int edge = all.size() / 2;
    Vec first = all.get(lower ? 0 : 2 * edge - 1);
    Vec last = all.get(lower ? edge - 1 : edge);
    Bow most = new Bow(0, 0);
    for (int i = 1; i < edge - 1; i++) {
      Vec here = all.get(lower ? i : 2 * edge - 1 - i);
      double share = (here.x() - first.x()) / (last.x() - first.x());
      double off = here.y() - first.y() - share * (last.y() - first.y());
      most = Math.abs(off) > Math.abs(most.off) ? new Bow(i + 1, off) : most;
    }
    return most;
  }

  /** What is told of the ends, with the bow between them if there is one that is shown. */
  String words(String ends, LengthUnit unit) {
    return LengthText.rounded(off, unit) == 0 ? ends : TEXTS.text("true.bow", "level", ends, "off",
        LengthText.shown(Math.abs(off), unit), "way", TEXTS.text(off > 0 ? "true.bow.up" : "true.bow.down"), "station",
        station);
  }
}
