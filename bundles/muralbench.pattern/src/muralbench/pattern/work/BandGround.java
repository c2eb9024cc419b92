// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.border.BandPath;
import muralbench.pattern.border.Curve;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The outer edge of a band around a panel, less its edge gap.
 *
 * @param path the edge, if the panel has right angles
 * @param curve the edge, if the panel is a circle or an arch
 */
record BandGround(Optional<BandPath> path, Optional<Curve> curve) {
  private static final Messages TEXTS = Messages.of(BandGround.class);
  private static final double UPRIGHT = 1e-6;
  private static final double SAME = 1e-6;

  static BandGround of(PanelSpec panel) throws InputException {
    Contour outline = panel.outline();
    double gap = panel.edgeGap();
    if (outline.straight()) {
      if (!outline.segments().stream().allMatch(BandGround::upright)) {
        throw refused(panel, "ground.aslant");
      }
      BandPath path = BandPath.polygon(outline.segments().stream().map(Segment::start).toList());
      if (!path.holds(gap)) {
        throw refused(panel, "ground.gap");
      }
      return new BandGround(Optional.of(gap > 0 ? path.movedIn(gap) : path), Optional.empty());
    }
    Optional<Curve> curve = circle(outline, gap).or(() -> arch(outline, gap));
    if (curve.isEmpty()) {
      throw refused(panel, "ground.curve");
    }
    return new BandGround(Optional.empty(), curve);
  }

  /** The upright rectangle of a panel that a band along single sides asks for. */
  static Box rectangle(PanelSpec panel) throws InputException {
    BandGround ground = of(panel);
    if (ground.path().isEmpty() || !ground.path().get().rectangular()) {
      throw refused(panel, "ground.sides");
    }
    return panel.outline().box().grown(-panel.edgeGap());
  }

  private static InputException refused(PanelSpec panel, String key) {
    return new InputException(panel.id(), TEXTS.text(key), TEXTS.text(key + ".remedy"));
  }

  private static boolean upright(Segment side) {
    Vec along = side.end().minus(side.start());
    return Math.min(Math.abs(along.x()), Math.abs(along.y())) < UPRIGHT;
  }

  private static Optional<Curve> circle(Contour outline, double gap) {
    Optional<Arc> arc = arc(outline.segments());
    return arc.filter(each -> outline.segments().stream().noneMatch(Segment::straight))
        .map(each -> Curve.circle(each.centre(), each.rx() - gap));
  }

  /** A level foot, two upright legs of one height and an arc over them. */
  private static Optional<Curve> arch(Contour outline, double gap) {
    Box box = outline.box();
    List<Segment> lines = outline.segments().stream().filter(Segment::straight).toList();
    Optional<Arc> arc = arc(outline.segments());
    if (arc.isEmpty() || lines.isEmpty() || !lines.stream().allMatch(BandGround::upright)) {
      return Optional.empty();
    }
    double springing = lines.stream().mapToDouble(line -> line.box().maxY()).max().orElseThrow();
    boolean sides = lines.stream().map(Segment::box).allMatch(line -> Math.abs(line.maxY() - box.minY()) < SAME
        || (Math.abs(line.minX() - box.minX()) < SAME || Math.abs(line.maxX() - box.maxX()) < SAME)
        && line.width() < SAME);
    double rise = box.maxY() - springing;
    double half = box.width() / 2;
    boolean round = Math.abs(rise - half) < SAME;
    boolean high = springing - box.minY() > gap && rise > 0 && rise <= half + SAME;
    boolean fits = Math.abs(arc.get().centre().x() - box.centre().x()) < SAME
        && Math.abs(arc.get().centre().y() + arc.get().rx() - box.maxY()) < SAME && (round || gap == 0);
    return sides && high && fits ? Optional.of(Curve.segmentalArch(new Vec(box.minX() + gap, box.minY() + gap),
        box.width() - 2 * gap, springing - box.minY() - gap, round ? half - gap : rise)) : Optional.empty();
  }

  /** The circle that all curved sides lie on. */
  private static Optional<Arc> arc(List<Segment> segments) {
    Arc first = null;
    for (Segment segment : segments) {
      if (!segment.straight()) {
        if (!(segment instanceof Arc arc) || !arc.circular()) {
          return Optional.empty();
        }
        first = first == null ? arc : first;
        if (arc.centre().distance(first.centre()) > SAME || Math.abs(arc.rx() - first.rx()) > SAME) {
          return Optional.empty();
        }
      }
    }
    return Optional.ofNullable(first);
  }
}
