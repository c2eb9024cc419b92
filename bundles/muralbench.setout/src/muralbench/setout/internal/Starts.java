// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** The starts of a pattern that a search for the balanced one has to look at, in the pattern's directions. */
final class Starts {
  private static final double EXACT = 1e-6;
  /** Strips and gaps that differ by less count as equal, mm. */
  private static final double STEP = 1e-4;
  /** Wider than any strip, mm. */
  private static final double LARGE = 1e6;
  private static final int REPEAT_SAMPLES = 6;
  private static final int MOST_STARTS = 14;

  /** Starts nearer to each other than this share of the tile are no choice. */
  private static final double ALIKE = 1.0 / 16;

  private final List<Contour> edges;
  private final Box box;
  private final Pattern pattern;
  private final TileSpec tile;
  private final double joint;
  private final Optional<Vec> focus;

  /**
   * A start with what it is known to give at best, or, once tried, what it gives.
   *
   * @param ruled on how many axes the half-tile rule holds
   * @param strip narrowest strip of cut tiles on the other axes, in whole steps of {@link #STEP}
   */
  record Start(Vec at, double gap, int ruled, long strip, double smallest, int cuts, int balanced) {
    /** First what leaves no gap, keeps the half-tile rule and has the widest strips. */
    static final Comparator<Start> BY_RULES = Comparator.<Start>comparingLong(start -> Math.round(start.gap() / STEP))
        .thenComparing(Comparator.comparingInt(Start::ruled).reversed())
        .thenComparing(Comparator.comparingLong(Start::strip).reversed());

    /** The same start, tried. */
    Start with(double smallest, int cuts) {
      return new Start(at, gap, ruled, strip, smallest, cuts, balanced);
    }
  }

  /** Starts on a region; {@code focus} is a point for a face centre or a crossing of joints, if that is asked for. */
  Starts(List<Contour> edges, Box box, Pattern pattern, TileSpec tile, double joint, Optional<Vec> focus) {
    this.edges = edges;
    this.box = box;
    this.pattern = pattern;
    this.tile = tile;
    this.joint = joint;
    this.focus = focus;
  }

  /** All starts, those with the best hopes first. */
  List<Start> all() {
    boolean rows = !pattern.runs(Axis.ACROSS, box).isEmpty();
    List<Start> starts = focus.isPresent() ? onFocus(focus.get(), rows) : rows ? alongRows() : overRepeat();
    starts.sort(Start.BY_RULES.thenComparing(Comparator.comparingDouble(Start::smallest).reversed())
        .thenComparing(Comparator.comparingInt(Start::balanced).reversed()));
    return starts;
  }

  /** Whether two starts lay the faces in nearly the same places. */
  boolean alike(Vec one, Vec other) {
    Vec apart = one.minus(other);
    Vec along = pattern.repeat().map(Pattern.Repeat::along).orElse(new Vec(tile.width() + joint, 0));
    Vec across = pattern.repeat().map(Pattern.Repeat::across).orElse(new Vec(0, tile.height() + joint));
    double area = along.cross(across);
    double i = apart.cross(across) / area;
    double k = along.cross(apart) / area;
    Vec rest = along.times(i - Math.rint(i)).plus(across.times(k - Math.rint(k)));
    return rest.length() < Math.min(tile.width(), tile.height()) * ALIKE;
  }

  static Start untried(Vec at, int balanced) {
    return new Start(at, 0, 0, 0, Double.POSITIVE_INFINITY, 0, balanced);
  }

  /** The starts that lay the centre of a face or a crossing of joints on a point. */
  private List<Start> onFocus(Vec point, boolean rows) {
    List<Vec> centres = centres();
    List<Vec> marks = pattern.centres().isEmpty() ? List.of(centres.get(0), centres.get(centres.size() - 1)) : centres;
    List<Start> starts = new ArrayList<>();
    for (Vec mark : marks) {
      Vec at = point.minus(mark);
      starts.add(rows ? start(at, courses(), rows(at.y()), at.y(), at.x(), 0) : untried(at, 0));
    }
    return starts;
  }

  private StraightCuts courses() {
    return StraightCuts.ofCourses(edges, box, pattern, tile.width());
  }

  private StraightCuts rows(double height) {
    return StraightCuts.ofRows(edges, box, pattern, height, tile.height());
  }

  private static Start start(Vec at, StraightCuts courses, StraightCuts rows, double up, double right, int balanced) {
    boolean upRuled = courses.halfTileRule(up);
    boolean rightRuled = rows.halfTileRule(right);
    double strip = Math.min(upRuled ? LARGE : courses.narrowestStrip(up), rightRuled ? LARGE : rows.narrowestStrip(right));
    return new Start(at, Math.max(courses.gap(up), rows.gap(right)), (upRuled ? 1 : 0) + (rightRuled ? 1 : 0),
        Math.round(strip / STEP), Math.min(courses.smallest(up), rows.smallest(right)), 0, balanced);
  }

  /** Starts for patterns of straight rows: events of the straight edges, and samples where there are others. */
  private List<Start> alongRows() {
    List<Start> starts = new ArrayList<>();
    StraightCuts courses = courses();
    Run rise = pattern.runs(Axis.ACROSS, box).get(0);
    for (double up : shortList(courses, rise, box.minY(), box.maxY())) {
      double y = firstSeen(up, rise, box.minY());
      StraightCuts rows = rows(y);
      Run first = pattern.runs(Axis.ALONG, new Box(0, box.minY() - y, 0, box.maxY() - y)).get(0);
      for (double right : shortList(rows, first, box.minX(), box.maxX())) {
        Vec at = new Vec(firstSeen(right, first, box.minX()), y);
        int balanced = balanced(up, rise, box.minY() + box.maxY()) + balanced(right, first, box.minX() + box.maxX());
        starts.add(start(at, courses, rows, up, right, balanced));
      }
    }
    return starts;
  }

  /** The most promising starts along one axis. */
  private List<Double> shortList(StraightCuts cuts, Run run, double low, double high) {
    List<Double> all = new ArrayList<>(cuts.events());
    double module = cuts.module();
    for (double middle : new double[] {run.face() / 2, -joint / 2}) {
      double start = (low + high) / 2 - middle - run.start();
      all.add(start - Math.floor(start / module) * module);
    }
    all.sort(Comparator.<Double>comparingLong(start -> Math.round(cuts.gap(start) / STEP))
        .thenComparing(start -> cuts.halfTileRule(start) ? 0 : 1)
        .thenComparing(start -> -Math.round(cuts.narrowestStrip(start) / STEP))
        .thenComparing(start -> -cuts.smallest(start)).thenComparing(start -> -balanced(start, run, low + high)));
    List<Double> few = new ArrayList<>();
    for (double start : all) {
      if (few.size() < MOST_STARTS && few.stream().noneMatch(other -> Math.abs(other - start) < EXACT)) {
        few.add(start);
      }
    }
    for (double start : all) {
      if (balanced(start, run, low + high) == 1 && few.stream().noneMatch(other -> Math.abs(other - start) < EXACT)) {
        few.add(start);
      }
    }
    return few;
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

  /** Starts for patterns without straight rows: their middles, and samples over the repeat. */
  private List<Start> overRepeat() {
    List<Start> starts = new ArrayList<>();
    for (Vec centre : centres()) {
      starts.add(untried(box.centre().minus(centre), 2));
    }
    pattern.repeat().ifPresent(repeat -> {
      for (int i = 0; i < REPEAT_SAMPLES; i++) {
        for (int k = 0; k < REPEAT_SAMPLES; k++) {
          Vec share = repeat.along().times((double) i / REPEAT_SAMPLES)
              .plus(repeat.across().times((double) k / REPEAT_SAMPLES));
          starts.add(untried(box.centre().minus(centres().get(0)).plus(share), 0));
        }
      }
    });
    return starts;
  }

  private List<Vec> centres() {
    if (!pattern.centres().isEmpty()) {
      return pattern.centres();
    }
    return List.of(new Vec(tile.width() / 2, tile.height() / 2), new Vec(tile.width() / 2, -joint / 2),
        new Vec(-joint / 2, tile.height() / 2), new Vec(-joint / 2, -joint / 2));
  }
}
