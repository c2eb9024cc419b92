// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** A grid that stands askew, by 45 degrees unless another angle is set. */
final class DiagonalBond implements Bond {
  private static final Messages TEXTS = Messages.of(DiagonalBond.class);

  @Override
  public String kind() {
    return "diagonal";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.diagonal");
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("angle", TEXTS.text("setting.angle"), "45", TEXTS.text("setting.angle.hint")));
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    double angle;
    String text = new BondSettings(request).text("angle", "45");
    try {
      angle = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw BondSettings.refused("angle", "setting.angle.bad", "value", text);
    }
    if (!(angle > 0 && angle < 90)) {
      throw BondSettings.refused("angle", "setting.angle.bad", "value", text);
    }
    double width = request.tile().width();
    double height = request.tile().height();
    double joint = request.joint();
    Motion turn = Motion.turn(angle, Vec.ZERO);
    Vec along = turn.of(new Vec(width + joint, 0));
    Vec across = turn.of(new Vec(0, height + joint));
    Contour face = Contour.rectangle(0, 0, width, height).moved(turn);
    List<Vec> centres = List.of(turn.of(new Vec(width / 2, height / 2)), turn.of(new Vec(-joint / 2, -joint / 2)),
        turn.of(new Vec(width / 2, -joint / 2)), turn.of(new Vec(-joint / 2, height / 2)));
    // Level bands: the faces of one band stand corner to corner.
    double band = Math.min(along.y(), across.y());
    return new LatticePattern(along, across, List.of(new LatticePattern.Place(face, "")), band, centres);
  }
}
