// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import java.util.Optional;
import muralbench.editor.internal.field.OpeningPainter;
import muralbench.editor.internal.field.Paper;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.setout.geometry.Contour;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.handles.HandleBounds;

/** Shows an opening: the bare wall inside its edge, with its id and what it is for where that fits. */
final class OpeningFigure extends Figure implements HandleBounds {
  private final Scene scene;
  private Frame frame;
  private Optional<Contour> edge = Optional.empty();
  private List<String> words = List.of();

  OpeningFigure(Scene scene) {
    this.scene = scene;
  }

  /** Shows an opening; {@code captions} are tried in turn until one fits. */
  void show(Frame place, Optional<Contour> outline, List<String> captions) {
    frame = place;
    edge = outline;
    words = captions;
    setBounds(getHandleBounds().getExpanded(scene.unitsOfPixels(2), scene.unitsOfPixels(2)));
    repaint();
  }

  @Override
  public Rectangle getHandleBounds() {
    return frame == null ? getBounds() : WallPlane.rectangle(frame);
  }

  @Override
  protected void paintFigure(Graphics graphics) {
    if (frame != null) {
      Paper.paint(graphics, scene.zoom().getZoom(), scene.pixelsPerMillimetre(), this::paintOpening);
    }
  }

  private void paintOpening(Paper paper) {
    Contour shape = edge.orElseGet(() -> Contour.rectangle(frame.x(), frame.y(), frame.width(), frame.height()));
    new OpeningPainter(scene.style()).paint(paper, shape, words);
  }
}
