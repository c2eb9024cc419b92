// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Hatching;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.setout.OpeningSpec;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementStrips;

/** Draws pieces, cuts, openings and keys of one sheet. */
final class ElevationDrawing {
  /** How far the drawing runs on past a match line, mm on paper. */
  static final double OVERLAP = 2.5;

  private static final double RING = 0.43;
  private static final double CLOSEST = 1.2;

  private final Canvas canvas;
  private final PanelFacts facts;
  private final SheetPlan sheet;
  private final Placing placing;

  ElevationDrawing(Canvas canvas, PanelFacts facts, SheetPlan sheet) {
    this.canvas = canvas;
    this.facts = facts;
    this.sheet = sheet;
    this.placing = sheet.placing();
  }

  /** Draws everything under the lines of reference. */
  void drawWork() throws IOException {
    canvas.clipped(sheet.shown().grown(OVERLAP), () -> {
      hatch();
      canvas.stroke(sheet.pieces().stream().flatMap(piece -> placing.of(edges(piece)).stream()).toList(), Pen.MEDIUM);
      for (OpeningSpec opening : facts.panel().spec().openings()) {
        Contour edge = placing.of(opening.outline());
        canvas.lines(Diagonals.of(edge), Pen.MEDIUM);
        canvas.stroke(List.of(edge), Pen.THICK);
      }
      canvas.stroke(List.of(placing.of(facts.panel().spec().outline())), Pen.THICK);
      movementJoints();
      ring();
    });
  }

  /** Draws keys and names on top of everything else. */
  void drawTexts() throws IOException {
    List<Label> labels = new ArrayList<>(sheet.keys());
    labels.addAll(sheet.names());
    new LabelDrawing(canvas).draw(labels, 1);
  }

  private void hatch() throws IOException {
    List<Box> texts = new ArrayList<>();
    sheet.keys().forEach(label -> texts.add(label.place()));
    sheet.names().forEach(label -> texts.add(label.place()));
    for (Piece piece : sheet.pieces()) {
      if (!piece.uncut()) {
        Box box = placing.of(piece.box());
        List<Box> clear = texts.stream().filter(box::meets).toList();
        canvas.lines(Hatching.CUT.lines(placing.of(edges(piece)), clear), Pen.THIN);
      }
    }
  }

  /** Double lines, far enough apart to be seen as two. */
  private void movementJoints() throws IOException {
    for (MovementJoint joint : facts.panel().movement()) {
      for (Box strip : MovementStrips.of(facts.panel(), joint)) {
        doubleLine(canvas, placing.of(strip), joint.axis());
      }
    }
  }

  /** A movement joint, or its sample in the legend, on paper. */
  static void doubleLine(Canvas canvas, Box strip, MovementAxis axis) throws IOException {
    Vec middle = strip.centre();
    if (axis == MovementAxis.VERTICAL) {
      double half = Math.max(strip.width() / 2, CLOSEST / 2);
      canvas.line(new Vec(middle.x() - half, strip.minY()), new Vec(middle.x() - half, strip.maxY()), Pen.THICK);
      canvas.line(new Vec(middle.x() + half, strip.minY()), new Vec(middle.x() + half, strip.maxY()), Pen.THICK);
    } else {
      double half = Math.max(strip.height() / 2, CLOSEST / 2);
      canvas.line(new Vec(strip.minX(), middle.y() - half), new Vec(strip.maxX(), middle.y() - half), Pen.THICK);
      canvas.line(new Vec(strip.minX(), middle.y() + half), new Vec(strip.maxX(), middle.y() + half), Pen.THICK);
    }
  }

  private void ring() throws IOException {
    Piece first = facts.first().piece();
    if (sheet.pieces().contains(first)) {
      Box box = placing.of(first.box());
      double radius = RING * Math.min(box.width(), box.height());
      canvas.stroke(List.of(Contour.circle(box.centre(), radius)), Pen.HEAVY);
    }
  }

  private static List<Contour> edges(Piece piece) {
    List<Contour> edges = new ArrayList<>(List.of(piece.outline()));
    edges.addAll(piece.holes());
    return edges;
  }
}
