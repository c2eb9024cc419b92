// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A movement of a drawing that keeps all lengths, mirror images included: (x, y) goes to (xx x + xy y, yx x + yy y)
 * plus the shift. For drawings only; a fired tile cannot be mirrored.
 *
 * @param xx matrix, first row, first column
 * @param xy matrix, first row, second column
 * @param yx matrix, second row, first column
 * @param yy matrix, second row, second column
 * @param shift what is added, mm
 */
public record Isometry(double xx, double xy, double yx, double yy, Vec shift) {
  /** Everything stays. */
  public static final Isometry NONE = shift(0, 0);

  /** Only a shift, mm. */
  public static Isometry shift(double x, double y) {
    return new Isometry(1, 0, 0, 1, new Vec(x, y));
  }

  /** Whether drawings become their mirror images. */
  public boolean mirrors() {
    return xx * yy - xy * yx < 0;
  }

  /** This movement followed by {@code next}. */
  public Isometry then(Isometry next) {
    return new Isometry(next.xx * xx + next.xy * yx, next.xx * xy + next.xy * yy, next.yx * xx + next.yy * yx,
        next.yx * xy + next.yy * yy, next.of(shift));
  }

  /** Where a point goes. */
  public Vec of(Vec point) {
    return direction(point).plus(shift);
  }

  /** Where a direction goes: the movement without its shift. */
  public Vec direction(Vec vector) {
    return new Vec(xx * vector.x() + xy * vector.y(), yx * vector.x() + yy * vector.y());
  }

  /** The segment after the movement, walked from the image of its start to the image of its end. */
  public Segment of(Segment segment) {
    if (segment instanceof Line line) {
      return new Line(of(line.start()), of(line.end()));
    }
    if (segment instanceof Cubic cubic) {
      return new Cubic(of(cubic.start()), of(cubic.c1()), of(cubic.c2()), of(cubic.end()));
    }
    return arc((Arc) segment);
  }

  private Arc arc(Arc arc) {
    Vec axis = direction(new Vec(Math.cos(arc.tilt()), Math.sin(arc.tilt())));
    double tilt = Math.atan2(axis.y(), axis.x());
    int sense = mirrors() ? -1 : 1;
    return new Arc(of(arc.centre()), arc.rx(), arc.ry(), tilt, sense * arc.from(), sense * arc.sweep());
  }

  /** The contour after the movement; a mirror image runs the other way round. */
  public Contour of(Contour contour) {
    List<Segment> moved = new ArrayList<>(contour.segments().size());
    contour.segments().forEach(segment -> moved.add(of(segment)));
    return new Contour(moved);
  }
}
