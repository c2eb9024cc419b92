// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * Running dimensions along one edge: distances from a datum to either side. Every value is rounded by itself from the
 * exact distance, so that roundings never add up.
 *
 * @param datum where the distances are counted from, mm
 * @param places what is dimensioned, rising, mm
 */
record RunningDimensions(double datum, List<Double> places) {
  private static final double SAME = 0.05;
  private static final double RIM = 0.01;

  /**
   * One dimension.
   *
   * @param place where, mm
   * @param text the rounded distance from the datum, without a unit
   */
  record Mark(double place, String text) {}

  RunningDimensions {
    TreeSet<Double> rising = new TreeSet<>(places);
    rising.add(datum);
    List<Double> kept = new ArrayList<>();
    for (double place : rising) {
      if (kept.isEmpty() || place - kept.get(kept.size() - 1) > SAME) {
        kept.add(place);
      }
    }
    places = List.copyOf(kept);
  }

  /**
   * Along the lower edge: left edges of the tiles in the course of the first tile, or their leftmost corners where they
   * do not lie level; edges of the panel. Of rings the outer edges, on both sides of the middle.
   */
  static RunningDimensions across(PanelFacts facts) {
    List<Double> places = new ArrayList<>(List.of(facts.box().minX(), facts.box().maxX()));
    if (facts.panel().concentric()) {
      places.addAll(rims(facts.panel(), facts.panel().origin().x(), facts.box().minX(), facts.box().maxX()));
      return new RunningDimensions(facts.zero().x(), places);
    }
    int course = facts.first().piece().course();
    facts.panel().field().stream().filter(piece -> piece.course() == course)
        .forEach(piece -> places.add(piece.face().box().minX()));
    places.removeIf(place -> place < facts.box().minX() || place > facts.box().maxX());
    return new RunningDimensions(facts.zero().x(), places);
  }

  /** Along the left edge: the courses, see {@link #courseLines}, and edges of the panel. */
  static RunningDimensions up(PanelFacts facts) {
    List<Double> places = new ArrayList<>(List.of(facts.box().minY(), facts.box().maxY()));
    places.addAll(facts.panel().concentric()
        ? rims(facts.panel(), facts.panel().origin().y(), facts.box().minY(), facts.box().maxY()) : courseLines(facts));
    return new RunningDimensions(facts.zero().y(), places);
  }

  /** Where the outer edges of rings cross a line through their middle, from {@code low} to {@code high}. */
  private static Set<Double> rims(PanelSetOut panel, double middle, double low, double high) {
    Set<Double> places = new TreeSet<>();
    for (Piece piece : panel.field()) {
      double radius = piece.cell().face().points(RIM).stream().mapToDouble(Vec::length).max().orElseThrow();
      places.add(Math.rint((middle - radius) * 1000) / 1000);
      places.add(Math.rint((middle + radius) * 1000) / 1000);
    }
    places.removeIf(place -> place < low || place > high);
    return places;
  }

  /**
   * The heights of the courses, rising: lower edges of the tiles, or the lowest corner of each course where the tiles
   * do not lie level. Heights outside the panel are left out.
   */
  static List<Double> courseLines(PanelFacts facts) {
    TreeSet<Double> lines = new TreeSet<>();
    Map<Integer, Double> lowest = new TreeMap<>();
    for (Piece piece : facts.panel().field()) {
      double low = piece.face().box().minY();
      lowest.merge(piece.course(), low, Math::min);
      lines.add(low);
    }
    List<Double> kept = new ArrayList<>(facts.straight() ? lines : new TreeSet<>(lowest.values()));
    kept.removeIf(line -> line < facts.box().minY() || line > facts.box().maxY());
    return kept;
  }

  /** Across a wall: the sides of panels, from the leftmost. */
  static RunningDimensions acrossWall(List<Box> panels) {
    double left = panels.stream().mapToDouble(Box::minX).min().orElseThrow();
    return new RunningDimensions(left,
        panels.stream().flatMapToDouble(box -> DoubleStream.of(box.minX(), box.maxX())).boxed().toList());
  }

  /** Up a wall: lower and upper edges of panels above the finished floor. */
  static RunningDimensions upWall(List<Box> panels) {
    return new RunningDimensions(0,
        panels.stream().flatMapToDouble(box -> DoubleStream.of(box.minY(), box.maxY())).boxed().toList());
  }

  /** Up the plan of a floor: edges of panels from the lowest. */
  static RunningDimensions upFloor(List<Box> panels) {
    double low = panels.stream().mapToDouble(Box::minY).min().orElseThrow();
    return new RunningDimensions(low, upWall(panels).places().stream().filter(place -> place >= low).toList());
  }

  /** These dimensions and those to the sides of the openings of which something shows in a window. */
  RunningDimensions withSides(List<OpeningSpec> openings, Box window) {
    return and(openings, window, box -> List.of(box.minX(), box.maxX()));
  }

  /** These dimensions and those to the lower and upper edges of the openings of which something shows in a window. */
  RunningDimensions withHeights(List<OpeningSpec> openings, Box window) {
    return and(openings, window, box -> List.of(box.minY(), box.maxY()));
  }

  private RunningDimensions and(List<OpeningSpec> openings, Box window, Function<Box, List<Double>> edges) {
    List<Double> more = new ArrayList<>(places);
    openings.stream().map(opening -> opening.outline().box()).filter(window::meets)
        .forEach(box -> more.addAll(edges.apply(box)));
    return new RunningDimensions(datum, more);
  }

  /** The dimensions from {@code low} to {@code high}. */
  List<Mark> marks(double low, double high, LengthUnit units) {
    return places.stream().filter(place -> place >= low - SAME && place <= high + SAME)
        .map(place -> new Mark(place, bare(Math.abs(place - datum), units))).toList();
  }

  /** A length rounded for reading, without its unit. */
  static String bare(double length, LengthUnit units) {
    String shown = LengthText.shown(length, units);
    String unit = ' ' + units.symbol();
    return shown.endsWith(unit) ? shown.substring(0, shown.length() - unit.length()) : shown;
  }

  /**
   * Moves texts apart as far as needed and no farther, keeping their order.
   *
   * @param wanted where texts want to stand, rising
   * @param spacing the least distance
   */
  static double[] spread(double[] wanted, double spacing) {
    double[] placed = wanted.clone();
    for (int start = 0; start < placed.length;) {
      int end = start + 1;
      while (end < placed.length && wanted[end] - wanted[end - 1] < spacing) {
        end++;
      }
      spread(wanted, placed, start, end, spacing);
      start = end;
    }
    for (int i = 1; i < placed.length; i++) {
      placed[i] = Math.max(placed[i], placed[i - 1] + spacing);
    }
    return placed;
  }

  private static void spread(double[] wanted, double[] placed, int start, int end, double spacing) {
    double middle = 0;
    for (int i = start; i < end; i++) {
      middle += wanted[i] / (end - start);
    }
    for (int i = start; i < end && end - start > 1; i++) {
      placed[i] = middle + (i - (start + end - 1) / 2.0) * spacing;
    }
  }
}
