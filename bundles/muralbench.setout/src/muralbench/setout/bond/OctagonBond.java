// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * Octagons in a grid with square dots on their points where four meet. The tile's width is its measure across flats, a.
 * With the chamfer leg c at each corner and the joint j, the dot's side is d = sqrt(2) (c + j) - 2 j. A regular octagon has
 * c = a (1 - 1/sqrt(2)); a dot of another size changes the chamfer, not the width.
 */
final class OctagonBond implements Bond {
  private static final double ROOT2 = Math.sqrt(2);
  private static final Messages TEXTS = Messages.of(OctagonBond.class);

  @Override
  public String kind() {
    return "octagon";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.octagon");
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("dot", TEXTS.text("setting.dot"), "", TEXTS.text("setting.dot.hint"))
        .of(BondSetting.Form.LENGTH));
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    double a = request.tile().width();
    double j = request.joint();
    if (request.tile().height() != a) {
      throw BondSettings.refused("tile", "octagon.square");
    }
    double dot = new BondSettings(request).length("dot", ROOT2 * (a * (1 - 1 / ROOT2) + j) - 2 * j);
    double chamfer = (dot + 2 * j) / ROOT2 - j;
    if (chamfer <= 0 || 2 * chamfer >= a) {
      throw BondSettings.refused("dot", "octagon.dot", "value", Math.round(dot * 100) / 100.0, "most",
          Math.floor((ROOT2 * (a / 2 + j) - 2 * j) * 100) / 100);
    }
    double module = a + j;
    List<Vec> corners = new ArrayList<>();
    for (double[] p : new double[][] {{chamfer, 0}, {a - chamfer, 0}, {a, chamfer}, {a, a - chamfer}, {a - chamfer, a},
        {chamfer, a}, {0, a - chamfer}, {0, chamfer}}) {
      corners.add(new Vec(p[0], p[1]));
    }
    Vec crossing = new Vec(a + j / 2, a + j / 2);
    double reach = dot / ROOT2;
    Contour square = Contour.polygon(List.of(crossing.plus(new Vec(0, -reach)), crossing.plus(new Vec(reach, 0)),
        crossing.plus(new Vec(0, reach)), crossing.plus(new Vec(-reach, 0))));
    return new LatticePattern(new Vec(module, 0), new Vec(0, module),
        List.of(new LatticePattern.Place(Contour.polygon(corners), ""), new LatticePattern.Place(square, "dot")),
        module / 2, List.of(new Vec(a / 2, a / 2), crossing, new Vec(a + j / 2, a / 2), new Vec(a / 2, a + j / 2)));
  }
}
