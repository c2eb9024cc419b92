// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.List;
import java.util.function.Consumer;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** A pattern with some of its straight joints opened to the width of movement joints. */
final class WidenedPattern implements Pattern {
  private final Pattern pattern;
  private final OpenedAxis along;
  private final OpenedAxis across;

  WidenedPattern(Pattern pattern, OpenedAxis along, OpenedAxis across) {
    this.pattern = pattern;
    this.along = along;
    this.across = across;
  }

  @Override
  public void cells(Box area, Consumer<Cell> each) {
    Box before = new Box(area.minX() - along.after(), area.minY() - across.after(), area.maxX() + along.before(),
        area.maxY() + across.before());
    pattern.cells(before, cell -> {
      Vec middle = cell.face().box().centre();
      Vec shift = new Vec(along.shift(middle.x()), across.shift(middle.y()));
      Cell moved = new Cell(cell.course(), cell.position(), cell.face().moved(Motion.shift(shift)), cell.part());
      if (moved.face().box().meets(area)) {
        each.accept(moved);
      }
    });
  }

  /** None: the rows no longer repeat. */
  @Override
  public List<Run> runs(Axis axis, Box area) {
    return List.of();
  }

  @Override
  public double density() {
    return pattern.density();
  }

  @Override
  public boolean concentric() {
    return pattern.concentric();
  }
}
