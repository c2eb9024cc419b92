// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * A pattern of any faces that repeats along two directions. Courses are level bands as high as {@code band}; a face belongs
 * to the band of its middle, and stands in it in the order of its middle from the left.
 */
final class LatticePattern implements Pattern {
  /** Positions are middles in this share of a millimetre, so that faces next to each other get different numbers. */
  private static final double POSITIONS_PER_MM = 32;
  private static final double EDGE_OF_BAND = 1e-6;

  /** A face of the repeat; {@code part} as in {@link Cell}. */
  record Place(Contour face, String part) {}

  private final Vec along;
  private final Vec across;
  private final List<Place> places;
  private final double band;
  private final List<Vec> centres;
  private final Vec first;
  private final Box reach;

  LatticePattern(Vec along, Vec across, List<Place> places, double band, List<Vec> centres) {
    this.along = along;
    this.across = across;
    this.places = List.copyOf(places);
    this.band = band;
    this.centres = List.copyOf(centres);
    first = places.get(0).face().box().centre();
    reach = places.stream().map(place -> place.face().box()).reduce(Box::and).orElseThrow();
  }

  @Override
  public void cells(Box area, Consumer<Cell> each) {
    double det = along.cross(across);
    double minI = Double.POSITIVE_INFINITY;
    double maxI = Double.NEGATIVE_INFINITY;
    double minJ = Double.POSITIVE_INFINITY;
    double maxJ = Double.NEGATIVE_INFINITY;
    for (double x : new double[] {area.minX() - reach.maxX(), area.maxX() - reach.minX()}) {
      for (double y : new double[] {area.minY() - reach.maxY(), area.maxY() - reach.minY()}) {
        double i = new Vec(x, y).cross(across) / det;
        double j = along.cross(new Vec(x, y)) / det;
        minI = Math.min(minI, i);
        maxI = Math.max(maxI, i);
        minJ = Math.min(minJ, j);
        maxJ = Math.max(maxJ, j);
      }
    }
    for (int j = (int) Math.ceil(minJ - EDGE_OF_BAND); j <= maxJ + EDGE_OF_BAND; j++) {
      for (int i = (int) Math.ceil(minI - EDGE_OF_BAND); i <= maxI + EDGE_OF_BAND; i++) {
        Vec shift = along.times(i).plus(across.times(j));
        for (Place place : places) {
          cell(place, shift, area, each);
        }
      }
    }
  }

  private void cell(Place place, Vec shift, Box area, Consumer<Cell> each) {
    Box box = place.face().box();
    Box moved = new Box(box.minX() + shift.x(), box.minY() + shift.y(), box.maxX() + shift.x(), box.maxY() + shift.y());
    if (moved.meets(area)) {
      Vec middle = moved.centre();
      int course = (int) Math.floor((middle.y() - first.y()) / band + 0.5 + EDGE_OF_BAND);
      int position = (int) Math.round((middle.x() - first.x()) * POSITIONS_PER_MM);
      each.accept(new Cell(course, position, place.face().moved(Motion.shift(shift)), place.part()));
    }
  }

  @Override
  public List<Run> runs(Axis axis, Box area) {
    return List.of();
  }

  @Override
  public double density() {
    return places.size() / Math.abs(along.cross(across));
  }

  @Override
  public List<Vec> centres() {
    return centres;
  }

  @Override
  public Optional<Repeat> repeat() {
    return Optional.of(new Repeat(along, across, places.stream().map(Place::face).toList()));
  }
}
