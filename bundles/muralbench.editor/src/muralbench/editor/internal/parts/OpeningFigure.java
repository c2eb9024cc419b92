// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import java.util.Optional;
import muralbench.editor.internal.field.Paper;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.field.WallStyle;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.setout.geometry.Contour;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
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
    Graphics graphics = paper.graphics();
    WallStyle style = scene.style();
    Contour shape = edge.orElseGet(() -> Contour.rectangle(frame.x(), frame.y(), frame.width(), frame.height()));
    graphics.setBackgroundColor(style.of(Tint.OPENING));
    paper.fill(List.of(shape));
    graphics.setForegroundColor(style.of(Tint.OPENING_EDGE));
    graphics.setLineWidth(2);
    paper.draw(shape);
    graphics.setFont(style.text());
    for (String caption : words) {
      Dimension size = FigureUtilities.getTextExtents(caption, style.text());
      if (size.width + 6 <= paper.x(frame.width()) && size.height <= paper.x(frame.height())) {
        graphics.drawText(caption, paper.x(frame.middleX()) - size.width / 2,
            paper.y(frame.middleY()) - size.height / 2);
        return;
      }
    }
  }
}
