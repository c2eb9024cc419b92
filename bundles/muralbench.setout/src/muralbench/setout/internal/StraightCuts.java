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

  /** An edge at a place on the axis; {@code after} if the tiles are beyond it, and the rows of faces it cuts. */
  private record Edge(double at, boolean after, List<Run> runs) {}

  private final List<Edge> edges;
  private final Edge low;
  private final Edge high;
  private final double module;

  /** The cuts on some edges; {@code low} and {@code high} are where the region ends along the axis. */
  private StraightCuts(List<Edge> edges, double low, double high, List<Run> runs) {
    this.edges = edges;
    this.low = new Edge(low, true, runs);
    this.high = new Edge(high, false, runs);
    module = runs.get(0).module();
  }

  /** The horizontal edges of a region, against the courses; the contours are in the pattern's directions. */
  static StraightCuts ofCourses(List<Contour> region, Box box, Pattern pattern) {
    List<Run> runs = pattern.runs(Axis.ACROSS, box);
    List<Edge> edges = new ArrayList<>();
    for (Line line : lines(region)) {
      Vec along = line.end().minus(line.start());
      if (Math.abs(along.y()) < FLUSH) {
        add(edges, new Edge(line.start().y(), along.x() > 0, runs));
      }
    }
    return new StraightCuts(edges, box.minY(), box.maxY(), runs);
  }

  /** The vertical edges, against the rows of the courses they pass when the pattern starts at a height. */
  static StraightCuts ofRows(List<Contour> region, Box box, Pattern pattern, double height) {
    List<Edge> edges = new ArrayList<>();
    for (Line line : lines(region)) {
      Vec along = line.end().minus(line.start());
      if (Math.abs(along.x()) < FLUSH) {
        Box passed = new Box(0, Math.min(line.start().y(), line.end().y()) - height, 0,
            Math.max(line.start().y(), line.end().y()) - height);
        add(edges, new Edge(line.start().x(), along.y() < 0, pattern.runs(Axis.ALONG, passed)));
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
    double smallest = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      for (Run run : edge.runs()) {
        double into = into(edge, run, start);
        smallest = Math.min(smallest, into < run.face() - FLUSH ? run.face() - into : run.face());
      }
    }
    return smallest;
  }

  /** The widest gap between a tile and an end of the region that falls in a joint, mm; 0 if there is none. */
  double gap(double start) {
    double gap = 0;
    for (Edge end : List.of(low, high)) {
      for (Run run : end.runs()) {
        double into = into(end, run, start);
        gap = Math.max(gap, into > run.face() - FLUSH && into > FLUSH ? run.module() - into : 0);
      }
    }
    return gap;
  }

  /** Whether in every row the cuts at both ends are equal and at least half a tile. */
  boolean halfTileRule(double start) {
    for (Run run : low.runs()) {
      double first = into(low, run, start);
      double last = into(high, run, start);
      if (Math.abs(first - last) > FLUSH || first > run.face() / 2 + FLUSH) {
        return false;
      }
    }
    return true;
  }

  /** How much of a module lies on the far side of the edge, 0 when a face is flush with it. */
  private static double into(Edge edge, Run run, double start) {
    double distance = edge.after() ? edge.at() - run.start() - start : run.start() + start + run.face() - edge.at();
    double into = distance - Math.floor(distance / run.module()) * run.module();
    return run.module() - into < FLUSH || into < FLUSH ? 0 : into;
  }
}
