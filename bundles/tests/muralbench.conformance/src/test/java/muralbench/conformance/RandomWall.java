// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import muralbench.setout.BondSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * A panel with openings made from a number; the same number makes the same panel.
 *
 * @param panel as the set-out is given it
 * @param outline the same outline, for the independent count
 * @param openings the same openings, for the independent count
 */
record RandomWall(PanelSpec panel, Outline outline, List<Outline> openings) {
  private static final double[] OFFSETS = {0, 0, 0.5, 1.0 / 3, 0.25};
  private static final double[] TURNS = {0, 0, 0, 45, 30, 90, -12.5};

  static RandomWall of(long seed) {
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    Outline outline = outline(random, between(random, -200, 900), between(random, 0, 900), 700);
    Box box = outline.contour().box();
    double side = Math.min(box.width(), box.height());
    TileSpec tile = new TileSpec("T", side * between(random, 0.07, 0.5), side * between(random, 0.07, 0.5), 8, 0, -1);
    List<Outline> openings = openings(random, outline, box);
    List<OpeningSpec> specs = new ArrayList<>();
    for (Outline opening : openings) {
      specs.add(new OpeningSpec("O" + specs.size(), "window", opening.contour()));
    }
    double offset = random.nextInt(4) == 0 ? random.nextDouble() : pick(random, OFFSETS);
    BondSpec bond = new BondSpec(offset == 0 ? "grid" : "running", offset, pick(random, TURNS), Map.of());
    OriginSpec origin = random.nextBoolean() ? new OriginSpec.Balanced()
        : new OriginSpec.At(new Vec(box.minX() + between(random, 0, 400), box.minY() + between(random, 0, 400)));
    double joint = random.nextInt(5) == 0 ? 0 : between(random, 1, 9);
    PanelSpec panel = new PanelSpec("P", "", "wall", "fixed", tile, joint, 0, outline.contour(), specs, bond, origin);
    return new RandomWall(panel, outline, openings);
  }

  /** The region to tile, in the coordinates of the bond. */
  Area region(Vec origin) {
    double turn = Math.toRadians(panel.bond().rotation());
    Area region = outline.area(origin, turn);
    openings.forEach(opening -> region.subtract(opening.area(origin, turn)));
    return region;
  }

  private static List<Outline> openings(Random random, Outline outline, Box box) {
    List<Outline> openings = new ArrayList<>();
    for (int wanted = random.nextInt(4); wanted > 0; wanted--) {
      double x = between(random, box.minX(), box.maxX());
      double y = between(random, box.minY(), box.maxY());
      Outline opening = outline(random, x, y, between(random, 15, 250));
      Area outside = opening.area(Vec.ZERO, 0);
      outside.subtract(outline.area(Vec.ZERO, 0));
      if (outside.isEmpty()) {
        openings.add(opening);
      }
    }
    return openings;
  }

  private static Outline outline(Random random, double x, double y, double size) {
    double width = size * between(random, 0.4, 1.6);
    double height = size * between(random, 0.4, 1.6);
    return switch (random.nextInt(4)) {
      case 0 -> Outline.rectangle(x, y, width, height);
      case 1 -> Outline.circle(x + width / 2, y + width / 2, width / 2);
      case 2 -> Outline.arch(x, y, width, height / 2);
      default -> star(random, x + width / 2, y + height / 2, width / 2, height / 2);
    };
  }

  /** A polygon with 3 to 11 corners at any distance in any direction about a point it surrounds. */
  private static Outline star(Random random, double x, double y, double halfWidth, double halfHeight) {
    List<Double> angles = new ArrayList<>();
    int corners = 3 + random.nextInt(9);
    for (int i = 0; i < corners; i++) {
      angles.add(2 * Math.PI * (i + between(random, 0.05, 0.75)) / corners);
    }
    Collections.sort(angles);
    List<Point2D> points = new ArrayList<>();
    for (double angle : angles) {
      double share = between(random, 0.35, 1);
      points.add(new Point2D.Double(x + halfWidth * share * Math.cos(angle), y + halfHeight * share * Math.sin(angle)));
    }
    return Outline.polygon(points);
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private static double pick(Random random, double... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
