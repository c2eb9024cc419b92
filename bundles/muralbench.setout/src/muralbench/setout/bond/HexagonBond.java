// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Regular hexagons in staggered courses. The tile's width is its measure across flats, a; a side is a / sqrt(3). Rows lie
 * (a + joint) sqrt(3) / 2 apart. The tile's height is the same measure again, or the measure over the points, 2 a / sqrt(3).
 */
final class HexagonBond implements Bond {
  /** Sizes over the points are often given rounded, mm. */
  private static final double ROUNDED = 1;
  private static final Messages TEXTS = Messages.of(HexagonBond.class);

  @Override
  public String kind() {
    return "hexagon";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.hexagon");
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("point", TEXTS.text("setting.point"), "up", TEXTS.text("setting.point.hint"))
        .of(BondSetting.Form.CHOICE, "up", "side"));
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    boolean side = new BondSettings(request).word("point", "up", "up", "side").equals("side");
    double flats = request.tile().width();
    double height = request.tile().height();
    if (Math.abs(height - flats) > ROUNDED && Math.abs(height - 2 * flats / Math.sqrt(3)) > ROUNDED) {
      throw BondSettings.refused("tile", "hexagon.size", "points", Math.round(200 * flats / Math.sqrt(3)) / 100.0);
    }
    double module = flats + request.joint();
    double radius = flats / Math.sqrt(3);
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double angle = Math.toRadians(60 * i - 90);
      corners.add(new Vec(flats / 2 + radius * Math.cos(angle), radius + radius * Math.sin(angle)));
    }
    Vec middle = new Vec(flats / 2, radius);
    Motion turn = side ? Motion.turn(30, middle) : Motion.NONE;
    Vec along = direction(module, side ? -30 : 0);
    Vec across = direction(module, side ? 30 : 60);
    Contour face = Contour.polygon(corners).moved(turn);
    Motion toCorner = Motion.shift(new Vec(-face.box().minX(), -face.box().minY()));
    Vec centre = toCorner.of(middle);
    Vec between = centre.plus(along.plus(across).times(1.0 / 3));
    return new LatticePattern(along, across, List.of(new LatticePattern.Place(face.moved(toCorner), "")),
        side ? module / 2 : module * Math.sqrt(3) / 2,
        List.of(centre, centre.plus(along.times(0.5)), centre.plus(across.times(0.5)), between));
  }

  private static Vec direction(double length, double degrees) {
    return new Vec(length * Math.cos(Math.toRadians(degrees)), length * Math.sin(Math.toRadians(degrees)));
  }
}
