// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Courses of equal rectangles that stand upright, each shifted up against the one on its left: a {@link CoursePattern} with
 * x and y exchanged. Cells are numbered as in all patterns, upwards and to the right: one number of a course takes one tile
 * of every standing course.
 *
 * @param level the pattern that is exchanged, of tiles as wide as these are high
 */
record VerticalCourses(CoursePattern level) implements Pattern {
  @Override
  public void cells(Box area, Consumer<Cell> each) {
    level.cells(exchanged(area), cell -> {
      Box face = exchanged(cell.face().box());
      each.accept(new Cell(cell.position(), cell.course(),
          Contour.rectangle(face.minX(), face.minY(), face.width(), face.height())));
    });
  }

  @Override
  public List<Run> runs(Axis axis, Box area) {
    return level.runs(axis == Axis.ALONG ? Axis.ACROSS : Axis.ALONG, exchanged(area));
  }

  @Override
  public Optional<Repeat> repeat() {
    return level.repeat().map(repeat -> {
      Box face = exchanged(repeat.faces().get(0).box());
      return new Repeat(exchanged(repeat.across()), exchanged(repeat.along()),
          List.of(Contour.rectangle(0, 0, face.width(), face.height())));
    });
  }

  @Override
  public double density() {
    return level.density();
  }

  private static Box exchanged(Box box) {
    return new Box(box.minY(), box.minX(), box.maxY(), box.maxX());
  }

  private static Vec exchanged(Vec vec) {
    return new Vec(vec.y(), vec.x());
  }
}
