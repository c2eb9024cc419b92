// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import java.util.Objects;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.parts.PanelPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Tells in the status bar and in a tool tip which piece or movement joint lies under the pointer. */
public final class PieceReadout {
  private static final Messages TEXTS = Messages.of(PieceReadout.class);

  /** How long the pointer rests before the tip is asked for, ms; the platform adds about as much again. */
  private static final int REST = 500;

  /** How near to a movement joint the pointer has to be, pixels. */
  private static final int REACH = 3;

  private final GraphicalViewer viewer;
  private final FigureCanvas canvas;
  private final Scene scene;
  private final Runnable tip = this::showTip;
  private Optional<Told> last = Optional.empty();

  /** What is told of a place, in the status bar and in a tip. */
  private record Told(String words, String tip) {}

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
      show(lookAt(event.x, event.y));
      last.ifPresent(told -> canvas.getDisplay().timerExec(REST, tip));
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
      last.ifPresent(told -> canvas.setToolTipText(told.tip()));
    }
  }

  private Optional<Told> lookAt(int x, int y) {
    if (!(viewer.findObjectAt(new Point(x, y)) instanceof PanelPart panel)) {
      return Optional.empty();
    }
    LengthUnit unit = scene.mural().units();
    Vec at = scene.zoom().wall(new Point(x, y));
    return panel.movementAt(at.x(), at.y(), REACH / scene.pixelsPerMillimetre())
        .map(joint -> new Told(text("movement", joint, unit), text("movement.tip", joint, unit)))
        .or(() -> panel.pieceAt(at.x(), at.y())
            .map(piece -> new Told(describe(piece, unit), text("tip", piece, unit))));
  }

  private void show(Optional<Told> told) {
    if (!Objects.equals(told, last)) {
      last = told;
      scene.status().accept(told.map(Told::words).orElse(""));
    }
  }

  private static String text(String key, MovementJoint joint, LengthUnit unit) {
    return TEXTS.text(key + "." + joint.axis().word(), "width", LengthText.fine(joint.width(), unit), "at",
        LengthText.shownInFeet(joint.at(), unit));
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
