// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import muralbench.setout.bond.Pattern;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * What the straight edges of a region that run along or across the courses do to the tiles they cut, as the pattern is
 * shifted along one axis. As the pattern moves, each cut appears, grows evenly and is flush at last, or shrinks and
 * vanishes: these are the events. Between two of them the narrowest growing cut is the one that appeared last, and the
 * narrowest shrinking one that which vanishes next; the smallest cut is greatest where both are equal.
 */
final class StraightCuts {
  private static final double FLUSH = 1e-6;
  private static final double SAME = 1e-9;

  /** A gap at an end is borne in up to one course out of so many; in straighter patterns it would be seen. */
  private static final int GAPS_IN = 4;

  /** An edge of the region along or across the courses, in the pattern's directions. */
  private record Edge(double at, boolean after, double length, double low, double high) {}

  private final List<Edge> lines;
  private final double low;
  private final double high;
  private final double module;
  private final double face;
  private final boolean gapLow;
  private final boolean gapHigh;
  private final List<Run> ends;
  private final Cuts all;
  private final Cuts strips;

  /** Where cuts appear and vanish, each 0 up to the module, sorted. */
  private static final class Cuts {
    final TreeSet<Double> appear = new TreeSet<>();
    final TreeSet<Double> vanish = new TreeSet<>();
  }

  private StraightCuts(List<Edge> lines, Map<Edge, List<Run>> runs, double low, double high, List<Run> ends,
      double strip) {
    this.lines = lines;
    this.low = low;
    this.high = high;
    this.ends = ends;
    module = ends.get(0).module();
    face = ends.get(0).face();
    gapLow = lines.stream().anyMatch(line -> Math.abs(line.at() - low) < FLUSH);
    gapHigh = lines.stream().anyMatch(line -> Math.abs(line.at() - high) < FLUSH);
    all = new Cuts();
    strips = new Cuts();
    for (Edge line : lines) {
      add(line, runs.get(line), all);
      if (line.length() >= strip - FLUSH) {
        add(line, runs.get(line), strips);
      }
    }
    add(new Edge(low, true, 0, 0, 0), ends, strips);
    add(new Edge(high, false, 0, 0, 0), ends, strips);
  }

  private void add(Edge line, List<Run> runs, Cuts cuts) {
    for (Run run : runs) {
      if (line.after()) {
        cuts.appear.add(folded(line.at() - run.start() - face));
      } else {
        cuts.vanish.add(folded(line.at() - run.start()));
      }
    }
  }

  /**
   * The horizontal edges of a region, against the courses; the contours are in the pattern's directions.
   *
   * @param strip edges at least so long make strips of cut tiles, mm
   */
  static StraightCuts ofCourses(List<Contour> region, Box box, Pattern pattern, double strip) {
    List<Run> runs = pattern.runs(Axis.ACROSS, box);
    List<Edge> lines = lines(region, false);
    Map<Edge, List<Run>> cut = new HashMap<>();
    lines.forEach(line -> cut.put(line, runs));
    return new StraightCuts(lines, cut, box.minY(), box.maxY(), runs, strip);
  }

  /** The vertical edges, against the rows of the courses they pass when the pattern starts at a height. */
  static StraightCuts ofRows(List<Contour> region, Box box, Pattern pattern, double height, double strip) {
    List<Edge> lines = lines(region, true);
    Map<Edge, List<Run>> cut = new HashMap<>();
    lines.forEach(line -> cut.put(line,
        pattern.runs(Axis.ALONG, new Box(0, line.low() - height, 0, line.high() - height))));
    List<Run> all = pattern.runs(Axis.ALONG, new Box(0, box.minY() - height, 0, box.maxY() - height));
    return new StraightCuts(lines, cut, box.minX(), box.maxX(), all, strip);
  }

  private static List<Edge> lines(List<Contour> region, boolean upright) {
    List<Edge> lines = new ArrayList<>();
    for (Contour contour : region) {
      for (Segment segment : contour.segments()) {
        Vec way = segment.end().minus(segment.start());
        if (segment instanceof Line && Math.abs(upright ? way.x() : way.y()) < FLUSH && way.length() > FLUSH) {
          double at = upright ? segment.start().x() : segment.start().y();
          double from = upright ? segment.start().y() : segment.start().x();
          double to = upright ? segment.end().y() : segment.end().x();
          lines.add(new Edge(at, upright ? way.y() < 0 : way.x() > 0, way.length(), Math.min(from, to),
              Math.max(from, to)));
        }
      }
    }
    return lines;
  }

  /** How many edges there are. */
  int edges() {
    return lines.size();
  }

  /** Length after which the pattern repeats along the axis, mm. */
  double module() {
    return module;
  }

  /** Whether all rows are of equal faces at equal distances, as is supposed here. */
  boolean even() {
    return ends.stream().allMatch(run -> Math.abs(run.face() - face) < SAME && Math.abs(run.module() - module) < SAME);
  }

  private double folded(double start) {
    double rest = start - Math.floor(start / module) * module;
    return rest >= module ? 0 : rest;
  }

  /**
   * The starts, each 0 up to the module, among which is, for every choice of tiles that are cut, the one with the widest
   * smallest cut, and the one with the widest narrowest strip that leaves no cut narrower than a limit.
   *
   * @param limit mm; 0 if there is none
   */
  List<Double> starts(double limit) {
    TreeSet<Double> events = new TreeSet<>();
    for (Cuts cuts : List.of(all, strips)) {
      for (double appears : cuts.appear) {
        events.add(appears);
        events.add(folded(appears + face));
      }
      for (double vanishes : cuts.vanish) {
        events.add(vanishes);
        events.add(folded(vanishes - face));
      }
    }
    List<Double> starts = new ArrayList<>();
    Double before = events.isEmpty() ? null : events.last() - module;
    for (double event : events) {
      starts.add(event);
      if (event - before > SAME) {
        between(before, event, limit, starts);
      }
      before = event;
    }
    return starts;
  }

  /** The best starts between two events. */
  private void between(double from, double to, double limit, List<Double> starts) {
    double middle = (from + to) / 2;
    double[] every = narrowest(all, middle);
    if (every[0] < face && every[1] < face) {
      starts.add(folded(inside(middle + (every[1] - every[0]) / 2, from, to)));
    }
    double least = Math.max(from, every[0] < face ? middle + limit - every[0] : from);
    double most = Math.min(to, every[1] < face ? middle + every[1] - limit : to);
    if (least <= most) {
      double[] strip = narrowest(strips, middle);
      double peak = strip[0] < face && strip[1] < face ? middle + (strip[1] - strip[0]) / 2
          : strip[0] < face ? most : least;
      starts.add(folded(inside(peak, least, most)));
    }
  }

  private static double inside(double at, double from, double to) {
    return Math.max(from, Math.min(to, at));
  }

  /** The narrowest growing and the narrowest shrinking cut, the face where there is none. */
  private double[] narrowest(Cuts cuts, double start) {
    double growing = face;
    double shrinking = face;
    // A cut that appears or vanishes just here has no width; the next one counts.
    if (!cuts.appear.isEmpty()) {
      double at = folded(start - FLUSH);
      Double last = cuts.appear.floor(at);
      growing = at - (last == null ? cuts.appear.last() - module : last) + FLUSH;
    }
    if (!cuts.vanish.isEmpty()) {
      double at = folded(start + FLUSH);
      Double next = cuts.vanish.ceiling(at);
      shrinking = (next == null ? cuts.vanish.first() + module : next) - at + FLUSH;
    }
    return new double[] {growing > face - FLUSH ? face : growing, shrinking > face - FLUSH ? face : shrinking};
  }

  /** The smallest cut along the axis when the pattern starts there, mm; the face where nothing is cut. */
  double smallest(double start) {
    double[] both = narrowest(all, start);
    return Math.min(both[0], both[1]);
  }

  /** The narrowest strip of cut tiles along an end of the region or a long edge, mm; the face if none is cut. */
  double narrowestStrip(double start) {
    double[] both = narrowest(strips, start);
    return Math.min(both[0], both[1]);
  }

  /**
   * The widest gap between a tile and a straight edge along an end of the region that falls in a joint, mm; 0 if there is
   * none, or only in a few of many rows that are shifted against each other.
   */
  double gap(double start) {
    return Math.max(gapLow ? gap(low, true, start) : 0, gapHigh ? gap(high, false, start) : 0);
  }

  private double gap(double end, boolean after, double start) {
    int gaps = 0;
    double gap = 0;
    for (Run run : ends) {
      double into = folded(after ? end - run.start() - start : run.start() + start + face - end);
      if (into > face - FLUSH && into > FLUSH && into < module - FLUSH) {
        gaps++;
        gap = Math.max(gap, module - into);
      }
    }
    return gaps * GAPS_IN > ends.size() ? gap : 0;
  }

  /**
   * How wide the region itself is at its narrowest between two of the edges: no start leaves wider cuts.
   *
   * @param joint narrower strips may fall in a joint, mm
   */
  double narrowestPassage(double joint) {
    double narrowest = face;
    for (Edge one : lines) {
      for (Edge other : lines) {
        double width = other.at() - one.at();
        if (one.after() && !other.after() && width > joint + FLUSH && width < narrowest
            && Math.min(one.high(), other.high()) - Math.max(one.low(), other.low()) > joint + FLUSH) {
          narrowest = width;
        }
      }
    }
    return narrowest;
  }
}
