// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import muralbench.base.Progress;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Repeat;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.internal.Starts.Start;

/**
 * Finds the balanced start of a pattern on any region. Of all starts the best is, in this order, the one
 * <ol>
 * <li>that leaves no gap as wide as a joint at a straight end of the region, or the least;
 * <li>whose narrowest cut is as wide as can be (its {@link muralbench.setout.geometry.NarrowWidth true narrow width}),
 * over the whole region but for what small openings do to it: openings none of whose edges is as long as the tile;
 * <li>whose strips of cut tiles, at the ends and along edges at least as long as the tile, are as wide as can be on each
 * axis by itself, which makes the cuts at opposite ends equal;
 * <li>whose narrowest cut at small openings, too, is as wide as can be;
 * <li>that cuts the fewest tiles;
 * <li>that has a face or a joint on the middle of the region, on both axes or on one;
 * <li>that is the lowest, then the leftmost.
 * </ol>
 * This goes on from what ANSI A108.02 §4.3.1 and §4.3.2, as quoted in the trade press, ask of a layout: equal cuts at
 * opposite ends, and none under half a tile where that is possible.
 *
 * <p>For straight rows on edges square to them the starts that can be best are the events at which a cut appears, vanishes
 * or equals another ({@link StraightCuts}), and all that can be better than the best so far are tried: the result is exact.
 * Otherwise the second rule is searched by bounds ({@link StartBoxes}): to {@link #FINE} for other faces with edges square to
 * them, else to {@link #TOLERANCE}.
 */
final class PlacementSearch {
  /**
   * By how much the narrowest cut can miss the widest possible where edges are askew, mm; where they are curved, two
   * percent of the tile.
   */
  static final double TOLERANCE = 1;
  private static final double EXACT = 1e-6;
  /** As {@link #TOLERANCE}, for patterns without straight rows on edges square to their faces. */
  private static final double FINE = 0.05;
  private static final int MOST_EVENTS = 1_000_000;

  private final Pattern pattern;
  private final Progress progress;
  private final StartTrial rough;
  private final StartTrial fine;
  private final Starts starts;
  private final Optional<Vec> focus;
  private final boolean square;
  private final double face;

  /** A start that was tried; {@code smallest} leaves the small openings out. */
  private record Tried(Start start, double smallest) {}

  /**
   * A search.
   *
   * @param turned the turn of the pattern on the wall
   * @param focus a point of the wall that a face centre or a crossing of joints has to be laid on, if any
   */
  PlacementSearch(Regions regions, Pattern pattern, Motion turned, PanelSpec panel, Optional<Vec> focus,
      Progress progress) {
    this.pattern = pattern;
    this.progress = progress;
    Motion back = turned.inverse();
    TiledRegion bare = regions.bare();
    List<Contour> edges = bare.edges().stream().map(edge -> edge.moved(back)).toList();
    Box box = bare.box(back);
    face = Math.min(panel.tile().width(), panel.tile().height());
    rough = new StartTrial(bare, turned, pattern, face);
    fine = bare == regions.all() ? rough : new StartTrial(regions.all(), turned, pattern, face);
    starts = new Starts(edges, box, pattern, panel.tile(), panel.joint());
    this.focus = focus.map(back::of);
    square = edges.stream().flatMap(edge -> edge.segments().stream()).allMatch(side -> {
      Vec along = side.tangent(0);
      return side.straight() && Math.min(Math.abs(along.x()), Math.abs(along.y())) < EXACT;
    });
  }

  /** The best start, in the pattern's directions. */
  Vec best() {
    if (focus.isPresent()) {
      return bestOf(starts.onPoint(focus.get()));
    }
    Optional<Repeat> repeat = starts.repeat();
    if (repeat.isEmpty()) {
      return bestOf(starts.centred());
    }
    if (square && starts.rows() && starts.eventful(MOST_EVENTS)) {
      return starts.firstSeen(overEvents());
    }
    Vec best = overBoxes(repeat.get());
    return starts.firstSeen(square ? best : settled(best));
  }

  /**
   * The best start, then others with good hopes, each clearly elsewhere in the pattern than those before.
   *
   * @param most how many at most
   */
  List<Vec> ranked(int most) {
    List<Vec> ranked = new ArrayList<>(List.of(best()));
    List<Start> others = new ArrayList<>();
    if (focus.isPresent()) {
      starts.onPoint(focus.get()).forEach(at -> others.add(starts.at(at)));
    } else if (starts.rows()) {
      starts.visit(0, List.of(), true, start -> others.add(start));
    } else {
      starts.centred().forEach(at -> others.add(starts.at(at)));
    }
    others.sort(Start.BY_STRIPS.thenComparing(Comparator.comparingDouble(Start::bound).reversed())
        .thenComparing(Comparator.comparingInt(Start::balanced).reversed()));
    for (Start start : others) {
      boolean open = start.gap() > others.get(0).gap() + EXACT;
      if (!open && ranked.size() < most && ranked.stream().noneMatch(other -> starts.alike(other, start.at()))) {
        ranked.add(start.at());
      }
    }
    return ranked;
  }

  /** The best of some starts. */
  Vec bestOf(List<Vec> some) {
    List<Start> all = some.stream().map(starts::at).toList();
    double gap = all.stream().mapToDouble(Start::gap).min().orElseThrow();
    List<Tried> tried = new ArrayList<>();
    double best = 0;
    for (Start start : all) {
      double smallest = start.gap() > gap + EXACT ? -1 : smallest(start.at(), best - tolerance());
      if (smallest >= 0) {
        tried.add(new Tried(start, smallest));
        best = Math.max(best, smallest);
      }
    }
    double least = best - tolerance();
    return choose(tried.stream().filter(one -> one.smallest() >= least).toList());
  }

  private double tolerance() {
    return square ? EXACT : TOLERANCE / 2;
  }

  private double smallest(Vec at, double limit) {
    progress.step(0);
    return Math.min(face, rough.smallest(at, limit));
  }

  /** The best start where all that can be best are events. */
  private Vec overEvents() {
    double gap = leastGap();
    double most = starts.most();
    double[] best = {-1};
    starts.visit(0, List.of(), false, start -> {
      if (Math.min(most, start.bound()) <= best[0] + EXACT) {
        return false;
      }
      if (start.gap() <= gap + EXACT) {
        best[0] = Math.max(best[0], smallest(start.at(), best[0] + EXACT));
      }
      return true;
    });
    return evenest(List.of(), gap, best[0]);
  }

  /** Of the starts whose smallest cut is as wide as is known to be possible, the best by the other rules. */
  private Vec evenest(List<Tried> known, double gap, double widest) {
    double limit = widest - tolerance();
    List<Tried> best = new ArrayList<>(known);
    List<Vec> more = known.stream().map(one -> one.start().at()).toList();
    starts.visit(Math.max(0, limit), more, true, start -> {
      int rank = best.isEmpty() ? -1 : Start.BY_STRIPS.compare(start, best.get(0).start());
      if (start.gap() <= gap + EXACT && start.bound() >= limit && rank <= 0) {
        double smallest = smallest(start.at(), limit);
        if (smallest >= 0) {
          if (rank < 0) {
            best.clear();
          }
          best.add(new Tried(start, smallest));
        }
      }
      return true;
    });
    return choose(best);
  }

  private double leastGap() {
    double[] least = {Double.POSITIVE_INFINITY};
    starts.visit(0, List.of(), true, start -> {
      least[0] = Math.min(least[0], start.gap());
      return least[0] > 0;
    });
    return least[0];
  }

  /** The best start by bounds; then, if there are straight rows, the evenest that is as good. */
  private Vec overBoxes(Repeat repeat) {
    double gap = starts.rows() ? leastGap() : 0;
    List<Tried> first = new ArrayList<>();
    Tried known = null;
    for (Vec at : starts.centred()) {
      Start start = starts.at(at);
      double smallest = start.gap() > gap + EXACT ? -1 : smallest(at, known == null ? 0 : known.smallest() - tolerance());
      if (smallest >= 0) {
        first.add(new Tried(start, smallest));
        known = known == null || smallest > known.smallest() ? first.get(first.size() - 1) : known;
      }
    }
    StartBoxes boxes = new StartBoxes(rough, repeat, square, square ? FINE : TOLERANCE / 4, square ? FINE : TOLERANCE / 4,
        at -> starts.at(at).gap() <= gap + EXACT);
    Vec best = boxes.best(known == null ? null : known.start().at(), known == null ? -1 : known.smallest(), face);
    if (starts.rows()) {
      return best == null ? evenest(List.of(), gap, 0)
          : evenest(List.of(new Tried(starts.at(starts.firstSeen(best)), boxes.widest())), gap, boxes.widest());
    }
    first.add(new Tried(starts.at(best), boxes.widest()));
    return choose(first.stream().filter(one -> one.smallest() >= boxes.widest() - tolerance()).toList());
  }

  /**
   * A start that was found with chords in the place of curves, moved a little where the curves themselves leave a sliver
   * that the chords do not.
   */
  private Vec settled(Vec best) {
    double promised = smallest(best, 0);
    Vec settled = best;
    double widest = rough.trulySmallest(best, 0);
    double gap = starts.at(best).gap();
    for (double step = 2 * RegionEdges.CHORD_ERROR; step < TOLERANCE && widest < promised - TOLERANCE / 2; step *= 2) {
      for (int way = 0; way < 9; way++) {
        Vec there = best.plus(new Vec((way % 3 - 1) * step, (way / 3 - 1) * step));
        double width = starts.at(there).gap() > gap + EXACT ? -1 : rough.trulySmallest(there, widest + EXACT);
        if (width > widest) {
          widest = width;
          settled = there;
        }
      }
    }
    return settled;
  }

  /** The best start by rules three to seven. */
  private Vec choose(List<Tried> tried) {
    Start evenest = tried.stream().map(Tried::start).min(Start.BY_STRIPS).orElseThrow();
    List<Start> even = tried.stream().map(Tried::start).filter(one -> Start.BY_STRIPS.compare(one, evenest) == 0).toList();
    if (even.size() == 1) {
      return even.get(0).at();
    }
    List<Start> wide = best(even, start -> -fine.smallest(start.at(), 0), tolerance());
    List<Start> few = best(wide, start -> fine.cuts(start.at()), 0);
    return few.stream().min(Comparator.comparingInt(Start::balanced).reversed()
        .thenComparingLong(start -> Math.round(start.at().y() / EXACT))
        .thenComparingDouble(start -> start.at().x())).orElseThrow().at();
  }

  private static List<Start> best(List<Start> some, ToDoubleFunction<Start> least, double tolerance) {
    double[] values = some.stream().mapToDouble(least).toArray();
    double best = Arrays.stream(values).min().orElseThrow();
    List<Start> kept = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (values[i] <= best + tolerance) {
        kept.add(some.get(i));
      }
    }
    return kept;
  }
}
