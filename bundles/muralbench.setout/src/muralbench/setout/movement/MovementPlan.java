// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.movement.JointLines.JointLine;

/**
 * Where the movement joints of a panel go: on straight joints of its bond, as few as the rule allows, with bays as
 * equal as the joints allow and none over the greatest spacing, around what is to be kept out of. Where the bond has no
 * straight joint that would do, the length is divided evenly and the joint is marked as cutting tile.
 *
 * @param rule what was followed
 * @param width width of the movement joints, mm
 * @param lines vertical ones from the left, then horizontal ones from below; empty if none is needed
 * @param greatestBay the longest distance that is left between movement joints or to an edge, mm
 */
public record MovementPlan(MovementRule rule, double width, List<MovementLine> lines, double greatestBay) {
  private static final double ROUNDING = 1e-6;

  public MovementPlan {
    lines = List.copyOf(lines);
  }

  /**
   * Plans a panel.
   *
   * @param exposure as in {@link MovementRule#of}
   * @param swing how far the temperature of the tile's surface swings in a year, °F
   * @param keepOut what no movement joint should run through, such as a face in the picture, in the wall plane
   */
  public static MovementPlan of(PanelSetOut panel, String exposure, double swing, List<Box> keepOut) {
    MovementRule rule = MovementRule.of(exposure, panel.spec().surface());
    return of(panel, rule, rule.greatestSpacing(), swing, keepOut);
  }

  /**
   * Plans a panel with bays shorter than the rule asks for.
   *
   * @param greatest the longest bay, mm, above 0
   */
  public static MovementPlan of(PanelSetOut panel, MovementRule rule, double greatest, double swing,
      List<Box> keepOut) {
    Box field = field(panel);
    double half = rule.width(greatest, swing, panel.spec().joint()) / 2;
    List<MovementLine> lines = new ArrayList<>();
    for (MovementAxis axis : MovementAxis.values()) {
      lines.addAll(lines(panel, axis, field, greatest, keepOut.stream().map(box -> box.grown(half)).toList()));
    }
    double bay = greatestBay(field, lines);
    return new MovementPlan(rule, rule.width(bay, swing, panel.spec().joint()), lines, bay);
  }

  /** The longest distance between movement joints, or from one to the edge of the tile, mm. */
  public static double greatestBay(PanelSetOut panel, List<MovementLine> lines) {
    return greatestBay(field(panel), lines);
  }

  /** The box around the tiled field. */
  public static Box field(PanelSetOut panel) {
    return panel.tiled().stream().map(Contour::box).reduce(Box::and).orElseThrow();
  }

  private static double greatestBay(Box field, List<MovementLine> lines) {
    double greatest = 0;
    for (MovementAxis axis : MovementAxis.values()) {
      double last = low(field, axis);
      double[] ends = DoubleStream.concat(lines.stream().filter(line -> line.axis() == axis)
          .mapToDouble(MovementLine::at).sorted(), DoubleStream.of(high(field, axis))).toArray();
      for (double end : ends) {
        greatest = Math.max(greatest, end - last);
        last = end;
      }
    }
    return greatest;
  }

  private static List<MovementLine> lines(PanelSetOut panel, MovementAxis axis, Box field, double greatest,
      List<Box> keepOut) {
    double low = low(field, axis);
    double high = high(field, axis);
    if (high - low <= greatest + ROUNDING) {
      return List.of();
    }
    List<Bays.Place> places = JointLines.of(panel, axis).stream().map(JointLine::at)
        .map(at -> new Bays.Place(at, kept(axis, at, keepOut))).toList();
    List<Bays.Place> chosen = new Bays(low, high, greatest).divided(places);
    if (chosen != null) {
      return chosen.stream().map(place -> new MovementLine(axis, place.at(), false, place.keepOut())).toList();
    }
    int bays = (int) Math.ceil((high - low - ROUNDING) / greatest);
    List<MovementLine> lines = new ArrayList<>();
    for (int i = 1; i < bays; i++) {
      double at = low + (high - low) * i / bays;
      lines.add(new MovementLine(axis, at, true, kept(axis, at, keepOut)));
    }
    return lines;
  }

  private static boolean kept(MovementAxis axis, double at, List<Box> keepOut) {
    return keepOut.stream().anyMatch(box -> low(box, axis) < at && at < high(box, axis));
  }

  private static double low(Box box, MovementAxis axis) {
    return axis == MovementAxis.VERTICAL ? box.minX() : box.minY();
  }

  private static double high(Box box, MovementAxis axis) {
    return axis == MovementAxis.VERTICAL ? box.maxX() : box.maxY();
  }
}
