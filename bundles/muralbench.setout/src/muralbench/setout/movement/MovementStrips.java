// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;

/** The parts of a movement joint that have tile beside them: what is filled with sealant, and what is drawn. */
public final class MovementStrips {
  private static final double FLUSH = 0.01;

  private MovementStrips() {}

  /** The strips of a joint in the wall plane, as wide as the joint, in growing order; they end at openings. */
  public static List<Box> of(PanelSetOut panel, MovementJoint joint) {
    boolean vertical = joint.axis() == MovementAxis.VERTICAL;
    double low = joint.at() - joint.width() / 2;
    double high = joint.at() + joint.width() / 2;
    List<double[]> beside = new ArrayList<>();
    for (Piece piece : panel.pieces()) {
      Box box = piece.box();
      double from = vertical ? box.minX() : box.minY();
      double to = vertical ? box.maxX() : box.maxY();
      if (Math.abs(to - low) < FLUSH || Math.abs(from - high) < FLUSH) {
        beside.add(vertical ? new double[] {box.minY(), box.maxY()} : new double[] {box.minX(), box.maxX()});
      }
    }
    List<Box> strips = new ArrayList<>();
    for (double[] run : merged(beside, widest(panel) + FLUSH)) {
      strips.add(vertical ? new Box(low, run[0], high, run[1]) : new Box(run[0], low, run[1], high));
    }
    return strips;
  }

  /** Joints that cross are run over. */
  private static double widest(PanelSetOut panel) {
    return panel.movement().stream().mapToDouble(MovementJoint::width).reduce(panel.spec().joint(), Math::max);
  }

  private static List<double[]> merged(List<double[]> runs, double gap) {
    runs.sort(Comparator.comparingDouble(run -> run[0]));
    List<double[]> merged = new ArrayList<>();
    for (double[] run : runs) {
      double[] last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && run[0] - last[1] <= gap) {
        last[1] = Math.max(last[1], run[1]);
      } else {
        merged.add(run);
      }
    }
    return merged;
  }
}
