// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Rings from the rim inwards and a disc; see {@link RingBond}. Courses count from the disc outwards. */
final class RingPattern implements Pattern {
  private final List<Ring> rings;
  private final double disc;

  /** A pattern; {@code disc} is the radius of the piece in the middle, mm, none if it is not above 0. */
  RingPattern(List<Ring> rings, double disc) {
    this.rings = List.copyOf(rings);
    this.disc = disc;
  }

  @Override
  public void cells(Box area, Consumer<Cell> each) {
    if (disc > 0) {
      put(new Cell(0, 0, Contour.circle(Vec.ZERO, disc), "disc"), area, each);
    }
    for (int i = 0; i < rings.size(); i++) {
      int course = rings.size() - i;
      for (int number = 0; number < rings.get(i).count(); number++) {
        put(new Cell(course, number, rings.get(i).wedge(number), "ring" + course), area, each);
      }
    }
  }

  private static void put(Cell cell, Box area, Consumer<Cell> each) {
    if (cell.face().box().meets(area)) {
      each.accept(cell);
    }
  }

  @Override
  public List<Run> runs(Axis axis, Box area) {
    return List.of();
  }

  @Override
  public List<Vec> centres() {
    return List.of(Vec.ZERO);
  }

  @Override
  public boolean concentric() {
    return true;
  }

  @Override
  public double density() {
    double radius = rings.get(0).outer();
    return (rings.stream().mapToInt(Ring::count).sum() + 1) / (Math.PI * radius * radius);
  }
}
