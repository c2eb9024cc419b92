// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import muralbench.base.Progress;
import muralbench.setout.PanelSpec;
import muralbench.setout.PieceKind;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.NarrowWidth;
import muralbench.setout.geometry.Vec;
import muralbench.setout.internal.Starts.Start;

/**
 * Finds the balanced start of a pattern on any region: no gap at an end of the region; then along each axis equal cuts at
 * both ends and no strip under half a tile, at the ends or along a door or window, where that is possible, else the
 * narrowest strip as wide as can be; then the smallest cut as wide as can be (its {@link NarrowWidth true narrow width},
 * also around small openings), then the fewest cut tiles, then balance about the region's middle. This is what ANSI
 * A108.02 §4.3.1 and §4.3.2, as quoted in the trade press, ask of a layout.
 *
 * <p>For straight rows the starts that can be best are known exactly ({@link StraightCuts}), and all that matter are tried.
 * For other patterns the starts are sampled, and the best is refined by halving steps; on curved and slanting edges widths
 * within {@link #TOLERANCE} count as equal.
 */
final class PlacementSearch {
  /** Smallest cuts on curved and slanting edges that differ by less than this count as equal, mm. */
  static final double TOLERANCE = 1;
  private static final double EXACT = 1e-6;
  private static final int SAMPLES = 12;
  private static final int MOST_TRIES = 700;

  private final TiledRegion region;
  private final Pattern pattern;
  private final Motion turned;
  private final TileSpec tile;
  private final Starts starts;
  private final List<Contour> edges;
  private final Box box;
  private final boolean square;
  private final boolean rows;
  private final boolean focused;
  private final Progress progress;

  /**
   * A search.
   *
   * @param turned the turn of the pattern on the wall
   * @param focus a point of the wall that a face centre or a crossing of joints has to be laid on, if any
   */
  PlacementSearch(TiledRegion region, Pattern pattern, Motion turned, PanelSpec panel, Optional<Vec> focus,
      Progress progress) {
    this.region = region;
    this.pattern = pattern;
    this.turned = turned;
    this.tile = panel.tile();
    this.progress = progress;
    Motion back = turned.inverse();
    edges = region.edges().stream().map(edge -> edge.moved(back)).toList();
    box = region.box(back);
    square = edges.stream().flatMap(edge -> edge.segments().stream()).allMatch(side -> {
      Vec along = side.tangent(0);
      return side.straight() && Math.min(Math.abs(along.x()), Math.abs(along.y())) < EXACT;
    });
    rows = !pattern.runs(Axis.ACROSS, box).isEmpty();
    focused = focus.isPresent();
    starts = new Starts(edges, box, pattern, tile, panel.joint(), focus.map(back::of));
  }

  /** The best start, in the pattern's directions. */
  Vec best() {
    List<Start> tried = tried(starts.all());
    Start best = choose(tried);
    return focused || rows ? best.at() : refined(best, tried).at();
  }

  /**
   * The best start, then others with good hopes, each clearly elsewhere in the pattern than those before.
   *
   * @param most how many at most
   */
  List<Vec> ranked(int most) {
    List<Vec> ranked = new ArrayList<>(List.of(best()));
    List<Start> all = starts.all();
    for (Start start : all) {
      boolean open = start.gap() > all.get(0).gap() + EXACT;
      if (!open && ranked.size() < most && ranked.stream().noneMatch(other -> starts.alike(other, start.at()))) {
        ranked.add(start.at());
      }
    }
    return ranked;
  }

  /** The best of some starts, by what they leave of the tiles at the edges. */
  Vec bestOf(List<Vec> some) {
    return choose(tried(some.stream().map(start -> Starts.untried(start, 0)).toList())).at();
  }

  private double tolerance() {
    return square ? EXACT : TOLERANCE;
  }

  /** Tries starts, best hopes first, until no other can be better. */
  private List<Start> tried(List<Start> all) {
    List<Start> tried = new ArrayList<>();
    double best = 0;
    for (Start start : all) {
      progress.step(0);
      boolean worse = Start.BY_RULES.compare(start, all.get(0)) > 0;
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
    return start.with(width, cuts[0]);
  }

  /** Looks around the best start in ever smaller steps, as long as that gains more than the tolerance. */
  private Start refined(Start best, List<Start> tried) {
    Start widest = tried.stream().max(Comparator.comparingDouble(Start::smallest)).orElseThrow();
    Start found = widest;
    for (double step = Math.min(tile.width(), tile.height()) / SAMPLES / 2; step > TOLERANCE / 4; step /= 2) {
      for (Vec way : new Vec[] {new Vec(step, 0), new Vec(-step, 0), new Vec(0, step), new Vec(0, -step)}) {
        Start there = tried(Starts.untried(found.at().plus(way), 0), found.smallest() + EXACT);
        if (there != null) {
          found = there;
        }
      }
    }
    return found.smallest() > Math.max(best.smallest(), widest.smallest()) + TOLERANCE ? found : best;
  }
}
