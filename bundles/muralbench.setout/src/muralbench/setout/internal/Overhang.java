// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Box;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Says where and by how much an opening reaches outside its panel. */
final class Overhang {
  private static final double TOUCH = 1e-6;

  private final Messages texts = Messages.of(Overhang.class);
  private final LengthUnit units;

  private Overhang(LengthUnit units) {
    this.units = units;
  }

  /**
   * Refuses an opening of which more than dust lies outside the panel.
   *
   * @param hole the opening as a polygon
   * @param outline the outline of the panel as a polygon
   * @throws InputException if it does
   */
  static void refuse(OpeningSpec opening, Polygon hole, PanelSpec panel, Polygon outline, LengthUnit units)
      throws InputException {
    Geometry outside = TiledRegion.overlay(hole, outline, OverlayNG.DIFFERENCE);
    if (outside.getArea() > SetOut.DUST_AREA) {
      Overhang overhang = new Overhang(units);
      String sides = overhang.sides(opening.outline().box(), panel.outline().box());
      String problem = sides.isEmpty() ? overhang.farthest(outside, outline, panel.id())
          : overhang.texts.text("opening.outside", "sides", sides, "panel", panel.id());
      throw new InputException(opening.id(), problem, overhang.texts.text("opening.outside.remedy"));
    }
  }

  /** The edges of the panel's box that the opening passes; none if it leaves the panel inside that box. */
  private String sides(Box opening, Box panel) {
    List<String> sides = new ArrayList<>();
    side(sides, "left", panel.minX() - opening.minX());
    side(sides, "right", opening.maxX() - panel.maxX());
    side(sides, "bottom", panel.minY() - opening.minY());
    side(sides, "top", opening.maxY() - panel.maxY());
    return sides.stream().reduce((a, b) -> texts.text("opening.outside.and", "first", a, "second", b)).orElse("");
  }

  private void side(List<String> sides, String name, double far) {
    if (far > TOUCH) {
      sides.add(texts.text("opening.outside." + name, "far", shown(far)));
    }
  }

  private String farthest(Geometry outside, Polygon outline, String panel) {
    Coordinate at = Arrays.stream(outside.getCoordinates()).max(Comparator.comparingDouble(c -> far(c, outline)))
        .orElseThrow();
    return texts.text("opening.outside.near", "far", shown(far(at, outline)), "panel", panel, "x",
        LengthText.shown(at.x, units), "y", LengthText.shown(at.y, units));
  }

  private static double far(Coordinate point, Polygon outline) {
    return outline.distance(Rings.FACTORY.createPoint(point));
  }

  private String shown(double far) {
    double step = units == LengthUnit.INCH ? LengthUnit.INCH.millimetres() / 16 : 0.5;
    return LengthText.rounded(far, units) > 0 ? LengthText.shown(far, units)
        : texts.text("opening.outside.less", "step", LengthText.shown(step, units));
  }
}
