// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Repeat;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** The starts of a pattern that a search for the balanced one has to look at, in the pattern's directions. */
final class Starts {
  private static final double EXACT = 1e-6;
  /** Strips and gaps that differ by less count as equal, mm. */
  private static final double STEP = 1e-4;

  /** Starts nearer to each other than this share of the tile are no choice. */
  private static final double ALIKE = 1.0 / 16;

  private final List<Contour> edges;
  private final Box box;
  private final Pattern pattern;
  private final TileSpec tile;
  private final double joint;
  private final boolean rows;

  /**
   * A start with what is known of it before it is tried.
   *
   * @param gap widest gap at an end, mm
   * @param bound no start there has a wider smallest cut, mm
   * @param narrow narrowest strip of cut tiles, in whole steps of {@link #STEP}
   * @param wide narrowest strip on the other axis
   * @param balanced on how many axes a face or a joint stands on the middle of the region
   */
  record Start(Vec at, double gap, double bound, long narrow, long wide, int balanced) {
    /** First what leaves no gap, then the widest strips, then the lowest and leftmost. */
    static final Comparator<Start> BY_STRIPS = Comparator.<Start>comparingLong(start -> Math.round(start.gap() / STEP))
        .thenComparing(Comparator.comparingLong(Start::narrow).reversed())
        .thenComparing(Comparator.comparingLong(Start::wide).reversed());
  }

  /** Looks at starts; false ends it. */
  interface Visit {
    /** A start whose smallest cut may be wider than those that follow. */
    boolean start(Start start);
  }

  /**
   * Starts on a region.
   *
   * @param edges in the pattern's directions, without those of small openings
   */
  Starts(List<Contour> edges, Box box, Pattern pattern, TileSpec tile, double joint) {
    this.edges = edges;
    this.box = box;
    this.pattern = pattern;
    this.tile = tile;
    this.joint = joint;
    rows = !pattern.runs(Axis.ACROSS, box).isEmpty();
  }

  /** Whether the pattern has straight rows of faces that are known beforehand. */
  boolean rows() {
    return rows;
  }

  /** Whether the events of the straight edges can be told exactly, in a time that is worth it. */
  boolean eventful(int most) {
    StraightCuts courses = courses();
    return courses.even() && rows(0).even() && (long) courses.edges() * (courses.edges() + rows(0).edges()) < most;
  }

  /** What the pattern repeats by, if it does. */
  Optional<Repeat> repeat() {
    return pattern.repeat().or(() -> rows ? Optional.of(new Repeat(new Vec(rows(0).module(), 0),
        new Vec(0, courses().module()), List.of())) : Optional.empty());
  }

  StraightCuts courses() {
    return StraightCuts.ofCourses(edges, box, pattern, tile.width());
  }

  StraightCuts rows(double height) {
    return StraightCuts.ofRows(edges, box, pattern, height, tile.height());
  }

  /** No start leaves wider cuts than this, mm. */
  double most() {
    return rows ? Math.min(courses().narrowestPassage(joint), rows(0).narrowestPassage(joint))
        : Math.min(tile.width(), tile.height());
  }

  /** The start at a place. */
  Start at(Vec at) {
    return rows ? start(at, courses(), rows(at.y())) : new Start(at, 0, Double.POSITIVE_INFINITY, 0, 0, centred(at));
  }

  private Start start(Vec at, StraightCuts courses, StraightCuts rows) {
    double up = courses.narrowestStrip(at.y());
    double right = rows.narrowestStrip(at.x());
    Run rise = pattern.runs(Axis.ACROSS, box).get(0);
    Run first = firstRow(at.y());
    int balanced = balanced(at.y(), rise, box.minY() + box.maxY()) + balanced(at.x(), first, box.minX() + box.maxX());
    return new Start(at, Math.max(courses.gap(at.y()), rows.gap(at.x())),
        Math.min(courses.smallest(at.y()), rows.smallest(at.x())), Math.round(Math.min(up, right) / STEP),
        Math.round(Math.max(up, right) / STEP), balanced);
  }

  private Run firstRow(double height) {
    return pattern.runs(Axis.ALONG, new Box(0, box.minY() - height, 0, box.maxY() - height)).get(0);
  }

  /**
   * Visits the starts among which the best is, for patterns of straight rows: course by course those with the widest
   * promises first, each as long as the visit is not ended; the end of a course's starts goes on with the next course.
   *
   * @param limit as in {@link StraightCuts#starts}, mm
   * @param more heights to look at as well
   * @param first what makes a start come first on one axis
   */
  void visit(double limit, List<Vec> more, boolean strips, Visit visit) {
    StraightCuts courses = courses();
    Run rise = pattern.runs(Axis.ACROSS, box).get(0);
    ToDoubleFunction<Double> up = strips ? courses::narrowestStrip : courses::smallest;
    for (double height : sorted(starts(courses, limit, rise, box.minY() + box.maxY(), more, false), up)) {
      double y = firstSeen(height, rise, box.minY());
      StraightCuts rows = rows(y);
      Run first = firstRow(y);
      ToDoubleFunction<Double> right = strips ? rows::narrowestStrip : rows::smallest;
      for (double start : sorted(starts(rows, limit, first, box.minX() + box.maxX(), more, true), right)) {
        if (!visit.start(start(new Vec(firstSeen(start, first, box.minX()), y), courses, rows))) {
          break;
        }
      }
    }
  }

  private static List<Double> sorted(List<Double> starts, ToDoubleFunction<Double> first) {
    starts.sort(Comparator.comparingDouble(first).reversed());
    return starts;
  }

  /** The starts along one axis: events, the middles, and those that were found elsewhere. */
  private List<Double> starts(StraightCuts cuts, double limit, Run run, double sum, List<Vec> more, boolean along) {
    List<Double> starts = new ArrayList<>(cuts.starts(limit));
    for (double middle : new double[] {run.face() / 2, -joint / 2}) {
      double start = sum / 2 - middle - run.start();
      starts.add(start - Math.floor(start / cuts.module()) * cuts.module());
    }
    more.forEach(at -> starts.add(along ? at.x() : at.y()));
    return starts;
  }

  /** 1 if a face or a joint of the run stands on the middle between two edges whose places add up to {@code sum}. */
  private static int balanced(double start, Run run, double sum) {
    double halves = (sum - run.face() - 2 * (run.start() + start)) / run.module();
    return Math.abs(halves - Math.rint(halves)) * run.module() < EXACT ? 1 : 0;
  }

  /** The start of the first face of a run that reaches beyond an edge. */
  private static double firstSeen(double start, Run run, double edge) {
    double before = Math.floor((edge + EXACT - run.face() - run.start() - start) / run.module());
    return start + (before + 1) * run.module();
  }

  /** The same start, told by the first face at the lower left. */
  Vec firstSeen(Vec at) {
    if (!rows) {
      return at;
    }
    Repeat repeat = repeat().orElseThrow();
    double y = firstSeen(at.y(), pattern.runs(Axis.ACROSS, box).get(0), box.minY());
    double x = at.x() + Math.rint((y - at.y()) / repeat.across().y()) * repeat.across().x();
    return new Vec(firstSeen(x, firstRow(y), box.minX()), y);
  }

  /** Starts that lay the centre of a face or a crossing of joints on a point. */
  List<Vec> onPoint(Vec point) {
    List<Vec> centres = centres();
    List<Vec> marks = pattern.centres().isEmpty() ? List.of(centres.get(0), centres.get(centres.size() - 1)) : centres;
    return marks.stream().map(point::minus).toList();
  }

  /** Starts that lay the pattern's middles on the middle of the region. */
  List<Vec> centred() {
    return centres().stream().map(centre -> box.centre().minus(centre)).toList();
  }

  private int centred(Vec at) {
    return centred().stream().anyMatch(start -> apart(start, at) < EXACT) ? 2 : 0;
  }

  private List<Vec> centres() {
    if (!pattern.centres().isEmpty()) {
      return pattern.centres();
    }
    return List.of(new Vec(tile.width() / 2, tile.height() / 2), new Vec(tile.width() / 2, -joint / 2),
        new Vec(-joint / 2, tile.height() / 2), new Vec(-joint / 2, -joint / 2));
  }

  /** Whether two starts lay the faces in nearly the same places. */
  boolean alike(Vec one, Vec other) {
    return apart(one, other) < Math.min(tile.width(), tile.height()) * ALIKE;
  }

  private double apart(Vec one, Vec other) {
    Vec apart = one.minus(other);
    Vec along = pattern.repeat().map(Repeat::along).orElse(new Vec(tile.width() + joint, 0));
    Vec across = pattern.repeat().map(Repeat::across).orElse(new Vec(0, tile.height() + joint));
    double area = along.cross(across);
    double i = apart.cross(across) / area;
    double k = along.cross(apart) / area;
    return apart.minus(along.times(Math.rint(i))).minus(across.times(Math.rint(k))).length();
  }
}
