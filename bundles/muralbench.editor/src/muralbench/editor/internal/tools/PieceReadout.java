// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import java.util.Objects;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.editor.internal.parts.PanelPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.setout.Piece;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Tells in the status bar and in a tool tip which piece lies under the pointer. */
public final class PieceReadout {
  private static final Messages TEXTS = Messages.of(PieceReadout.class);

  /** How long the pointer rests before the tip is asked for, ms; the platform adds about as much again. */
  private static final int REST = 500;

  private final GraphicalViewer viewer;
  private final FigureCanvas canvas;
  private final Scene scene;
  private final Runnable tip = this::showTip;
  private Optional<Piece> last = Optional.empty();

  private PieceReadout(GraphicalViewer viewer, FigureCanvas canvas, Scene scene) {
    this.viewer = viewer;
    this.canvas = canvas;
    this.scene = scene;
  }

  /** Listens on the canvas of a viewer. */
  public static void on(GraphicalViewer viewer, FigureCanvas canvas, Scene scene) {
    PieceReadout readout = new PieceReadout(viewer, canvas, scene);
    canvas.addListener(SWT.MouseMove, readout::moved);
    canvas.addListener(SWT.MouseDown, event -> readout.hideTip());
    canvas.addListener(SWT.MouseUp, event -> readout.hideTip());
    canvas.addListener(SWT.MouseExit, event -> readout.left());
  }

  private void left() {
    hideTip();
    show(Optional.empty());
  }

  private void moved(Event event) {
    boolean dragging = (event.stateMask & SWT.BUTTON_MASK) != 0;
    hideTip();
    if (!dragging) {
      show(pieceAt(event.x, event.y));
      last.ifPresent(piece -> canvas.getDisplay().timerExec(REST, tip));
    }
  }

  /** The tip would lie over what is being dragged or was just put down, so that it waits for the pointer to rest. */
  private void hideTip() {
    canvas.getDisplay().timerExec(-1, tip);
    if (canvas.getToolTipText() != null) {
      canvas.setToolTipText(null);
    }
  }

  private void showTip() {
    if (!canvas.isDisposed()) {
      last.ifPresent(piece -> canvas.setToolTipText(text("tip", piece, scene.mural().units())));
    }
  }

  private Optional<Piece> pieceAt(int x, int y) {
    if (!(viewer.findObjectAt(new Point(x, y)) instanceof PanelPart panel)) {
      return Optional.empty();
    }
    Viewport viewport = canvas.getViewport();
    double zoom = scene.zoom().getZoom();
    return panel.pieceAt(WallPlane.wallX((viewport.getViewLocation().x + x) / zoom),
        WallPlane.wallY((viewport.getViewLocation().y + y) / zoom));
  }

  private void show(Optional<Piece> piece) {
    if (!Objects.equals(piece, last)) {
      last = piece;
      String words = piece.map(found -> describe(found, scene.mural().units())).orElse("");
      scene.status().accept(words);
    }
  }

  /** A piece in words: key, course, position, kind, size. */
  public static String describe(Piece piece, LengthUnit unit) {
    return text("piece", piece, unit);
  }

  private static String text(String key, Piece piece, LengthUnit unit) {
    return TEXTS.text(key, "key", piece.key(), "course", piece.course(), "position", piece.position(), "kind",
        TEXTS.text("kind." + piece.kind().word()), "width", LengthText.shown(piece.box().width(), unit), "height",
        LengthText.shown(piece.box().height(), unit));
  }
}
