// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import muralbench.pattern.symmetry.SpectralMatch.Matrix;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Finds every symmetry of a repeating drawing, from the drawing alone. Details that change less than a millionth of the
 * cell's area are not seen.
 */
public final class SymmetryFinder {
  private static final double SAME = 1e-9;

  private SymmetryFinder() {}

  /**
   * The symmetries of a drawing that fills the plane.
   *
   * @param cell a cell with which the drawing repeats, not necessarily the smallest
   * @param patches the coloured areas of one cell, wherever they lie; they do not overlap
   * @return empty for one colour or stripes, which any shift along them keeps
   */
  public static Optional<FoundSymmetry> inPlane(Cell cell, List<Patch> patches) {
    Cell reduced = reduced(cell.a(), cell.b());
    SpectralMatch match = new SpectralMatch(new Spectrum(reduced, patches));
    if (!match.bothWays()) {
      return Optional.empty();
    }
    List<Vec> shifts = match.shifts(new Matrix(1, 0, 0, 1));
    Cell smallest = smallest(reduced, shifts);
    // Patches of several smallest cells count several times alike, which no comparison minds.
    SpectralMatch exact = shifts.size() == 1 ? match : new SpectralMatch(new Spectrum(smallest, patches));
    List<CellOperation> operations = new ArrayList<>();
    for (Matrix matrix : keptBy(smallest)) {
      exact.shifts(matrix).forEach(shift -> operations.add(new CellOperation(matrix, shift)));
    }
    List<Isometry> movements = operations.stream().map(each -> each.in(smallest)).toList();
    return Optional.of(new FoundSymmetry(smallest, movements, Classifier.wallpaper(smallest, operations)));
  }

  /**
   * The symmetries of a band along x.
   *
   * @param repeat a length with which the band repeats, not necessarily the shortest, mm
   * @param patches the coloured areas of one repeat, wherever they lie; they do not overlap
   * @return empty if every shift along it keeps the band
   */
  public static Optional<FoundBand> alongBand(double repeat, List<Patch> patches) {
    Box box = patches.stream().flatMap(patch -> patch.contours().stream()).map(Contour::box).reduce(Box::and)
        .orElseThrow(() -> new IllegalArgumentException("a band without patches"));
    // Bands far enough apart that none is taken for a repeat of another.
    Cell cell = Cell.upright(repeat, 2 * box.height());
    SpectralMatch match = new SpectralMatch(new Spectrum(cell, patches));
    if (!match.bothWays()) {
      return Optional.empty();
    }
    int times = match.shifts(new Matrix(1, 0, 0, 1)).size();
    Cell shortest = Cell.upright(repeat / times, 2 * box.height());
    SpectralMatch exact = times == 1 ? match : new SpectralMatch(new Spectrum(shortest, patches));
    List<CellOperation> operations = new ArrayList<>();
    for (Matrix matrix : List.of(new Matrix(1, 0, 0, 1), new Matrix(-1, 0, 0, -1), new Matrix(-1, 0, 0, 1),
        new Matrix(1, 0, 0, -1))) {
      exact.shifts(matrix).forEach(shift -> operations.add(new CellOperation(matrix, onBand(shift, matrix, box))));
    }
    List<Isometry> movements = operations.stream().map(each -> each.in(shortest)).toList();
    return Optional.of(new FoundBand(repeat / times, movements, Classifier.frieze(operations)));
  }

  /** Of all shifts across that differ by cells the one that keeps the band on itself. */
  private static Vec onBand(Vec shift, Matrix matrix, Box box) {
    double wanted = matrix.yy() > 0 ? 0 : 2 * box.centre().y() / (2 * box.height());
    return new Vec(shift.x(), shift.y() + Math.rint(wanted - shift.y()));
  }

  /** The cell of the same lattice with the shortest edges (Gauss), at an angle from 90 to 120 degrees. */
  static Cell reduced(Vec first, Vec second) {
    Vec a = first;
    Vec b = second;
    while (true) {
      if (b.length() < a.length() * (1 - SAME)) {
        Vec shorter = b;
        b = a;
        a = shorter;
      }
      double times = Math.rint(a.dot(b) / a.dot(a));
      Vec nearer = b.minus(a.times(times));
      if (times == 0 || nearer.length() >= b.length() * (1 - SAME)) {
        break;
      }
      b = nearer;
    }
    b = a.dot(b) > SAME * a.dot(a) ? b.times(-1) : b;
    return a.cross(b) > 0 ? new Cell(a, b) : new Cell(b, a);
  }

  private static Cell smallest(Cell cell, List<Vec> shifts) {
    if (shifts.size() == 1) {
      return cell;
    }
    double area = cell.area() / shifts.size();
    List<Vec> points = Stream.concat(shifts.stream().map(shift -> cell.at(shift.x(), shift.y())),
        Stream.of(Vec.ZERO)).flatMap(point -> around(cell, point)).filter(point -> point.length() > 1e-9)
        .sorted(Comparator.comparingDouble(Vec::length)).toList();
    for (Vec a : points) {
      for (Vec b : points) {
        if (Math.abs(a.cross(b) - area) < 1e-3 * area) {
          return reduced(a, b);
        }
      }
    }
    return cell;
  }

  private static Stream<Vec> around(Cell cell, Vec point) {
    return Stream.of(-1, 0, 1).flatMap(x -> Stream.of(-1, 0, 1).map(y -> point.plus(cell.at(x, y))));
  }

  /** The integer matrices that keep the lengths and the angle of a reduced cell. */
  private static List<Matrix> keptBy(Cell cell) {
    List<Matrix> kept = new ArrayList<>();
    for (int code = 0; code < 81; code++) {
      Matrix matrix = new Matrix(code % 3 - 1, code / 3 % 3 - 1, code / 9 % 3 - 1, code / 27 - 1);
      Vec a = cell.at(matrix.xx(), matrix.yx());
      Vec b = cell.at(matrix.xy(), matrix.yy());
      double size = cell.a().length() * cell.b().length() * 1e-6;
      if (Math.abs(matrix.determinant()) == 1 && Math.abs(a.length() - cell.a().length()) < 1e-6 * a.length()
          && Math.abs(b.length() - cell.b().length()) < 1e-6 * b.length()
          && Math.abs(a.dot(b) - cell.a().dot(cell.b())) < size) {
        kept.add(matrix);
      }
    }
    return kept;
  }
}
