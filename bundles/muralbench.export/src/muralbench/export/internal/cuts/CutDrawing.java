// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.cuts.Ordinates.Ordinate;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Canvas.Align;
import muralbench.export.internal.pdf.Hatching;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A piece drawn to scale on its uncut face: the face dashed, the waste hatched, every corner measured from the two
 * edges of the face of which the piece keeps more. Running measures stand below and at the left; where they would
 * overlap they are moved apart and lead back to their place.
 */
final class CutDrawing {
  private static final List<Double> REDUCTIONS = List.of(0.2, 0.5, 1.0, 2.0, 2.5, 3.0, 4.0, 5.0, 10.0, 20.0, 50.0);
  private static final double HIGHEST = 56;
  private static final double LEADER = 5;
  private static final double RIGHT = 10;
  private static final double ARROW = 8;
  private static final double TOP = 2.5;
  private static final double LABEL_STEP = 2.9;
  private static final double CROSS = 1.6;
  private static final double DOT = 0.45;
  private static final Pen EXTENSION = Pen.THIN.grey(0.45);
  private static final Type LETTER = Type.bold(2.2);
  private static final Messages TEXT = Messages.of(CutDrawing.class);

  private final CutGroup group;
  private final CutGeometry geometry;
  private final LengthUnit unit;
  private final Ordinates across;
  private final Ordinates up;
  private final double left;
  private final double below;
  private final double reduction;

  CutDrawing(CutGroup group, CutGeometry geometry, LengthUnit unit, double width, Lettering lettering)
      throws IOException {
    this.group = group;
    this.geometry = geometry;
    this.unit = unit;
    across = Ordinates.across(geometry.points(), geometry.datum(), unit);
    up = Ordinates.up(geometry.points(), geometry.datum(), unit);
    left = up.widest(lettering) + LEADER + 1;
    below = across.widest(lettering) + LEADER + 1;
    reduction = reduction(width - left - RIGHT);
  }

  private double reduction(double room) {
    Box face = group.face().box();
    double needed = Math.max(face.width() / room, face.height() / HIGHEST);
    return REDUCTIONS.stream().filter(reduction -> reduction >= needed).findFirst().orElse(needed);
  }

  /** How many times smaller than the tile it is drawn. */
  double reduction() {
    return reduction;
  }

  /** Height with its measures, mm. */
  double height() {
    return TOP + group.face().box().height() / reduction + below;
  }

  /** Draws below {@code top}, the upper left corner. */
  void draw(Canvas canvas, Vec top) throws IOException {
    Vec corner = new Vec(top.x() + left, top.y() - height() + below);
    Placing placing = new Placing(reduction, Vec.ZERO, corner);
    List<Contour> piece = new ArrayList<>(List.of(group.outline()));
    piece.addAll(group.holes());
    List<Contour> waste = new ArrayList<>(piece);
    waste.add(group.face());
    canvas.lines(Hatching.CUT.lines(placing.of(waste), List.of()), Pen.THIN.grey(0.3));
    canvas.stroke(placing.of(List.of(group.face())), Pen.MEDIUM.dashed(2.0, 1.2));
    across(canvas, placing);
    up(canvas, placing);
    canvas.stroke(placing.of(piece), Pen.THICK);
    for (Arc hole : geometry.drilled()) {
      cross(canvas, placing.of(hole.centre()));
    }
    curves(canvas, placing);
    if (LotText.ofAll(group).isEmpty()) {
      up(canvas, placing.of(group.face().box()));
    }
  }

  /** Where the top of the tiles of the first lot lies, beside the face. */
  private void up(Canvas canvas, Box face) throws IOException {
    Vec middle = new Vec(face.maxX() + RIGHT - ARROW / 2, face.maxY() - ARROW / 2);
    UpArrow.draw(canvas, middle, group.lots().get(0).turn(), ARROW);
    Vec foot = middle.minus(new Vec(0, ARROW / 2 + LETTER.height() + 1));
    canvas.text(TEXT.text("up"), LETTER, foot, Align.CENTRE);
  }

  private void across(Canvas canvas, Placing placing) throws IOException {
    double foot = placing.paper().y();
    List<Ordinate> ordinates = across.all();
    List<Double> places =
        Spread.apart(ordinates.stream().map(o -> placing.x(o.at())).toList(), LABEL_STEP);
    for (int i = 0; i < places.size(); i++) {
      Ordinate ordinate = ordinates.get(i);
      double x = placing.x(ordinate.at());
      canvas.line(new Vec(x, placing.y(ordinate.from())), new Vec(x, foot - 1), EXTENSION);
      canvas.line(new Vec(x, foot - 1), new Vec(places.get(i), foot - LEADER + 1), Pen.THIN);
      canvas.line(new Vec(places.get(i), foot - LEADER + 1), new Vec(places.get(i), foot - LEADER + 0.4), Pen.THIN);
      Vec anchor = new Vec(places.get(i) + Ordinates.TYPE.height() / 2, foot - LEADER);
      canvas.textUpwards(ordinate.text(), Ordinates.TYPE, anchor, Align.RIGHT);
    }
  }

  private void up(Canvas canvas, Placing placing) throws IOException {
    double side = placing.paper().x();
    List<Ordinate> ordinates = up.all();
    List<Double> places =
        Spread.apart(ordinates.stream().map(o -> placing.y(o.at())).toList(), LABEL_STEP);
    for (int i = 0; i < places.size(); i++) {
      Ordinate ordinate = ordinates.get(i);
      double y = placing.y(ordinate.at());
      canvas.line(new Vec(placing.x(ordinate.from()), y), new Vec(side - 1, y), EXTENSION);
      canvas.line(new Vec(side - 1, y), new Vec(side - LEADER + 1, places.get(i)), Pen.THIN);
      canvas.line(new Vec(side - LEADER + 1, places.get(i)), new Vec(side - LEADER + 0.4, places.get(i)), Pen.THIN);
      Vec anchor = new Vec(side - LEADER, places.get(i) - Ordinates.TYPE.height() / 2);
      canvas.text(ordinate.text(), Ordinates.TYPE, anchor, Align.RIGHT);
    }
  }

  private static void cross(Canvas canvas, Vec middle) throws IOException {
    canvas.line(middle.plus(new Vec(-CROSS, 0)), middle.plus(new Vec(CROSS, 0)), Pen.MEDIUM);
    canvas.line(middle.plus(new Vec(0, -CROSS)), middle.plus(new Vec(0, CROSS)), Pen.MEDIUM);
  }

  /** A dot at every station, and the letter under which the curve stands in the list below the drawing. */
  private void curves(Canvas canvas, Placing placing) throws IOException {
    double step = CurveStations.step(group.face().box(), unit);
    for (int i = 0; i < geometry.curves().size(); i++) {
      Segment curve = geometry.curves().get(i);
      for (Vec station : CurveStations.of(curve, step, geometry.datum())) {
        Vec at = placing.of(station);
        canvas.fill(new Box(at.x(), at.y(), at.x(), at.y()).grown(DOT), 0);
      }
      Vec middle = placing.of(besides(curve, 3 * reduction));
      canvas.fill(new Box(middle.x(), middle.y(), middle.x(), middle.y()).grown(LETTER.height() * 0.8), 1);
      canvas.text(CutCurves.letter(i), LETTER, middle.minus(new Vec(0, LETTER.height() / 2)), Align.CENTRE);
    }
  }

  /** A place beside the middle of a curve: on the waste, or on the piece where the waste ends too soon. */
  private Vec besides(Segment curve, double distance) {
    Vec along = curve.at(0.51).minus(curve.at(0.49));
    // The piece lies at the left of its edge.
    Vec outwards = new Vec(along.y(), -along.x()).times(distance / Math.max(along.length(), 1e-9));
    Vec waste = curve.at(0.5).plus(outwards);
    boolean room = group.face().box().grown(-distance / 3).holds(Box.of(waste, waste));
    return room ? waste : curve.at(0.5).minus(outwards);
  }
}
