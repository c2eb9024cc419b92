// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import muralbench.editor.internal.field.FieldPainter;
import muralbench.editor.internal.field.PanelPicture;
import muralbench.editor.internal.field.Paper;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.setout.geometry.Contour;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.handles.HandleBounds;

/** Shows a panel with all its pieces. Its bounds hold the title and all openings too; handles go around the panel. */
final class PanelFigure extends Figure implements HandleBounds {
  /** Width of the line around a marked piece, pixels. */
  private static final int MARK = 3;

  private final Scene scene;
  private final FieldPainter painter;
  private PanelPicture picture;
  private List<Contour> marked = List.of();

  PanelFigure(Scene scene) {
    this.scene = scene;
    this.painter = new FieldPainter(scene.style());
  }

  /** Shows a picture; {@code extra} is what the figure has to cover besides the panel and its title. */
  void show(PanelPicture shown, Rectangle extra) {
    picture = shown;
    Rectangle bounds = getHandleBounds().getUnion(extra).expand(scene.unitsOfPixels(2), scene.unitsOfPixels(2));
    int title = scene.unitsOfPixels(FieldPainter.TITLE_HEIGHT);
    setBounds(bounds.getUnion(getHandleBounds().getTranslated(0, -title)));
    repaint();
  }

  /** Draws a clear line around pieces, given by their outlines. */
  void mark(List<Contour> pieces) {
    marked = List.copyOf(pieces);
    repaint();
  }

  private void paintAll(Paper paper) {
    painter.paint(paper, picture);
    paper.graphics().setForegroundColor(scene.style().of(Tint.GUIDE));
    paper.graphics().setLineWidth(MARK);
    marked.forEach(paper::draw);
  }

  PanelPicture picture() {
    return picture;
  }

  @Override
  public Rectangle getHandleBounds() {
    return picture == null ? getBounds() : WallPlane.rectangle(picture.frame());
  }

  @Override
  public boolean containsPoint(int x, int y) {
    int title = scene.unitsOfPixels(FieldPainter.TITLE_HEIGHT);
    Rectangle reach = getHandleBounds().getCopy();
    reach.y -= title;
    reach.height += title;
    return reach.contains(x, y);
  }

  @Override
  protected void paintFigure(Graphics graphics) {
    Paper.paint(graphics, scene.zoom().getZoom(), scene.pixelsPerMillimetre(), this::paintAll);
  }
}
