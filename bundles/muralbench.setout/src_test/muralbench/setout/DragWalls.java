// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementRule;
import muralbench.setout.movement.MovementSpec;

/** Random panels with one to three openings, and places to drag them to. */
final class DragWalls {
  private final Random random;

  DragWalls(Random random) {
    this.random = random;
  }

  /** A set-out that is possible: where a random opening does not fit, another is tried. */
  PanelSetOut setOut() {
    while (true) {
      try {
        return SetOut.panel(panel(), BondRegistry.standard(), Progress.NONE);
      } catch (InputException e) {
        continue;
      }
    }
  }

  private PanelSpec panel() {
    Contour outline = outline();
    List<OpeningSpec> openings = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    for (int i = 1; i <= count; i++) {
      openings.add(new OpeningSpec("O" + i, "window", opening(outline.box())));
    }
    OriginSpec origin = random.nextBoolean() ? new OriginSpec.Balanced() : new OriginSpec.At(point(outline.box()));
    double gap = random.nextInt(3) == 0 ? 1 + random.nextInt(12) : 0;
    double joint = random.nextInt(4) == 0 ? 0 : 3;
    BondSpec bond = bond(outline.box());
    double height = bond.kind().equals("herringbone") || bond.kind().equals("basket") ? (150 - joint) / 2 : 110;
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", 150, height, 0, 0, -1), joint, gap,
        outline, openings, bond, origin);
    return panel.withMovement(movement(outline.box()));
  }

  private BondSpec bond(Box box) {
    double quarters = 90 * random.nextInt(4);
    return switch (random.nextInt(10)) {
      case 0 -> new BondSpec("running", 0.5, quarters, Map.of());
      case 1 -> new BondSpec("running", 1 / 3.0, random.nextInt(90), Map.of());
      case 2 -> new BondSpec("diagonal", 0, 0, Map.of());
      case 3 -> new BondSpec("hexagon", 0, quarters, Map.of());
      case 4 -> new BondSpec("herringbone", 0, quarters, Map.of());
      case 5 -> new BondSpec("basket", 0, 0, Map.of());
      case 6 -> new BondSpec("octagon", 0, 0, Map.of());
      case 7 -> new BondSpec("rings", 0, 0, Map.of("radius", box.width() / 2 + " mm", "rings", "120 mm, 140 mm, 100 mm"));
      default -> new BondSpec("grid", 0, quarters, Map.of());
    };
  }

  private MovementSpec movement(Box box) {
    return switch (random.nextInt(4)) {
      case 0 -> new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, point(box).x(), 9),
          new MovementJoint(MovementAxis.HORIZONTAL, point(box).y(), 12.5)));
      case 1 -> new MovementSpec.ByRule(new MovementRule(800, true, false), 100);
      default -> new MovementSpec.None();
    };
  }

  private Contour outline() {
    double wide = 1200 + random.nextInt(1200);
    double high = 900 + random.nextInt(900);
    return switch (random.nextInt(5)) {
      case 0 -> Contour.rectangle(0, 0, wide, high);
      case 1 -> Contour.polygon(List.of(Vec.ZERO, new Vec(wide, 0), new Vec(wide, high / 2), new Vec(wide / 2, high / 2),
          new Vec(wide / 2, high), new Vec(0, high)));
      case 2 -> arched(0, 0, wide, high);
      case 3 -> Contour.circle(new Vec(wide / 2, wide / 2), wide / 2);
      default -> Contour.polygon(List.of(Vec.ZERO, new Vec(wide, 30), new Vec(wide - 200, high), new Vec(wide / 3, high + 400),
          new Vec(0, high)));
    };
  }

  private static Contour arched(double x, double y, double wide, double high) {
    Vec left = new Vec(x, y + high);
    Vec right = new Vec(x + wide, y + high);
    Arc top = Arc.circular(new Vec(x + wide / 2, y + high), wide / 2, 0, Math.PI);
    return new Contour(List.of(new Line(new Vec(x, y), new Vec(x + wide, y)), new Line(new Vec(x + wide, y), right), top,
        new Line(left, new Vec(x, y))));
  }

  /** An opening of any shape and size with its lower left corner, or middle, anywhere in a box. */
  Contour opening(Box box) {
    Vec at = point(box);
    double wide = 20 + random.nextInt(500);
    double high = 20 + random.nextInt(400);
    return switch (random.nextInt(6)) {
      case 0, 1 -> Contour.rectangle(at.x(), at.y(), wide, high);
      case 2 -> Contour.circle(at, wide / 2);
      case 3 -> arched(at.x(), at.y(), wide, high);
      case 4 -> Contour.polygon(List.of(at, at.plus(new Vec(wide, 10)), at.plus(new Vec(30, high))));
      default -> Contour.rectangle(at.x(), box.minY(), wide, high);
    };
  }

  /** The opening at another place: nearby or anywhere, also outside, often by whole millimetres. */
  Contour moved(Contour opening, Box box) {
    Vec from = opening.box().centre();
    Vec by = random.nextBoolean() ? point(box).minus(from) : new Vec(random.nextDouble() * 60 - 30, random.nextInt(41) - 20);
    return opening.moved(Motion.shift(random.nextBoolean() ? by : new Vec(Math.rint(by.x()), Math.rint(by.y()))));
  }

  private Vec point(Box box) {
    return new Vec(box.minX() + random.nextDouble() * box.width(), box.minY() + random.nextDouble() * box.height());
  }
}
