// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.base.Progress;
import muralbench.setout.PieceKind;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.NarrowWidth;
import muralbench.setout.geometry.Vec;

/**
 * Finds the balanced start of a pattern on any region: no gap at an end of the region, then along each axis equal cuts at
 * both ends of at least half a tile where that is possible, then the smallest cut as wide as can be (its
 * {@link NarrowWidth true narrow width}, also around openings), then the fewest cut tiles, then balance about the region's
 * middle. This is what ANSI A108.02 §4.3.1 and §4.3.2, as quoted in the trade press, ask of a layout.
 *
 * <p>For regions and courses at right angles the starts that can be best are known exactly ({@link StraightCuts}), and all
 * that matter are tried. Elsewhere the starts are sampled, and the best is refined by halving steps; widths within
 * {@link #TOLERANCE} then count as equal.
 */
final class PlacementSearch {
  /** Smallest cuts on curved and slanting edges that differ by less than this count as equal, mm. */
  static final double TOLERANCE = 1;
  private static final double EXACT = 1e-6;
  private static final int SAMPLES = 12;
  private static final int REPEAT_SAMPLES = 6;
  private static final int MOST_STARTS = 14;
  private static final int MOST_TRIES = 700;

  private final TiledRegion region;
  private final Pattern pattern;
  private final Motion turned;
  private final TileSpec tile;
  private final double joint;
  private final List<Contour> edges;
  private final Box box;
  private final boolean square;
  private final Progress progress;

  /** A start with what it is known to give at best, or, once tried, what it gives; {@code ruled} counts axes. */
  private record Start(Vec at, double gap, int ruled, double smallest, int cuts, int balanced) {}

  PlacementSearch(TiledRegion region, Pattern pattern, Motion turned, TileSpec tile, double joint, Progress progress) {
    this.region = region;
    this.pattern = pattern;
    this.turned = turned;
    this.tile = tile;
    this.joint = joint;
    this.progress = progress;
    Motion back = turned.inverse();
    edges = region.edges().stream().map(edge -> edge.moved(back)).toList();
    box = region.box(back);
    square = edges.stream().flatMap(edge -> edge.segments().stream()).allMatch(side -> {
      Vec along = side.tangent(0);
      return side.straight() && Math.min(Math.abs(along.x()), Math.abs(along.y())) < EXACT;
    });
  }

  /** The best start, in the pattern's directions. */
  Vec best() {
    boolean rows = !pattern.runs(Axis.ACROSS, box).isEmpty();
    List<Start> starts = rows ? alongRows() : overRepeat();
    starts.sort(Comparator.comparingDouble(Start::gap).thenComparing(Comparator.comparingInt(Start::ruled).reversed())
        .thenComparing(Comparator.comparingDouble(Start::smallest).reversed())
        .thenComparing(Comparator.comparingInt(Start::balanced).reversed()));
    List<Start> tried = tried(starts);
    Start best = choose(tried);
    return rows && (square || best.ruled() == 2) ? best.at() : refined(best, tried).at();
  }

  private double tolerance() {
    return square ? EXACT : TOLERANCE;
  }

  /** Tries starts, best hopes first, until no other can be better. */
  private List<Start> tried(List<Start> starts) {
    List<Start> tried = new ArrayList<>();
    double gap = starts.get(0).gap();
    int ruled = starts.get(0).ruled();
    double best = 0;
    for (Start start : starts) {
      progress.step(0);
      boolean worse = start.gap() > gap + EXACT || start.ruled() < ruled;
      if (worse && !tried.isEmpty() || tried.size() >= MOST_TRIES) {
        break;
      }
      if (start.smallest() >= best - tolerance()) {
        Start result = tried(start, best - tolerance());
        if (result != null) {
          tried.add(result);
          best = Math.max(best, result.smallest());
        }
      }
    }
    return tried;
  }

  private Start choose(List<Start> tried) {
    double best = tried.stream().mapToDouble(Start::smallest).max().orElseThrow();
    return tried.stream().filter(start -> start.smallest() >= best - tolerance())
        .min(Comparator.comparingInt(Start::cuts).thenComparing(Comparator.comparingInt(Start::balanced).reversed())
            .thenComparing(Comparator.comparingDouble(Start::smallest).reversed()))
        .orElseThrow();
  }

  /** What a start gives, or null as soon as a piece is narrower than the limit. */
  private Start tried(Start start, double limit) {
    Motion placed = turned.then(Motion.shift(turned.of(start.at())));
    CellCutter cutter = new CellCutter(region, placed);
    double[] smallest = {Double.POSITIVE_INFINITY};
    int[] cuts = {0};
    pattern.cells(region.box(placed.inverse()), cell -> {
      if (smallest[0] < limit) {
        return;
      }
      CutCell cut = cutter.cutAtEdge(cell);
      if (cut != null) {
        boolean whole = true;
        for (CutCell.Part part : cut.parts()) {
          if (part.kind() != PieceKind.WHOLE) {
            whole = false;
            smallest[0] = Math.min(smallest[0], NarrowWidth.of(part.outline(), part.holes()));
          }
        }
        cuts[0] += whole ? 0 : 1;
      }
    });
    if (smallest[0] < limit) {
      return null;
    }
    double width = Math.min(smallest[0], Math.min(tile.width(), tile.height()));
    return new Start(start.at(), start.gap(), start.ruled(), width, cuts[0], start.balanced());
  }

  /** Starts for patterns of straight rows: events of the straight edges, and samples where there are others. */
  private List<Start> alongRows() {
    List<Start> starts = new ArrayList<>();
    StraightCuts courses = StraightCuts.ofCourses(edges, box, pattern);
    Run rise = pattern.runs(Axis.ACROSS, box).get(0);
    for (double up : shortList(courses, rise, box.minY(), box.maxY())) {
      double y = firstSeen(up, rise, box.minY());
      StraightCuts rows = StraightCuts.ofRows(edges, box, pattern, y);
      Run first = pattern.runs(Axis.ALONG, new Box(0, box.minY() - y, 0, box.maxY() - y)).get(0);
      for (double right : shortList(rows, first, box.minX(), box.maxX())) {
        Vec at = new Vec(firstSeen(right, first, box.minX()), y);
        int balanced = balanced(up, rise, box.minY() + box.maxY()) + balanced(right, first, box.minX() + box.maxX());
        int ruled = (courses.halfTileRule(up) ? 1 : 0) + (rows.halfTileRule(right) ? 1 : 0);
        starts.add(new Start(at, Math.max(courses.gap(up), rows.gap(right)), ruled,
            Math.min(courses.smallest(up), rows.smallest(right)), 0, balanced));
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
    all.sort(Comparator.<Double>comparingDouble(cuts::gap).thenComparing(start -> -cuts.smallest(start))
        .thenComparing(start -> -balanced(start, run, low + high)));
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
    for (int i = 0; !square && i < SAMPLES; i++) {
      few.add(i * module / SAMPLES);
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

  private static Start untried(Vec at, int balanced) {
    return new Start(at, 0, 0, Double.POSITIVE_INFINITY, 0, balanced);
  }

  private List<Vec> centres() {
    if (!pattern.centres().isEmpty()) {
      return pattern.centres();
    }
    return List.of(new Vec(tile.width() / 2, tile.height() / 2), new Vec(tile.width() / 2, -joint / 2),
        new Vec(-joint / 2, tile.height() / 2), new Vec(-joint / 2, -joint / 2));
  }

  /** Looks around the best start in ever smaller steps, as long as that gains more than the tolerance. */
  private Start refined(Start best, List<Start> tried) {
    Start widest = tried.stream().max(Comparator.comparingDouble(Start::smallest)).orElseThrow();
    Start found = widest;
    for (double step = Math.min(tile.width(), tile.height()) / SAMPLES / 2; step > TOLERANCE / 4; step /= 2) {
      for (Vec way : new Vec[] {new Vec(step, 0), new Vec(-step, 0), new Vec(0, step), new Vec(0, -step)}) {
        Start there = tried(untried(found.at().plus(way), 0), found.smallest() + EXACT);
        if (there != null && gapFree(there.at())) {
          found = there;
        }
      }
    }
    return found.smallest() > Math.max(best.smallest(), widest.smallest()) + TOLERANCE ? found : best;
  }

  private boolean gapFree(Vec at) {
    if (pattern.runs(Axis.ACROSS, box).isEmpty()) {
      return true;
    }
    return StraightCuts.ofCourses(edges, box, pattern).gap(at.y()) < EXACT
        && StraightCuts.ofRows(edges, box, pattern, at.y()).gap(at.x()) < EXACT;
  }
}
