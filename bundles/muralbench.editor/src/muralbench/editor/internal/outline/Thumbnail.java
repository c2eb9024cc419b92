// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.outline;

import java.beans.PropertyChangeListener;
import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.editor.internal.parts.MuralPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.setout.OriginSpec;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.eclipse.draw2d.Viewport;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** The whole wall in small, with the part that the editor shows; dragging moves that part. */
final class Thumbnail extends Canvas {
  private static final int MARGIN = 8;

  private final Scene scene;
  private final Viewport viewport;
  private final PropertyChangeListener scrolled = event -> redrawIfThere();

  Thumbnail(Composite parent, Scene scene) {
    super(parent, SWT.DOUBLE_BUFFERED);
    this.scene = scene;
    this.viewport = scene.zoom().getViewport();
    setToolTipText(Messages.of(Thumbnail.class).text("thumbnail"));
    setBackground(scene.style().of(Tint.DESK));
    addPaintListener(event -> paint(event.gc));
    addListener(SWT.MouseDown, this::look);
    addListener(SWT.MouseMove, this::look);
    viewport.getHorizontalRangeModel().addPropertyChangeListener(scrolled);
    viewport.getVerticalRangeModel().addPropertyChangeListener(scrolled);
    addDisposeListener(event -> {
      viewport.getHorizontalRangeModel().removePropertyChangeListener(scrolled);
      viewport.getVerticalRangeModel().removePropertyChangeListener(scrolled);
    });
  }

  private void redrawIfThere() {
    if (!isDisposed()) {
      redraw();
    }
  }

  private void look(Event event) {
    boolean held = event.type == SWT.MouseDown ? event.button == 1 : (event.stateMask & SWT.BUTTON1) != 0;
    if (held) {
      view().ifPresent(view -> scene.zoom().centre(WallPlane.point(view.wallX(event.x), view.wallY(event.y))));
    }
  }

  /** How the wall lies in this control. */
  private record View(double scale, double left, double top) {
    int x(double wall) {
      return (int) Math.round(left + wall * scale);
    }

    int y(double wall) {
      return (int) Math.round(top - wall * scale);
    }

    double wallX(int x) {
      return (x - left) / scale;
    }

    double wallY(int y) {
      return (top - y) / scale;
    }
  }

  private Optional<View> view() {
    Rectangle area = getClientArea();
    return MuralPart.extent(scene.mural()).map(frame -> {
      double across = (area.width - 2.0 * MARGIN) / frame.width();
      double scale = Math.min(across, (area.height - 2.0 * MARGIN) / frame.height());
      return new View(scale, area.width / 2.0 - frame.middleX() * scale, area.height / 2.0 + frame.middleY() * scale);
    });
  }

  private void paint(GC gc) {
    view().filter(view -> view.scale() > 0).ifPresent(view -> {
      gc.setAntialias(SWT.ON);
      for (Panel panel : scene.mural().mural().getPanels()) {
        fill(gc, view, Outlines.contour(panel.getOutline()), Tint.WHOLE);
        cuts(gc, view, panel);
        edge(gc, view, Outlines.contour(panel.getOutline()));
        for (Opening opening : panel.getOpenings()) {
          fill(gc, view, Outlines.contour(opening.getOutline()), Tint.DESK);
          edge(gc, view, Outlines.contour(opening.getOutline()));
        }
        repeatedOpenings(gc, view, panel);
      }
      gc.setForeground(scene.style().of(Tint.FLOOR_LINE));
      gc.drawLine(0, view.y(0), getClientArea().width, view.y(0));
      inView(gc, view);
    });
  }

  private void repeatedOpenings(GC gc, View view, Panel panel) {
    scene.mural().setOut(panel).filter(setOut -> setOut.spec().origin() instanceof OriginSpec.Repeated)
        .ifPresent(setOut -> setOut.spec().openings().forEach(opening -> {
          fill(gc, view, Optional.of(opening.outline()), Tint.DESK);
          edge(gc, view, Optional.of(opening.outline()));
        }));
  }

  private void cuts(GC gc, View view, Panel panel) {
    scene.mural().setOut(panel).ifPresent(setOut -> {
      for (Piece piece : setOut.pieces()) {
        if (!piece.uncut()) {
          fill(gc, view, Optional.of(piece.outline()), Tint.of(piece.kind()));
        }
      }
    });
  }

  private void fill(GC gc, View view, Optional<Contour> contour, Tint tint) {
    gc.setBackground(scene.style().of(tint));
    contour.ifPresent(edge -> gc.fillPolygon(pixels(view, edge)));
  }

  private void edge(GC gc, View view, Optional<Contour> contour) {
    gc.setForeground(scene.style().of(Tint.FAINT_INK));
    contour.ifPresent(edge -> gc.drawPolygon(pixels(view, edge)));
  }

  private static int[] pixels(View view, Contour edge) {
    List<Vec> points = edge.points(0.5 / view.scale());
    int[] pixels = new int[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      pixels[2 * i] = view.x(points.get(i).x());
      pixels[2 * i + 1] = view.y(points.get(i).y());
    }
    return pixels;
  }

  private void inView(GC gc, View view) {
    org.eclipse.draw2d.geometry.Rectangle seen = viewport.getClientArea().getCopy();
    seen.setLocation(viewport.getViewLocation());
    Frame frame = WallPlane.frame(seen.scale(1 / scene.zoom().getZoom()));
    gc.setForeground(scene.style().of(Tint.GUIDE));
    gc.drawRectangle(view.x(frame.x()), view.y(frame.top()), (int) (frame.width() * view.scale()),
        (int) (frame.height() * view.scale()));
  }
}
