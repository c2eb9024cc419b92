// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Courses of equal rectangles; see {@link CourseBond}. */
final class CoursePattern implements Pattern {
  /** Runs closer together than this share of a module count as one. */
  private static final double SAME_RUN = 1e-9;

  /** A face that reaches less than this into an area is not in it, mm. */
  private static final double TOUCH = 1e-6;

  private final double width;
  private final double height;
  private final double joint;
  private final double offset;

  CoursePattern(double width, double height, double joint, double offset) {
    this.width = width;
    this.height = height;
    this.joint = joint;
    this.offset = offset;
  }

  @Override
  public void cells(Box area, Consumer<Cell> each) {
    double module = width + joint;
    double rise = height + joint;
    int top = (int) Math.floor(area.maxY() / rise);
    for (int course = (int) Math.ceil((area.minY() - height) / rise); course <= top; course++) {
      double shift = shift(course);
      int right = (int) Math.floor((area.maxX() - shift) / module);
      for (int position = (int) Math.ceil((area.minX() - width - shift) / module); position <= right; position++) {
        each.accept(new Cell(course, position,
            Contour.rectangle(position * module + shift, course * rise, width, height)));
      }
    }
  }

  @Override
  public List<Run> runs(Axis axis, Box area) {
    if (axis == Axis.ACROSS) {
      return List.of(new Run(0, height, height + joint));
    }
    double module = width + joint;
    double rise = height + joint;
    int top = (int) Math.ceil((area.maxY() - TOUCH) / rise) - 1;
    List<Run> runs = new ArrayList<>();
    for (int course = (int) Math.floor((area.minY() + TOUCH - height) / rise) + 1; course <= top; course++) {
      double shift = shift(course);
      if (runs.stream().noneMatch(run -> Math.abs(run.start() - shift) < SAME_RUN * module)) {
        runs.add(new Run(shift, width, module));
      }
    }
    return runs;
  }

  @Override
  public Optional<Repeat> repeat() {
    return Optional.of(new Repeat(new Vec(width + joint, 0), new Vec(shift(1), height + joint),
        List.of(Contour.rectangle(0, 0, width, height))));
  }

  @Override
  public double density() {
    return 1 / ((width + joint) * (height + joint));
  }

  /** How far a course is shifted to the right, 0 up to a module; the shifts of the courses accumulate. */
  private double shift(int course) {
    double share = course * offset;
    return (share - Math.floor(share + SAME_RUN)) * (width + joint);
  }
}
