// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import muralbench.editor.internal.field.Paper;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.field.WallStyle;
import muralbench.editor.internal.geometry.WallPlane;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** The bare wall with its floor line; reaches a good way beyond what hangs on it, so that there is room to pan. */
final class WallFigure extends FreeformLayer {
  private static final int MARGIN = 1200 * WallPlane.UNITS;
  private static final int BELOW_FLOOR = 300 * WallPlane.UNITS;

  private final Scene scene;

  WallFigure(Scene scene) {
    this.scene = scene;
  }

  @Override
  public Rectangle getFreeformExtent() {
    Rectangle used = super.getFreeformExtent().getCopy();
    used.union(new Rectangle(used.x, 0, Math.max(1, used.width), BELOW_FLOOR));
    return used.expand(MARGIN, MARGIN);
  }

  @Override
  protected void paintFigure(Graphics graphics) {
    Paper.paint(graphics, scene.zoom().getZoom(), scene.pixelsPerMillimetre(), this::paintWall);
  }

  private void paintWall(Paper paper) {
    Graphics graphics = paper.graphics();
    WallStyle style = scene.style();
    Rectangle clip = graphics.getClip(new Rectangle());
    graphics.setBackgroundColor(style.of(Tint.WALL));
    graphics.fillRectangle(clip);
    if (clip.bottom() > 0) {
      graphics.setBackgroundColor(style.of(Tint.FLOOR));
      graphics.fillRectangle(clip.x, 0, clip.width, clip.bottom());
    }
    graphics.setBackgroundColor(style.of(Tint.FLOOR_LINE));
    graphics.fillRectangle(clip.x, -1, clip.width, 2);
  }
}
