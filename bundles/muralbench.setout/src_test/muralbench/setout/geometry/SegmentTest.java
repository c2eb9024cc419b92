// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every kind of segment promises. */
class SegmentTest {
  private static final double CLOSE = 1e-9;

  static Stream<Segment> segments() {
    return Stream.of(new Line(new Vec(3, 4), new Vec(-20, 90)), Arc.circular(new Vec(10, -5), 40, 1, 2),
        Arc.circular(new Vec(10, -5), 40, 1, -5.5), Arc.circular(Vec.ZERO, 7, 0, 2 * Math.PI),
        new Arc(new Vec(-30, 20), 60, 25, 0.7, -2, 4.4), new Arc(new Vec(5, 5), 12, 55, -1.1, 3, -1.3),
        new Cubic(new Vec(0, 0), new Vec(0, 60), new Vec(90, 60), new Vec(40, -20)),
        new Cubic(new Vec(0, 0), new Vec(100, 100), new Vec(-50, 100), new Vec(50, 0)),
        Cubic.ofQuadratic(new Vec(1, 2), new Vec(30, 80), new Vec(60, 5)));
  }

  private static void assertNear(Vec expected, Vec found) {
    assertEquals(0, expected.distance(found), CLOSE, () -> expected + " expected, found " + found);
  }

  private static List<Vec> samples(Segment segment, int count) {
    return IntStream.rangeClosed(0, count).mapToObj(i -> segment.at((double) i / count)).toList();
  }

  @ParameterizedTest
  @MethodSource("segments")
  void runsFromStartToEnd(Segment segment) {
    assertNear(segment.start(), segment.at(0));
    assertEquals(segment.end(), segment.at(1));
  }

  @ParameterizedTest
  @MethodSource("segments")
  void walksTheSamePointsBackwards(Segment segment) {
    Segment back = segment.reversed();
    for (int i = 0; i <= 10; i++) {
      assertNear(segment.at(i / 10.0), back.at(1 - i / 10.0));
    }
    assertEquals(segment.length(), back.length(), CLOSE);
    assertEquals(segment.sweptArea(), -back.sweptArea(), CLOSE);
  }

  @ParameterizedTest
  @MethodSource("segments")
  void cutsOutAPart(Segment segment) {
    Segment part = segment.part(0.2, 0.7);
    for (int i = 0; i <= 10; i++) {
      assertNear(segment.at(0.2 + 0.05 * i), part.at(i / 10.0));
    }
  }

  @ParameterizedTest
  @MethodSource("segments")
  void addsUpFromItsParts(Segment segment) {
    Segment a = segment.part(0, 0.3);
    Segment b = segment.part(0.3, 1);
    assertEquals(segment.length(), a.length() + b.length(), 1e-6);
    assertEquals(segment.sweptArea(), a.sweptArea() + b.sweptArea(), 1e-8);
  }

  @ParameterizedTest
  @MethodSource("segments")
  void movesEveryPointAlike(Segment segment) {
    Motion motion = Motion.turn(73, new Vec(4, -9)).then(Motion.shift(new Vec(100, 7)));
    Segment moved = segment.moved(motion);
    for (int i = 0; i <= 10; i++) {
      assertNear(motion.of(segment.at(i / 10.0)), moved.at(i / 10.0));
    }
    assertEquals(segment.length(), moved.length(), 1e-6);
  }

  /** The box found from 20,000 points: it may lack what lies between two of them, never have more. */
  @ParameterizedTest
  @MethodSource("segments")
  void fitsItsBoxTightly(Segment segment) {
    Box box = segment.box();
    Box sampled = samples(segment, 20_000).stream().map(p -> Box.of(p, p)).reduce(Box::and).orElseThrow();
    assertTrue(box.grown(CLOSE).holds(sampled), () -> box + " does not hold " + sampled);
    assertTrue(sampled.grown(1e-5).holds(box), () -> box + " is wider than " + sampled);
  }

  @ParameterizedTest
  @MethodSource("segments")
  void sweepsAndMeasuresWhatItsChordsDo(Segment segment) {
    List<Vec> points = samples(segment, 20_000);
    double area = 0;
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      area += points.get(i - 1).cross(points.get(i)) / 2;
      length += points.get(i - 1).distance(points.get(i));
    }
    assertEquals(area, segment.sweptArea(), 1e-3);
    assertEquals(length, segment.length(), 1e-4);
  }

  @ParameterizedTest
  @MethodSource("segments")
  void flattensWithinTheChordError(Segment segment) {
    for (double error : new double[] {20, 1, 0.05, 0.001}) {
      List<Vec> chords = segment.flatten(error);
      assertEquals(segment.end(), chords.get(chords.size() - 1));
      Vec from = segment.start();
      for (int i = 0; i < chords.size(); i++) {
        Segment piece = segment.part((double) i / chords.size(), (i + 1.0) / chords.size());
        Line chord = new Line(from, chords.get(i));
        samples(piece, 8).forEach(point -> assertTrue(distance(chord, point) <= error * (1 + 1e-6)));
        from = chords.get(i);
      }
    }
  }

  private static double distance(Line line, Vec point) {
    return Line2D.ptSegDist(line.start().x(), line.start().y(), line.end().x(), line.end().y(), point.x(),
        point.y());
  }
}
