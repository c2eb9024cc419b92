// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.JointLines;
import muralbench.setout.movement.JointLines.JointLine;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementLine;
import muralbench.setout.movement.MovementPlan;
import muralbench.setout.movement.MovementSpec;

/**
 * Opens joints of a panel that was set out without movement joints to the width of movement joints, and sets it out
 * again. A given start stays; a balanced one is found anew among those that lie even in the panel with the joints opened.
 */
final class MovementLaying {
  private static final double ROUNDING = 1e-6;
  /** Opening joints and moving the start changes the bays; the plan is made shorter until they keep the rule. */
  private static final int MOST_PLANS = 8;

  private final Messages texts = Messages.of(MovementLaying.class);
  private final PanelSpec panel;
  private final PanelSetOut plain;
  private final Pattern pattern;
  private final Motion turned;
  private final LengthUnit units;
  private final Layer layer;

  /** Sets a panel out with another pattern. */
  interface Layer {
    /** The best of some starts, in the pattern's directions. */
    Vec best(Pattern pattern, List<Vec> starts);

    /** The set-out from a start in the wall plane. */
    PanelSetOut laid(Pattern pattern, Vec origin, List<MovementJoint> joints) throws InputException;
  }

  MovementLaying(PanelSetOut plain, Pattern pattern, Motion turned, LengthUnit units, Layer layer) {
    this.panel = plain.spec();
    this.plain = plain;
    this.pattern = pattern;
    this.turned = turned;
    this.units = units;
    this.layer = layer;
  }

  PanelSetOut laid() throws InputException {
    if (panel.movement() instanceof MovementSpec.Given given) {
      return opened(snapped(given.joints()));
    }
    if (panel.movement() instanceof MovementSpec.ByRule rule) {
      return byRule(rule);
    }
    return plain;
  }

  private PanelSetOut byRule(MovementSpec.ByRule wanted) throws InputException {
    double most = wanted.rule().greatestSpacing();
    double greatest = most;
    PanelSetOut laid = plain;
    for (int i = 0; i < MOST_PLANS && greatest > 0; i++) {
      MovementPlan plan = MovementPlan.of(plain, wanted.rule(), greatest, wanted.swing(), wanted.keepOut());
      laid = opened(plan.lines().stream().filter(line -> !line.throughTile())
          .map(line -> new MovementJoint(line.axis(), line.at(), plan.width())).toList());
      List<MovementLine> lines = new ArrayList<>(laid.movement().stream().map(MovementJoint::line).toList());
      plan.lines().stream().filter(MovementLine::throughTile).forEach(lines::add);
      double over = MovementPlan.greatestBay(laid, lines) - most;
      if (over <= ROUNDING) {
        break;
      }
      greatest -= over;
    }
    return laid;
  }

  private List<MovementJoint> snapped(List<MovementJoint> wanted) throws InputException {
    List<MovementJoint> joints = new ArrayList<>();
    for (MovementJoint joint : wanted) {
      JointLine line = JointLines.of(plain, joint.axis()).stream()
          .min(Comparator.comparingDouble(one -> Math.abs(one.at() - joint.at()))).orElse(null);
      if (line == null) {
        throw error("movement.none", "axis", texts.text("axis." + joint.axis().word()));
      }
      if (joint.width() < panel.joint()) {
        throw error("movement.narrow", "width", LengthText.exact(joint.width(), units), "joint",
            LengthText.exact(panel.joint(), units));
      }
      if (joints.stream().anyMatch(other -> other.axis() == joint.axis() && other.at() == line.at())) {
        throw error("movement.twice", "at", LengthText.shown(joint.at(), units));
      }
      joints.add(new MovementJoint(joint.axis(), line.at(), joint.width()));
    }
    return joints;
  }

  private InputException error(String key, Object... values) {
    return new InputException(panel.id(), texts.text(key, values), texts.text(key + ".remedy"));
  }

  private PanelSetOut opened(List<MovementJoint> joints) throws InputException {
    if (joints.isEmpty()) {
      return plain;
    }
    Motion placed = turned.then(Motion.shift(plain.origin()));
    boolean level = Math.abs(placed.cos()) > Math.abs(placed.sin());
    MovementAxis plumb = level ? MovementAxis.VERTICAL : MovementAxis.HORIZONTAL;
    OpenedAxis along = axis(joints, plumb, placed);
    OpenedAxis across = axis(joints, level ? MovementAxis.HORIZONTAL : MovementAxis.VERTICAL, placed);
    Pattern widened = new WidenedPattern(pattern, along, across);
    Vec origin = plain.origin();
    if (panel.origin() instanceof OriginSpec.Balanced balanced) {
      // What lies on a focus is moved back onto it.
      origin = balanced.focus().map(placed.inverse()::of).map(at -> new Vec(along.shift(at.x()), across.shift(at.y())))
          .map(shift -> plain.origin().minus(turned.of(shift)))
          .orElseGet(() -> turned.of(layer.best(widened, starts(along, across))));
    } else if (panel.origin() instanceof OriginSpec.Level) {
      origin = turned.of(layer.best(widened, level(starts(along, across))));
    }
    Motion moved = turned.then(Motion.shift(origin));
    List<MovementJoint> opened = new ArrayList<>();
    for (OpenedAxis.Opened joint : along.joints()) {
      opened.add(joint(joint, moved.of(new Vec(along.middle(joint), 0)), level));
    }
    for (OpenedAxis.Opened joint : across.joints()) {
      opened.add(joint(joint, moved.of(new Vec(0, across.middle(joint))), !level));
    }
    opened.sort(MovementJoint.ORDER);
    return layer.laid(widened, origin, opened);
  }

  /** Starts moved up or down to the height at which the courses were level with those of another panel. */
  private List<Vec> level(List<Vec> starts) {
    Motion back = turned.inverse();
    return starts.stream().map(start -> back.of(new Vec(turned.of(start).x(), plain.origin().y()))).toList();
  }

  private MovementJoint joint(OpenedAxis.Opened opened, Vec at, boolean vertical) {
    return new MovementJoint(vertical ? MovementAxis.VERTICAL : MovementAxis.HORIZONTAL, vertical ? at.x() : at.y(),
        panel.joint() + opened.extra());
  }

  /** The joints of an axis in the pattern's coordinates. */
  private OpenedAxis axis(List<MovementJoint> joints, MovementAxis axis, Motion placed) {
    boolean vertical = axis == MovementAxis.VERTICAL;
    boolean along = vertical == Math.abs(placed.cos()) > Math.abs(placed.sin());
    Motion back = placed.inverse();
    return new OpenedAxis(joints.stream().filter(joint -> joint.axis() == axis).map(joint -> {
      Vec at = back.of(vertical ? new Vec(joint.at(), plain.origin().y()) : new Vec(plain.origin().x(), joint.at()));
      return new OpenedAxis.Opened(along ? at.x() : at.y(), joint.width() - panel.joint());
    }).toList());
  }

  /** The starts that are even in the panel, and the one that keeps the middle of the field where it was. */
  private List<Vec> starts(OpenedAxis along, OpenedAxis across) {
    Motion back = turned.inverse();
    Box box = plain.tiled().stream().map(edge -> edge.moved(back).box()).reduce(Box::and).orElseThrow();
    Vec before = back.of(plain.origin());
    Vec middle = box.centre();
    Box seen = new Box(box.minX() - before.x(), box.minY() - before.y(), box.maxX() - before.x(),
        box.maxY() - before.y());
    List<Vec> starts = new ArrayList<>();
    for (double x : even(along, pattern.runs(Axis.ALONG, seen), middle.x() - before.x(), box.width())) {
      for (double y : even(across, pattern.runs(Axis.ACROSS, seen), middle.y() - before.y(), box.height())) {
        starts.add(new Vec(middle.x() - x, middle.y() - y));
      }
    }
    return starts;
  }

  /** Points of an axis that may be laid on the middle of the panel; if any leave no gap at its ends, only those. */
  private List<Double> even(OpenedAxis axis, List<Run> runs, double middle, double length) {
    double off = (axis.after() - axis.before()) / 2;
    if (runs.size() != 1 || axis.joints().isEmpty()) {
      return List.of(middle + off);
    }
    Run run = runs.get(0);
    double half = (length - axis.after() - axis.before()) / 2;
    List<Double> points = new ArrayList<>(List.of(middle));
    for (double even : new double[] {run.start() + run.face() / 2, run.start() - (run.module() - run.face()) / 2}) {
      points.add(even + Math.rint((middle - even) / run.module()) * run.module());
    }
    List<Double> flush = points.stream().filter(point -> !inJoint(run, point - half) && !inJoint(run, point + half))
        .toList();
    return (flush.isEmpty() ? points : flush).stream().map(point -> point + off).toList();
  }

  /** Whether a place lies in a joint between two faces of a row, or flush with the start of one. */
  private static boolean inJoint(Run run, double at) {
    double share = (at - run.start()) / run.module();
    double rest = (share - Math.floor(share)) * run.module();
    return rest > run.face() + ROUNDING && rest < run.module() - ROUNDING;
  }
}
