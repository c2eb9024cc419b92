// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;

/** Paints openings. */
public final class OpeningPainter {
  private static final int PADDING = 3;

  private final WallStyle style;

  /** A painter in a style. */
  public OpeningPainter(WallStyle style) {
    this.style = style;
  }

  /** Paints an opening; {@code captions} are tried in turn until one fits. */
  public void paint(Paper paper, Contour edge, List<String> captions) {
    Graphics graphics = paper.graphics();
    graphics.setBackgroundColor(style.of(Tint.OPENING));
    paper.fill(List.of(edge));
    graphics.setForegroundColor(style.of(Tint.OPENING_EDGE));
    graphics.setLineWidth(2);
    paper.draw(edge);
    graphics.setFont(style.text());
    Box box = edge.box();
    for (String caption : captions) {
      Dimension size = FigureUtilities.getTextExtents(caption, style.text());
      if (size.width + 2 * PADDING <= paper.x(box.width()) && size.height <= paper.x(box.height())) {
        graphics.drawText(caption, paper.x(box.centre().x()) - size.width / 2,
            paper.y(box.centre().y()) - size.height / 2);
        return;
      }
    }
  }
}
