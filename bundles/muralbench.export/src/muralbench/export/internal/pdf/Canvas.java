// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** One sheet being drawn. Lengths in millimetres from the lower left corner of the sheet, y up. */
public final class Canvas {
  /** Points in a millimetre; a point is 1/72 in. */
  private static final double POINTS = 72 / 25.4;

  /** Something drawn inside a clip. */
  @FunctionalInterface
  public interface Drawing {
    /** Draws. */
    void draw() throws IOException;
  }

  /** Where a text stands against its anchor. */
  public enum Align {
    /** Starts at the anchor. */
    LEFT(0),
    /** The anchor is its middle. */
    CENTRE(0.5),
    /** Ends at the anchor. */
    RIGHT(1);

    private final double share;

    Align(double share) {
      this.share = share;
    }
  }

  private final SheetSize size;
  private final Lettering lettering;
  private final PDFont plain;
  private final PDFont bold;
  private final PDPageContentStream out;

  Canvas(SheetSize size, Lettering lettering, PDFont plain, PDFont bold, PDPageContentStream out) {
    this.size = size;
    this.lettering = lettering;
    this.plain = plain;
    this.bold = bold;
    this.out = out;
  }

  /** The sheet. */
  public SheetSize size() {
    return size;
  }

  /** The letters in use. */
  public Lettering lettering() {
    return lettering;
  }

  /** A straight line. */
  public void line(Vec from, Vec to, Pen pen) throws IOException {
    lines(List.of(new Line(from, to)), pen);
  }

  /** Straight lines. */
  public void lines(List<Line> lines, Pen pen) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    use(pen);
    for (Line line : lines) {
      out.moveTo(points(line.start().x()), points(line.start().y()));
      out.lineTo(points(line.end().x()), points(line.end().y()));
    }
    out.stroke();
  }

  /** The upright rectangle of a box. */
  public void box(Box box, Pen pen) throws IOException {
    use(pen);
    rectangle(box);
    out.stroke();
  }

  /** A filled box; grey 0 is black, 1 is white. */
  public void fill(Box box, double grey) throws IOException {
    out.setNonStrokingColor((float) grey);
    rectangle(box);
    out.fill();
  }

  /** The lines of contours; arcs and curves stay curves. */
  public void stroke(List<Contour> contours, Pen pen) throws IOException {
    if (contours.isEmpty()) {
      return;
    }
    use(pen);
    path(contours);
    out.stroke();
  }

  /** The areas of contours by the even-odd rule; grey 0 is black, 1 is white. */
  public void fill(List<Contour> contours, double grey) throws IOException {
    if (contours.isEmpty()) {
      return;
    }
    out.setNonStrokingColor((float) grey);
    path(contours);
    out.fillEvenOdd();
  }

  /** Draws something of which only the part inside {@code window} shows. */
  public void clipped(Box window, Drawing drawing) throws IOException {
    out.saveGraphicsState();
    rectangle(window);
    out.clip();
    drawing.draw();
    out.restoreGraphicsState();
  }

  /** A line of text; {@code anchor} lies on the base line. */
  public void text(String text, Type type, Vec anchor, Align align) throws IOException {
    text(text, type, anchor, align, false);
  }

  /** A line of text that reads upwards; {@code anchor} lies on the base line. */
  public void textUpwards(String text, Type type, Vec anchor, Align align) throws IOException {
    text(text, type, anchor, align, true);
  }

  private void text(String text, Type type, Vec anchor, Align align, boolean upwards) throws IOException {
    String shown = lettering.printable(text, type);
    if (shown.isBlank()) {
      return;
    }
    double back = align.share * lettering.width(text, type);
    double x = anchor.x() - (upwards ? 0 : back);
    double y = anchor.y() - (upwards ? back : 0);
    out.setNonStrokingColor(0f);
    out.beginText();
    out.setFont(type.bold() ? bold : plain, points(lettering.size(type)));
    float turn = upwards ? 1 : 0;
    float stretch = (float) type.stretch();
    out.setTextMatrix(
        new Matrix((1 - turn) * stretch, turn * stretch, -turn, 1 - turn, points(x), points(y)));
    out.showText(shown);
    out.endText();
  }

  void close() throws IOException {
    out.close();
  }

  private void path(List<Contour> contours) throws IOException {
    ContourPath path = new ContourPath(out, POINTS);
    for (Contour contour : contours) {
      path.add(contour);
    }
  }

  private void rectangle(Box box) throws IOException {
    out.addRect(points(box.minX()), points(box.minY()), points(box.width()), points(box.height()));
  }

  private void use(Pen pen) throws IOException {
    out.setStrokingColor((float) pen.grey());
    out.setLineWidth(points(pen.width()));
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = points(pen.dashes().get(i));
    }
    out.setLineDashPattern(dashes, 0);
  }

  private static float points(double millimetres) {
    return (float) (millimetres * POINTS);
  }
}
