// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Basket weave: square blocks of n oblong tiles side by side, lying and standing by turns. A block closes if the long side
 * is n short sides and n - 1 joints; what is missing or over goes evenly into the joints inside the block.
 */
final class BasketBond implements Bond {
  /** The joints inside a block may differ from the joint asked for by this much, mm: a third of the usual 1/8 in. */
  private static final double SLACK = 1;
  private static final Messages TEXTS = Messages.of(BasketBond.class);

  @Override
  public String kind() {
    return "basket";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.basket");
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
    double longer = Math.max(request.tile().width(), request.tile().height());
    double shorter = Math.min(request.tile().width(), request.tile().height());
    int count = (int) Math.round((longer + request.joint()) / (shorter + request.joint()));
    double inner = count < 2 ? -1 : (longer - count * shorter) / (count - 1);
    if (inner < 0 || Math.abs(inner - request.joint()) > SLACK) {
      double fit = Math.max(2, count) * shorter + (Math.max(2, count) - 1) * request.joint();
      throw BondSettings.refused("tile", "basket.ratio", "count", Math.max(2, count), "fit",
          Math.round(fit * 100) / 100.0);
    }
    double step = shorter + inner;
    double block = longer + request.joint();
    List<LatticePattern.Place> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      places.add(new LatticePattern.Place(Contour.rectangle(0, i * step, longer, shorter), ""));
    }
    for (int i = 0; i < count; i++) {
      places.add(new LatticePattern.Place(Contour.rectangle(block + i * step, 0, shorter, longer), ""));
    }
    double half = longer / 2;
    List<Vec> centres = List.of(new Vec(half, half), new Vec(block + half, half),
        new Vec(-request.joint() / 2, -request.joint() / 2));
    return new LatticePattern(new Vec(block, block), new Vec(block, -block), places, step / 2, centres);
  }
}
