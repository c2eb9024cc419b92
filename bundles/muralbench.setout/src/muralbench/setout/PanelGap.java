// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import muralbench.setout.geometry.Box;
import muralbench.setout.movement.JointLines;
import muralbench.setout.movement.MovementAxis;

/**
 * What lies between two neighbours on the wall, measured from the boxes around their outlines.
 *
 * @param left the panel on the left
 * @param right the panel on the right
 * @param across from the right edge of the one to the left edge of the other, mm, at least 0
 * @param rise how much higher the lower edge of the right panel is, mm; below 0 if it is lower
 */
public record PanelGap(PanelSetOut left, PanelSetOut right, double across, double rise) {
  private static final double TOUCH = 1e-6;

  /** The gaps to the next panel on the right, in the order of the panels on the left. Floors have none. */
  public static List<PanelGap> of(List<PanelSetOut> panels) {
    List<PanelSetOut> wall = panels.stream().filter(panel -> panel.spec().surface().equals("wall")).toList();
    List<PanelGap> gaps = new ArrayList<>();
    for (PanelSetOut left : wall) {
      Box box = box(left);
      wall.stream().filter(right -> box(right).minX() >= box.maxX() - TOUCH && beside(box, box(right)))
          .min(Comparator.comparingDouble(right -> box(right).minX()))
          .ifPresent(right -> gaps.add(new PanelGap(left, right, Math.max(0, box(right).minX() - box.maxX()),
              box(right).minY() - box.minY())));
    }
    return gaps;
  }

  private static Box box(PanelSetOut panel) {
    return panel.spec().outline().box();
  }

  private static boolean beside(Box one, Box other) {
    return Math.min(one.maxY(), other.maxY()) - Math.max(one.minY(), other.minY()) > TOUCH;
  }

  /** Whether one grid runs on behind the gap. */
  public boolean sharesGrid() {
    return left.spec().origin() instanceof OriginSpec.Shared shared && shared.equals(right.spec().origin());
  }

  /** How many modules (tile and joint, across) the gap is wide, if one grid of level courses runs on behind it. */
  public OptionalDouble modules() {
    PanelSpec panel = left.spec();
    return sharesGrid() && panel.bond().rotation() % 180 == 0 && rise(left).isPresent()
        ? OptionalDouble.of(across / (panel.tile().width() + panel.joint())) : OptionalDouble.empty();
  }

  /**
   * How far the level courses of the panels are out of line at the height that both have, mm, at most half of what a
   * course rises: above 0 where those of the right panel are higher. Empty if not both have straight level courses of
   * one height.
   */
  public OptionalDouble step() {
    OptionalDouble rise = rise(left);
    if (rise.isEmpty() || rise(right).isEmpty() || Math.abs(rise.getAsDouble() - rise(right).getAsDouble()) > TOUCH) {
      return OptionalDouble.empty();
    }
    double low = Math.max(box(left).minY(), box(right).minY());
    double high = Math.min(box(left).maxY(), box(right).maxY());
    List<Double> lines = courses(left);
    Optional<Double> most = courses(right).stream().filter(at -> at > low && at < high)
        .map(at -> lines.stream().map(other -> at - other).min(Comparator.comparingDouble(Math::abs)).orElseThrow())
        .filter(step -> Math.abs(step) <= rise.getAsDouble() / 2 + TOUCH)
        .max(Comparator.comparingDouble(step -> Math.abs(step)));
    return most.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  /** What a course rises by, if all courses are straight and level. */
  private static OptionalDouble rise(PanelSetOut panel) {
    boolean level = JointLines.of(panel, MovementAxis.HORIZONTAL).size() == courses(panel).size() - 1;
    return level && panel.spec().bond().rotation() % 180 == 0 && panel.courses() == courses(panel).size()
        ? OptionalDouble.of(panel.spec().tile().height() + panel.spec().joint()) : OptionalDouble.empty();
  }

  /** The heights of the lower edges of the faces, each once. */
  private static List<Double> courses(PanelSetOut panel) {
    List<Double> lines = new ArrayList<>();
    panel.pieces().stream().map(piece -> piece.face().box().minY()).sorted().forEach(at -> {
      if (lines.isEmpty() || at - lines.get(lines.size() - 1) > TOUCH) {
        lines.add(at);
      }
    });
    return lines;
  }
}
