// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.survey;

import java.util.List;
import muralbench.setout.geometry.Vec;

/**
 * A wall as its measurements make it out.
 *
 * @param corners the adjusted points in their order, mm
 * @param misfits every measurement with how far it is off
 * @param spare how many more measurements there were than the figure needs; 0 means that nothing checks them
 */
public record AdjustedWall(List<Vec> corners, List<Misfit> misfits, int spare) {
  public AdjustedWall {
    corners = List.copyOf(corners);
    misfits = List.copyOf(misfits);
  }

  /** The measurements that cannot be right. */
  public List<Misfit> suspects() {
    return misfits.stream().filter(Misfit::suspect).toList();
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
