// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Herringbone: oblong tiles in pairs, one lying and one standing, each pair one step up and to the right of the one before.
 * With the modules l (long) and w (short) the pattern repeats along (w, w) and (l, -l), an area of 2 l w: one pair.
 */
final class HerringboneBond implements Bond {
  private static final Messages TEXTS = Messages.of(HerringboneBond.class);

  @Override
  public String kind() {
    return "herringbone";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.herringbone");
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("angle", TEXTS.text("setting.angle"), "90",
        TEXTS.text("setting.herringbone.angle.hint")).of(BondSetting.Form.CHOICE, "90", "45"));
  }

  @Override
  public BondRequest sample() {
    return BondRequest.sample(204, 100, 0, Map.of());
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    boolean askew = new BondSettings(request).word("angle", "90", "45", "90").equals("45");
    double longer = Math.max(request.tile().width(), request.tile().height());
    double shorter = Math.min(request.tile().width(), request.tile().height());
    if (longer <= shorter) {
      throw BondSettings.refused("tile", "herringbone.square");
    }
    double l = longer + request.joint();
    double w = shorter + request.joint();
    Motion turn = Motion.turn(askew ? 45 : 0, Vec.ZERO);
    List<LatticePattern.Place> pair = new ArrayList<>();
    pair.add(new LatticePattern.Place(Contour.rectangle(0, 0, longer, shorter).moved(turn), ""));
    pair.add(new LatticePattern.Place(Contour.rectangle(0, w, shorter, longer).moved(turn), ""));
    List<Vec> centres = List.of(turn.of(new Vec(longer / 2, shorter / 2)), turn.of(new Vec(shorter / 2, w + longer / 2)),
        turn.of(new Vec(shorter, w)));
    return new LatticePattern(turn.of(new Vec(w, w)), turn.of(new Vec(l, -l)), pair, askew ? w / Math.sqrt(2) : w / 2,
        centres);
  }
}
