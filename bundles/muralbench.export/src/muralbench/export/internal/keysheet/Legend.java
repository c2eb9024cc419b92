// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Hatching;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;

/** The legend of panel sheets: every mark and line with its meaning in words. */
final class Legend {
  private static final Type WORDS = Type.plain(1.9);
  private static final double ROW = 4.6;
  private static final double SAMPLE = 12;

  private final Canvas canvas;
  private final Messages texts;
  private final boolean floor;
  private final boolean rings;

  /**
   * A legend.
   *
   * @param floor whether the panel lies on the floor
   * @param rings whether it is laid in rings
   */
  Legend(Canvas canvas, Messages texts, boolean floor, boolean rings) {
    this.canvas = canvas;
    this.texts = texts;
    this.floor = floor;
    this.rings = rings;
  }

  @FunctionalInterface
  private interface Sample {
    void draw(Box place) throws IOException;
  }

  /** One line of the legend. */
  private record Entry(String key, Sample sample) {}

  /**
   * Draws the legend from the top of {@code place} down.
   *
   * @param movement whether the panel has movement joints
   */
  void draw(Box place, boolean movement) throws IOException {
    List<Entry> entries = new ArrayList<>(List.of(
        new Entry(rings ? "legend.whole.rings" : "legend.whole", box -> canvas.box(box, Pen.MEDIUM)),
        new Entry("legend.cut", this::cut),
        new Entry("legend.opening", this::opening),
        new Entry("legend.first", box -> canvas.stroke(List.of(Contour.circle(box.centre(), 1.6)), Pen.HEAVY)),
        new Entry(floor ? "legend.datum.floor" : "legend.datum", box -> level(box, ReferenceLines.DATUM)),
        new Entry(floor ? "legend.plumb.floor" : "legend.plumb", box -> level(box, ReferenceLines.PLUMB)),
        new Entry("legend.centre", box -> level(box, ReferenceLines.CENTRE)),
        new Entry("legend.match", box -> level(box, ReferenceLines.MATCH))));
    if (movement) {
      entries.add(3, new Entry("legend.movement", this::movement));
    }
    if (floor) {
      entries.add(new Entry("legend.corner", this::corner));
    }
    double step = Math.min(ROW, place.height() / entries.size());
    for (int i = 0; i < entries.size(); i++) {
      double top = place.maxY() - i * step;
      entries.get(i).sample().draw(new Box(place.minX(), top - step + 0.7, place.minX() + SAMPLE, top - 0.7));
      String words = texts.text(entries.get(i).key());
      String fit = new TextFit(canvas.lettering()).shortened(words, WORDS, place.width() - SAMPLE - 2);
      double base = top - step / 2 - WORDS.height() / 2;
      canvas.text(fit, WORDS, new Vec(place.minX() + SAMPLE + 2, base), Canvas.Align.LEFT);
    }
  }

  private void cut(Box box) throws IOException {
    Contour edge = Contour.rectangle(box.minX(), box.minY(), box.width(), box.height());
    canvas.lines(Hatching.CUT.lines(List.of(edge), List.of()), Pen.THIN);
    canvas.box(box, Pen.MEDIUM);
  }

  private void opening(Box box) throws IOException {
    canvas.lines(Diagonals.of(Contour.rectangle(box.minX(), box.minY(), box.width(), box.height())), Pen.MEDIUM);
    canvas.box(box, Pen.THICK);
  }

  private void movement(Box box) throws IOException {
    double y = box.centre().y();
    ElevationDrawing.doubleLine(canvas, new Box(box.minX(), y, box.maxX(), y), MovementAxis.HORIZONTAL);
  }

  private void corner(Box box) throws IOException {
    Vec corner = box.centre();
    canvas.fill(List.of(ReferenceLines.cornerMark(corner)), 0);
    canvas.lines(List.of(new Line(corner, new Vec(box.maxX(), corner.y())),
        new Line(corner, new Vec(corner.x(), box.maxY()))), Pen.THICK);
  }

  private void level(Box box, Pen pen) throws IOException {
    double y = box.centre().y();
    canvas.line(new Vec(box.minX(), y), new Vec(box.maxX(), y), pen);
  }
}
