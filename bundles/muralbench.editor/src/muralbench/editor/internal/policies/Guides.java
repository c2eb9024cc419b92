// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.ArrayList;
import java.util.List;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.WallPlane;
import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Polyline;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;

/** The thin lines that show what a dragged thing snapped to. */
final class Guides {
  /** How far a guide reaches beyond the thing, mm. */
  private static final double BEYOND = 300;

  private final List<Polyline> lines = new ArrayList<>();

  void show(IFigure layer, IFigure host, Dragged way) {
    erase();
    Frame to = way.to();
    way.guideX().ifPresent(x -> add(layer, host, x, to.y() - BEYOND, x, to.top() + BEYOND));
    way.guideY().ifPresent(y -> add(layer, host, to.x() - BEYOND, y, to.right() + BEYOND, y));
  }

  private void add(IFigure layer, IFigure host, double x1, double y1, double x2, double y2) {
    PointList points = new PointList();
    points.addPoint(translated(layer, host, WallPlane.point(x1, y1)));
    points.addPoint(translated(layer, host, WallPlane.point(x2, y2)));
    Polyline line = new Polyline();
    line.setPoints(points);
    line.setForegroundColor(ColorConstants.red);
    lines.add(line);
    layer.add(line);
  }

  private static Point translated(IFigure layer, IFigure host, Point point) {
    host.translateToAbsolute(point);
    layer.translateToRelative(point);
    return point;
  }

  void erase() {
    lines.forEach(line -> line.getParent().remove(line));
    lines.clear();
  }
}
