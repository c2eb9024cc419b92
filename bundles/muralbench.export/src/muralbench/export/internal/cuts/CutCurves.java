// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The measures that do not fit into the drawing of a cut: diameters of drilled holes, radii, and the stations of
 * curves, as lines of text below it.
 */
final class CutCurves {
  private static final Messages TEXT = Messages.of(CutCurves.class);
  private static final Type TYPE = Type.plain(1.9);
  private static final double LINE = 3.3;
  private static final double GAP = 1.7;

  /** One line: a text at the left and, for stations, texts in columns. */
  private record Row(String head, List<String> cells) {}

  private final List<Row> rows = new ArrayList<>();
  private final Datum datum;
  private final double headWidth;
  private final double cellWidth;

  CutCurves(CutGroup group, CutGeometry geometry, LengthUnit unit, double width, Lettering lettering)
      throws IOException {
    datum = geometry.datum();
    headWidth = Math.max(lettering.width(datum.acrossFrom(), TYPE), lettering.width(datum.upFrom(), TYPE)) + GAP;
    double step = CurveStations.step(group.face().box(), unit);
    List<List<Vec>> stations = geometry.curves().stream().map(curve -> CurveStations.of(curve, step, datum)).toList();
    cellWidth = cellWidth(stations, unit, lettering);
    int columns = Math.max(2, (int) ((width - headWidth) / cellWidth));
    for (Arc hole : geometry.drilled()) {
      rows.add(new Row(TEXT.text("drilled", "diameter", Ordinates.text(2 * hole.rx(), unit),
          "centre", place(hole.centre(), unit)), List.of()));
    }
    for (int i = 0; i < stations.size(); i++) {
      rows.add(new Row(heading(i, geometry.curves().get(i), group.face().box(), unit), List.of()));
      stations(stations.get(i), columns, unit);
    }
  }

  /** The letter of a curve: a, b … z, then aa and so on. */
  static String letter(int index) {
    String last = Character.toString('a' + index % 26);
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }

  private double cellWidth(List<List<Vec>> stations, LengthUnit unit, Lettering lettering)
      throws IOException {
    double widest = 0;
    for (Vec station : stations.stream().flatMap(List::stream).toList()) {
      widest = Math.max(widest, Math.max(lettering.width(Ordinates.text(datum.across(station), unit), TYPE),
          lettering.width(Ordinates.text(datum.up(station), unit), TYPE)));
    }
    return widest + GAP;
  }

  private String heading(int index, Segment curve, Box face, LengthUnit unit) {
    String letter = letter(index);
    if (!(curve instanceof Arc arc) || !arc.circular()) {
      return TEXT.text("curve", "letter", letter);
    }
    String radius = Ordinates.text(arc.rx(), unit);
    Vec centre = new Vec(datum.across(arc.centre()), datum.up(arc.centre()));
    // A compass can be set on or beside the tile; a centre farther off, or beyond the edges that are measured from, is
    // of no use.
    Box bench = new Box(0, 0, face.maxX() * 2, face.maxY() * 2);
    if (!bench.grown(1e-6).holds(Box.of(centre, centre))) {
      return TEXT.text("arc", "letter", letter, "radius", radius);
    }
    return TEXT.text("arc.centred", "letter", letter, "radius", radius, "centre",
        place(arc.centre(), unit));
  }

  private String place(Vec point, LengthUnit unit) {
    return TEXT.text("place", "across", Ordinates.text(datum.across(point), unit), "acrossFrom", datum.acrossFrom(),
        "up", Ordinates.text(datum.up(point), unit), "upFrom", datum.upFrom());
  }

  private void stations(List<Vec> stations, int columns, LengthUnit unit) {
    for (int from = 0; from < stations.size(); from += columns) {
      List<Vec> part = stations.subList(from, Math.min(stations.size(), from + columns));
      rows.add(new Row(datum.acrossFrom(), texts(part, datum::across, unit)));
      rows.add(new Row(datum.upFrom(), texts(part, datum::up, unit)));
    }
  }

  private static List<String> texts(List<Vec> points, ToDoubleFunction<Vec> axis, LengthUnit unit) {
    return points.stream().map(point -> Ordinates.text(axis.applyAsDouble(point), unit)).toList();
  }

  double height() {
    return rows.size() * LINE;
  }

  /** Draws below {@code top}, the upper left corner. */
  void draw(Canvas canvas, Vec top) throws IOException {
    double y = top.y();
    for (Row row : rows) {
      y -= LINE;
      canvas.text(row.head(), TYPE, new Vec(top.x(), y + 0.8), Align.LEFT);
      double right = top.x() + headWidth;
      for (String cell : row.cells()) {
        right += cellWidth;
        canvas.text(cell, TYPE, new Vec(right, y + 0.8), Align.RIGHT);
      }
    }
  }
}
