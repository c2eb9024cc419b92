// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
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
 * shifted along one axis. As the pattern moves, each cut grows or shrinks evenly, so the smallest cut is greatest where a
 * growing and a shrinking cut are equal, or where a tile is flush with an edge: these starts are the events.
 */
final class StraightCuts {
  private static final double FLUSH = 1e-6;
  private static final int MOST_PAIRS = 20_000;

  /** A gap at an end is borne in up to one course out of so many; in straighter patterns it would be seen. */
  private static final int GAPS_IN = 4;

  /**
   * An edge at a place on the axis; {@code after} if the tiles are beyond it, {@code strip} if it is so long that a cut
   * along it makes a strip of tiles and not just a notch, and the rows of faces it cuts.
   */
  private record Edge(double at, boolean after, boolean strip, List<Run> runs) {}

  private final List<Edge> edges;
  private final Edge low;
  private final Edge high;
  private final double module;

  /** The cuts on some edges; {@code low} and {@code high} are where the region ends along the axis. */
  private StraightCuts(List<Edge> edges, double low, double high, List<Run> runs) {
    this.edges = edges;
    this.low = new Edge(low, true, true, runs);
    this.high = new Edge(high, false, true, runs);
    module = runs.get(0).module();
  }

  /**
   * The horizontal edges of a region, against the courses; the contours are in the pattern's directions.
   *
   * @param strip edges at least so long make strips of cut tiles, mm
   */
  static StraightCuts ofCourses(List<Contour> region, Box box, Pattern pattern, double strip) {
    List<Run> runs = pattern.runs(Axis.ACROSS, box);
    List<Edge> edges = new ArrayList<>();
    for (Line line : lines(region)) {
      Vec along = line.end().minus(line.start());
      if (Math.abs(along.y()) < FLUSH) {
        add(edges, new Edge(line.start().y(), along.x() > 0, along.length() >= strip, runs));
      }
    }
    return new StraightCuts(edges, box.minY(), box.maxY(), runs);
  }

  /** The vertical edges, against the rows of the courses they pass when the pattern starts at a height. */
  static StraightCuts ofRows(List<Contour> region, Box box, Pattern pattern, double height, double strip) {
    List<Edge> edges = new ArrayList<>();
    for (Line line : lines(region)) {
      Vec along = line.end().minus(line.start());
      if (Math.abs(along.x()) < FLUSH) {
        Box passed = new Box(0, Math.min(line.start().y(), line.end().y()) - height, 0,
            Math.max(line.start().y(), line.end().y()) - height);
        add(edges, new Edge(line.start().x(), along.y() < 0, along.length() >= strip,
            pattern.runs(Axis.ALONG, passed)));
      }
    }
    List<Run> all = pattern.runs(Axis.ALONG, new Box(0, box.minY() - height, 0, box.maxY() - height));
    return new StraightCuts(edges, box.minX(), box.maxX(), all);
  }

  private static List<Line> lines(List<Contour> region) {
    List<Line> lines = new ArrayList<>();
    for (Contour contour : region) {
      for (Segment segment : contour.segments()) {
        if (segment instanceof Line line) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  private static void add(List<Edge> edges, Edge edge) {
    if (!edge.runs().isEmpty() && !edges.contains(edge)) {
      edges.add(edge);
    }
  }

  /** Length after which the pattern repeats along the axis, mm. */
  double module() {
    return module;
  }

  /** Starts at which the smallest cut can be greatest, each 0 up to the module. */
  List<Double> events() {
    List<Double> starts = new ArrayList<>();
    List<Edge> edges = new ArrayList<>(List.of(low, high));
    edges.addAll(this.edges);
    for (Edge edge : edges) {
      for (Run run : edge.runs()) {
        starts.add(edge.at() - run.start() - (edge.after() ? 0 : run.face()));
      }
    }
    for (Edge growing : edges) {
      if (growing.after()) {
        for (Edge shrinking : edges) {
          if (!shrinking.after() && starts.size() < MOST_PAIRS) {
            addEqual(growing, shrinking, starts);
          }
        }
      }
    }
    starts.replaceAll(start -> start - Math.floor(start / module) * module);
    return starts;
  }

  private void addEqual(Edge growing, Edge shrinking, List<Double> starts) {
    for (Run one : growing.runs()) {
      for (Run other : shrinking.runs()) {
        double equal = (growing.at() + shrinking.at() - one.start() - other.start() - one.face()) / 2;
        starts.add(equal);
        starts.add(equal + module / 2);
      }
    }
  }

  /** The smallest cut along the axis when the pattern starts there, mm; the face where nothing is cut. */
  double smallest(double start) {
    return edges.stream().mapToDouble(edge -> narrowest(edge, start)).min().orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The widest gap between a tile and an end of the region that falls in a joint, mm; 0 if there is none, or only in a few
   * of many rows that are shifted against each other.
   */
  double gap(double start) {
    double widest = 0;
    for (Edge end : List.of(low, high)) {
      int gaps = 0;
      double gap = 0;
      for (Run run : end.runs()) {
        double into = into(end, run, start);
        if (into > run.face() - FLUSH && into > FLUSH) {
          gaps++;
          gap = Math.max(gap, run.module() - into);
        }
      }
      widest = Math.max(widest, gaps * GAPS_IN > end.runs().size() ? gap : 0);
    }
    return widest;
  }

  /** Whether in every row the cuts at both ends are equal, and no strip along an edge is under half a tile. */
  boolean halfTileRule(double start) {
    for (Run run : low.runs()) {
      if (Math.abs(into(low, run, start) - into(high, run, start)) > FLUSH) {
        return false;
      }
    }
    double face = low.runs().get(0).face();
    return narrowestStrip(start) >= face / 2 - FLUSH;
  }

  /** The narrowest strip of cut tiles along an end of the region or a long edge, mm; the face if none is cut. */
  double narrowestStrip(double start) {
    double narrowest = Math.min(narrowest(low, start), narrowest(high, start));
    for (Edge edge : edges) {
      narrowest = edge.strip() ? Math.min(narrowest, narrowest(edge, start)) : narrowest;
    }
    return narrowest;
  }

  private static double narrowest(Edge edge, double start) {
    double narrowest = Double.POSITIVE_INFINITY;
    for (Run run : edge.runs()) {
      double into = into(edge, run, start);
      narrowest = Math.min(narrowest, into < run.face() - FLUSH ? run.face() - into : run.face());
    }
    return narrowest;
  }

  /** How much of a module lies on the far side of the edge, 0 when a face is flush with it. */
  private static double into(Edge edge, Run run, double start) {
    double distance = edge.after() ? edge.at() - run.start() - start : run.start() + start + run.face() - edge.at();
    double into = distance - Math.floor(distance / run.module()) * run.module();
    return run.module() - into < FLUSH || into < FLUSH ? 0 : into;
  }
}
