// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import muralbench.setout.geometry.PathData.PathDataException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What is written as path data reads back as the same line. */
class PathDataProperties {
  @Property(tries = 500)
  void readsBackWhatItWrote(@ForAll long seed, @ForAll @IntRange(min = 1, max = 12) int steps)
      throws PathDataException {
    Contour contour = wander(new Random(seed), steps);
    List<Contour> back = PathData.parse(PathData.print(contour));
    assertEquals(1, back.size());
    assertEquals(contour.signedArea(), back.get(0).signedArea(), 1e-2);
    List<Vec> expected = samples(contour, 8);
    List<Vec> found = samples(back.get(0), 8);
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < expected.size(); i++) {
      assertTrue(expected.get(i).distance(found.get(i)) < 1e-4, expected.get(i) + " became " + found.get(i));
    }
  }

  @Property(tries = 500)
  void writesTheSameTextAgainForStraightLinesAndCurves(@ForAll long seed) throws PathDataException {
    Random random = new Random(seed);
    List<Segment> segments = new ArrayList<>();
    Vec start = point(random);
    segments.add(new Cubic(start, point(random), point(random), point(random)));
    segments.add(new Line(segments.get(0).end(), point(random)));
    segments.add(new Line(segments.get(1).end(), start));
    Contour contour = new Contour(segments);
    assertEquals(contour, PathData.parse(PathData.print(contour)).get(0));
  }

  /** A full circle is written in two halves; their common middle is not to be lost to rounding. */
  @Property(tries = 300)
  void readsBackTheCentreOfACircle(@ForAll long seed) throws PathDataException {
    Random random = new Random(seed);
    Vec centre = point(random);
    double radius = 1 + 900 * random.nextDouble();
    Contour back = PathData.parse(PathData.print(Contour.circle(centre, radius))).get(0);
    assertEquals(2, back.segments().size());
    for (Segment segment : back.segments()) {
      Arc half = assertInstanceOf(Arc.class, segment);
      assertEquals(0, half.centre().distance(centre), 1e-9);
      assertEquals(radius, half.rx(), 1e-9);
      assertEquals(Math.PI, half.sweep(), 1e-9);
    }
  }

  /** A closed line of random segments of all kinds. */
  private static Contour wander(Random random, int steps) {
    List<Segment> segments = new ArrayList<>();
    Vec start = point(random);
    Vec here = start;
    for (int i = 0; i < steps; i++) {
      Segment next = switch (random.nextInt(3)) {
        case 0 -> new Line(here, point(random));
        case 1 -> new Cubic(here, point(random), point(random), point(random));
        default -> arc(random, here);
      };
      segments.add(next);
      here = next.end();
    }
    segments.add(new Line(here, start));
    return new Contour(segments);
  }

  private static Arc arc(Random random, Vec start) {
    double rx = 1 + 500 * random.nextDouble();
    double ry = random.nextBoolean() ? rx : rx * (0.1 + random.nextDouble());
    double sweep = (0.1 + random.nextDouble() * 6) * (random.nextBoolean() ? 1 : -1);
    Arc atZero = new Arc(Vec.ZERO, rx, ry, rx == ry ? 0 : random.nextDouble() * 7, random.nextDouble() * 7, sweep);
    return atZero.moved(Motion.shift(start.minus(atZero.start())));
  }

  private static Vec point(Random random) {
    return new Vec(random.nextDouble() * 4000 - 2000, random.nextDouble() * 3000);
  }

  /** Points at equal steps; an arc that was written in two halves counts as one. */
  private static List<Vec> samples(Contour contour, int steps) {
    List<Vec> points = new ArrayList<>();
    List<Segment> segments = contour.segments();
    for (int i = 0; i < segments.size(); i++) {
      boolean halved = i + 1 < segments.size() && halves(segments.get(i), segments.get(i + 1));
      sample(segments.get(i), halved ? steps / 2 : steps, points);
      if (halved) {
        i++;
        sample(segments.get(i), steps / 2, points);
      }
    }
    return points;
  }

  private static void sample(Segment segment, int steps, List<Vec> points) {
    for (int k = 0; k < steps; k++) {
      points.add(segment.at((double) k / steps));
    }
  }

  private static boolean halves(Segment one, Segment other) {
    return one instanceof Arc a && other instanceof Arc b && a.centre().distance(b.centre()) < 1e-3
        && Math.abs(a.sweep() - b.sweep()) < 1e-4;
  }
}
