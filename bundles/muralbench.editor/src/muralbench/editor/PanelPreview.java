// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.field.WallStyle;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementStrips;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** A small picture of the set-out of one panel, with its cuts in the colours of the editor. */
public final class PanelPreview extends Canvas {
  private static final int MARGIN = 6;
  private static final double CHORD_PIXELS = 0.2;
  private static final int BAR = 4;

  private final WallStyle style;
  private Optional<PanelSetOut> shown = Optional.empty();

  /** An empty preview. */
  public PanelPreview(Composite parent) {
    super(parent, SWT.DOUBLE_BUFFERED);
    style = new WallStyle(this);
    setBackground(style.of(Tint.WALL));
    addPaintListener(event -> paint(event.gc, getClientArea()));
  }

  /** Shows a set-out, or nothing. */
  public void show(Optional<PanelSetOut> setOut) {
    shown = setOut;
    redraw();
  }

  /** The place on the wall under a point of the preview, mm; none while nothing is shown. */
  public Optional<Vec> wall(int x, int y) {
    return shown.map(setOut -> new Painting(null, getClientArea(), setOut.spec().outline().box()).wall(x, y));
  }

  /** Millimetres on the wall that a number of pixels takes; 0 while nothing is shown. */
  public double millimetres(int pixels) {
    return shown.map(setOut -> pixels / new Painting(null, getClientArea(), setOut.spec().outline().box()).scale)
        .orElse(0.0);
  }

  /** The same picture as an image of its own, which the caller disposes of. */
  public Image image(PanelSetOut setOut, int width, int height) {
    return image(setOut, List.of(), width, height);
  }

  /** As {@link #image(PanelSetOut, int, int)}, with a strong line around some contours of the wall. */
  public Image image(PanelSetOut setOut, List<Contour> marked, int width, int height) {
    Optional<PanelSetOut> before = shown;
    Image image = new Image(getDisplay(), width, height);
    GC gc = new GC(image);
    shown = Optional.of(setOut);
    gc.setBackground(style.of(Tint.WALL));
    gc.fillRectangle(0, 0, width, height);
    paint(gc, new Rectangle(0, 0, width, height));
    new Painting(gc, new Rectangle(0, 0, width, height), setOut.spec().outline().box()).mark(marked);
    gc.dispose();
    shown = before;
    return image;
  }

  private void paint(GC gc, Rectangle area) {
    shown.ifPresent(setOut -> new Painting(gc, area, setOut.spec().outline().box()).paint(setOut));
  }

  /** One act of painting: places on the wall in pixels. */
  private final class Painting {
    private final GC gc;
    private final double scale;
    private final double left;
    private final double top;

    Painting(GC gc, Rectangle area, Box wall) {
      this.gc = gc;
      scale = Math.max(1e-6, Math.min((area.width - 2.0 * MARGIN) / wall.width(),
          (area.height - 2.0 * MARGIN) / wall.height()));
      left = area.x + area.width / 2.0 - wall.centre().x() * scale;
      top = area.y + area.height / 2.0 + wall.centre().y() * scale;
    }

    Vec wall(int x, int y) {
      return new Vec((x - left) / scale, (top - y) / scale);
    }

    void paint(PanelSetOut setOut) {
      gc.setAntialias(SWT.ON);
      gc.setBackground(style.of(Tint.GROUT));
      fill(setOut.tiled());
      for (Piece piece : setOut.pieces()) {
        gc.setBackground(style.of(Tint.of(piece.kind())));
        fill(withHoles(piece));
      }
      setOut.movement().forEach(joint -> MovementStrips.of(setOut, joint).forEach(strip -> bar(strip, joint.axis())));
      gc.setForeground(style.of(Tint.EDGE));
      draw(setOut.spec().outline());
      gc.setForeground(style.of(Tint.OPENING_EDGE));
      setOut.spec().openings().forEach(opening -> draw(opening.outline()));
    }

    /** A light bar between two dark lines, told apart from any other line without colours. */
    private void bar(Box strip, MovementAxis axis) {
      boolean upright = axis == MovementAxis.VERTICAL;
      int thick = Math.max(BAR, (int) Math.round((upright ? strip.width() : strip.height()) * scale));
      int x = Math.round(x(strip.centre()));
      int y = Math.round(y(strip.centre()));
      int along = (int) Math.round((upright ? strip.height() : strip.width()) * scale);
      for (int inset = 0; inset < 2; inset++) {
        gc.setBackground(style.of(inset == 0 ? Tint.EDGE : Tint.WHOLE));
        int size = thick - 2 * inset;
        if (upright) {
          gc.fillRectangle(x - thick / 2 + inset, y - along / 2, size, along);
        } else {
          gc.fillRectangle(x - along / 2, y - thick / 2 + inset, along, size);
        }
      }
    }

    void mark(List<Contour> contours) {
      gc.setForeground(style.of(Tint.INK));
      gc.setLineWidth(2);
      contours.forEach(this::draw);
    }

    private List<Contour> withHoles(Piece piece) {
      List<Contour> contours = new ArrayList<>(piece.holes());
      contours.add(piece.outline());
      return contours;
    }

    private void fill(List<Contour> contours) {
      Path path = path(contours);
      gc.fillPath(path);
      path.dispose();
    }

    private void draw(Contour contour) {
      Path path = path(List.of(contour));
      gc.drawPath(path);
      path.dispose();
    }

    private Path path(List<Contour> contours) {
      Path path = new Path(getDisplay());
      for (Contour contour : contours) {
        List<Vec> points = contour.points(CHORD_PIXELS / scale);
        path.moveTo(x(points.get(0)), y(points.get(0)));
        points.subList(1, points.size()).forEach(point -> path.lineTo(x(point), y(point)));
        path.close();
      }
      return path;
    }

    private float x(Vec point) {
      return (float) (left + point.x() * scale);
    }

    private float y(Vec point) {
      return (float) (top - point.y() * scale);
    }
  }
}
