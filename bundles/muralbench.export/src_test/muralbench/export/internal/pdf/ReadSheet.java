// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What stands on a printed sheet, read back: texts with their places and drawn lines, in millimetres. */
public final class ReadSheet {
  /** Millimetres in a point. */
  public static final double POINT = 25.4 / 72;

  /** A text as it was shown in one go; the box goes from the base line to the height of capitals. */
  public record Text(String text, Box box, double height, boolean upwards) {}

  /** A drawn path: its points with curves as their end points, in subpaths run together; curves counts the curves. */
  public record Path(List<Vec> points, double width, boolean filled, int curves) {}

  private ReadSheet() {}

  /** The texts of a page, one for every piece of text that was shown in one go. */
  public static List<Text> texts(PDDocument document, int page) throws IOException {
    List<Text> found = new ArrayList<>();
    List<TextPosition> places = new ArrayList<>();
    PDFTextStripper stripper = new PDFTextStripper() {
      @Override
      protected void showText(byte[] string) throws IOException {
        places.clear();
        super.showText(string);
        add(found, places);
      }

      @Override
      protected void processTextPosition(TextPosition text) {
        places.add(text);
      }
    };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    stripper.writeText(document, new StringWriter());
    return found;
  }

  private static void add(List<Text> found, List<TextPosition> places) {
    StringBuilder text = new StringBuilder();
    places.forEach(place -> text.append(place.getUnicode()));
    TextPosition first = places.get(0);
    TextPosition last = places.get(places.size() - 1);
    double x = first.getTextMatrix().getTranslateX() * POINT;
    double y = first.getTextMatrix().getTranslateY() * POINT;
    double capitals = first.getFont().getFontDescriptor().getCapHeight() / 1000;
    double height = capitals * Math.hypot(first.getTextMatrix().getScaleY(), first.getTextMatrix().getShearX()) * POINT;
    boolean upwards = first.getDir() == 90;
    double lastX = last.getTextMatrix().getTranslateX() * POINT;
    double lastY = last.getTextMatrix().getTranslateY() * POINT;
    double advance = last.getWidthDirAdj() * POINT;
    Box box = upwards ? new Box(x - height, y, x, lastY + advance) : new Box(x, y, lastX + advance, y + height);
    found.add(new Text(text.toString(), box, height, upwards));
  }

  /** The stroked and filled paths of a page in the order drawn. */
  public static List<Path> paths(PDPage page) throws IOException {
    Strokes strokes = new Strokes(page);
    strokes.processPage(page);
    return strokes.paths;
  }

  private static final class Strokes extends PDFGraphicsStreamEngine {
    private final List<Path> paths = new ArrayList<>();
    private List<Vec> points = new ArrayList<>();
    private int curves;

    Strokes(PDPage page) {
      super(page);
    }

    private void end(boolean filled) {
      paths.add(new Path(points, getGraphicsState().getLineWidth() * POINT, filled, curves));
      points = new ArrayList<>();
      curves = 0;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
      for (Point2D p : List.of(p0, p1, p2, p3, p0)) {
        lineTo((float) p.getX(), (float) p.getY());
      }
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void moveTo(float x, float y) {
      lineTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      points.add(new Vec(x * POINT, y * POINT));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      curves++;
      lineTo(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
      Vec last = points.get(points.size() - 1);
      return new Point2D.Double(last.x() / POINT, last.y() / POINT);
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
      points = new ArrayList<>();
    }

    @Override
    public void strokePath() {
      end(false);
    }

    @Override
    public void fillPath(int windingRule) {
      end(true);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      end(true);
    }

    @Override
    public void shadingFill(COSName shadingName) {}
  }
}
