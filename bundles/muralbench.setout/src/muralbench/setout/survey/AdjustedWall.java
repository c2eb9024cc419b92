// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import java.util.Comparator;
import java.util.List;
import muralbench.setout.geometry.Vec;

/**
 * A wall as its measurements make it out.
 *
 * @param corners the adjusted points in their order, mm
 * @param misfits every measurement with how far it is off
 * @param spare how many more measurements there were than the figure needs; 0 means that nothing checks them
 * @param accuracy what the tape is good for, mm; 0 where nothing is checked
 */
public record AdjustedWall(List<Vec> corners, List<Misfit> misfits, int spare, double accuracy) {
  public AdjustedWall {
    corners = List.copyOf(corners);
    misfits = List.copyOf(misfits);
  }

  /** A wall of just as many measurements as it needs, so that nothing checks them. */
  public static AdjustedWall unchecked(List<Vec> corners) {
    return new AdjustedWall(corners, List.of(), 0, 0);
  }

  /** The measurements that cannot be right, those farthest off first. */
  public List<Misfit> suspects() {
    return misfits.stream().filter(Misfit::suspect)
        .sorted(Comparator.comparingDouble((Misfit misfit) -> -Math.abs(misfit.off()))).toList();
  }

  /**
   * The error of one measurement as the misfits make it out, mm: the root of their squared sum over the spare
   * measurements, which surveyors call the standard error of unit weight. Least squares shares the error of one
   * measurement out over all, so this tells of a wrong one better than each misfit by itself. 0 if nothing is spare.
   */
  public double spread() {
    double squares = misfits.stream().mapToDouble(misfit -> misfit.off() * misfit.off()).sum();
    return spare == 0 ? 0 : Math.sqrt(squares / spare);
  }

  /** Whether the misfits together say that some measurement is wrong, even where none is suspect by itself. */
  public boolean disagrees() {
    return spread() > Survey.SUSPECT * accuracy;
  }

  /**
   * The corners at the lower left, lower right, upper right and upper left of a wall whose points run along the lower
   * edge to the right and back along the upper edge with as many points.
   */
  public List<Vec> fourCorners() {
    int edge = corners.size() / 2;
    return List.of(corners.get(0), corners.get(edge - 1), corners.get(edge), corners.get(2 * edge - 1));
  }

  /**
   * How far the side from a corner to the next leans from square to the side before it, taken at the end of the side, mm;
   * positive if the corner is wider than a right angle.
   */
  public double outOfSquare(int corner) {
    int count = corners.size();
    Vec here = corners.get(corner);
    Vec before = here.minus(corners.get((corner + count - 1) % count));
    Vec after = corners.get((corner + 1) % count).minus(here);
    return before.dot(after) / before.length();
  }

  /** How much higher the end of a side is than its start, mm; 0 for a level side. */
  public double outOfLevel(int side) {
    return corners.get((side + 1) % corners.size()).y() - corners.get(side).y();
  }
}
