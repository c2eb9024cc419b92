// SPDX-License-Identifier: EPL-2.0
package muralbench.bench;

import java.util.List;
import java.util.Locale;
import muralbench.base.Progress;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Sets out a facade of 100,000 tiles and an arched panel. The baseline clips the same cells one by one with the plain
 * overlay call of the geometry library, on the same region with the same chords; a sample of the cells is clipped and
 * scaled up, since all of them would take minutes.
 */
public final class SetOutBenchmark {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final int SAMPLE = 400;
  private static final OriginSpec START = new OriginSpec.At(new Vec(1, 1));

  private SetOutBenchmark() {}

  /** Runs all; takes about a minute. */
  public static void main(String[] args) throws Exception {
    double hundred = Medians.time(() -> setOut(Facades.facade(100_000, START)));
    double twoHundred = Medians.time(() -> setOut(Facades.facade(200_000, START)));
    double balanced = Medians.time(() -> setOut(Facades.facade(100_000, new OriginSpec.Balanced())));
    double arch = Medians.time(() -> setOut(Facades.arch(2_000)));
    double plain = plainOverlay(Facades.facade(100_000, START));
    print("facade, 100,000 cells, given start", hundred, "aim at most 1000");
    print("facade, 100,000 cells, balanced start", balanced, "aim at most 1000");
    print("facade, 200,000 cells, given start", twoHundred, "");
    print("arched panel, 2,000 cells, balanced start", arch, "aim at most 200");
    print("baseline: plain overlay of every cell, 100,000 cells", plain, "scaled up from " + SAMPLE);
    ratio("faster than the plain overlay", plain / hundred, "aim at least 8");
    dragged("rectangle", "O9");
    dragged("circle", "O11");
    ratio("200,000 against 100,000 cells", twoHundred / hundred, "aim at most 2.3");
  }

  private static void dragged(String shape, String opening) throws Exception {
    Drags drags = Drags.of(10_000, opening);
    double[] steps = drags.steps();
    double whole = drags.whole();
    System.out.printf(Locale.ROOT, "%-58s %9.2f ms   aim at most 5; longest of the path %.1f ms%n",
        "opening dragged in 10,000 cells, " + shape + ", a step", steps[0], steps[1]);
    ratio("a step faster than the whole set-out of that panel", whole / steps[0], "");
  }

  private static Object setOut(PanelSpec panel) throws Exception {
    return SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
  }

  private static double plainOverlay(PanelSpec panel) throws Exception {
    Geometry region = polygon(panel.outline());
    for (OpeningSpec opening : panel.openings()) {
      region = region.difference(polygon(opening.outline()));
    }
    Geometry whole = region;
    Box box = panel.outline().box();
    int columns = (int) Math.ceil(box.width() / Facades.MODULE);
    int rows = (int) Math.ceil(box.height() / Facades.MODULE);
    int every = columns * rows / SAMPLE;
    double time = Medians.time(() -> {
      double area = 0;
      for (int i = 0; i < columns * rows; i += every) {
        double x = 1 + i % columns * Facades.MODULE;
        double y = 1 + i / columns * Facades.MODULE;
        Geometry cell = FACTORY.toGeometry(new Envelope(x, x + Facades.TILE, y, y + Facades.TILE));
        area += whole.intersection(cell).getArea();
      }
      return area;
    });
    return time * every;
  }

  private static Geometry polygon(Contour contour) {
    List<Vec> points = contour.points(SetOut.CHORD_ERROR);
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec point = points.get(i % points.size());
      ring[i] = new Coordinate(point.x(), point.y());
    }
    return FACTORY.createPolygon(ring);
  }

  private static void print(String what, double milliseconds, String note) {
    System.out.printf(Locale.ROOT, "%-58s %9.0f ms   %s%n", what, milliseconds, note);
  }

  private static void ratio(String what, double ratio, String note) {
    System.out.printf(Locale.ROOT, "%-58s %9.1f x    %s%n", what, ratio, note);
  }
}
