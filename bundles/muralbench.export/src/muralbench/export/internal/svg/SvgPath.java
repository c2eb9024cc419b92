// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

import java.util.List;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * Contours as path data of SVG 1.1 (section 8.3) with y turned over, since SVG counts it downwards. Lines, arcs and
 * curves stay what they are. Arcs are written in quarters: an arc that ends where it starts would not be drawn
 * (appendix F.6.2), and from a half circle the reader would find the centre only roughly.
 */
final class SvgPath {
  private static final double QUARTER = Math.PI / 2;

  private final StringBuilder data = new StringBuilder();

  private SvgPath() {}

  /** The path data of an edge and the holes in it. */
  static String of(Contour outline, List<Contour> holes) {
    SvgPath path = new SvgPath();
    path.contour(outline);
    holes.forEach(path::contour);
    return path.data.toString();
  }

  private void contour(Contour contour) {
    command('M', contour.segments().get(0).start());
    int last = contour.segments().size() - 1;
    for (int i = 0; i <= last; i++) {
      Segment segment = contour.segments().get(i);
      // The closing Z draws the last line.
      if (i < last || !segment.straight()) {
        segment(segment);
      }
    }
    data.append('Z');
  }

  private void segment(Segment segment) {
    if (segment instanceof Arc arc) {
      int parts = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / QUARTER - 1e-9));
      for (int i = 0; i < parts; i++) {
        quarter(arc, arc.at((i + 1.0) / parts));
      }
    } else if (segment instanceof Cubic cubic) {
      command('C', cubic.c1());
      point(' ', cubic.c2());
      point(' ', cubic.end());
    } else {
      command('L', segment.end());
    }
  }

  private void quarter(Arc arc, Vec end) {
    data.append('A').append(number(arc.rx())).append(' ').append(number(arc.ry())).append(' ')
        .append(number(Math.toDegrees(-arc.tilt()))).append(" 0 ").append(arc.sweep() > 0 ? '0' : '1');
    point(' ', end);
  }

  private void command(char command, Vec to) {
    data.append(command);
    data.append(number(to.x())).append(' ').append(number(-to.y()));
  }

  /** To a millionth of a millimetre, which hides the last digits that doubles add. */
  static String number(double value) {
    return PlainNumber.rounded(value, 6);
  }

  private void point(char before, Vec to) {
    command(before, to);
  }
}
