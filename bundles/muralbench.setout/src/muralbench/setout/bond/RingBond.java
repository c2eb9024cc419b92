// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.TileSpec;

/**
 * Concentric rings of wedges for round faces, with a disc in the middle. The first piece of each ring stands upright at the
 * top, like a key stone; the others follow clockwise. The pattern's (0, 0) is the middle of the face.
 */
final class RingBond implements Bond {
  static final int MOST_PIECES = 2000;
  private static final int MOST_RINGS = 12;
  private static final double RING_SHARE = 0.85;
  private static final Messages TEXTS = Messages.of(RingBond.class);

  @Override
  public String kind() {
    return "rings";
  }

  @Override
  public String label() {
    return TEXTS.text("bond.rings");
  }

  @Override
  public List<BondSetting> settings() {
    return List.of(new BondSetting("radius", TEXTS.text("setting.radius"), "", TEXTS.text("setting.radius.hint"))
        .of(BondSetting.Form.LENGTH),
        new BondSetting("rings", TEXTS.text("setting.rings"), "", TEXTS.text("setting.rings.hint"))
            .of(BondSetting.Form.LENGTHS),
        new BondSetting("pieces", TEXTS.text("setting.pieces"), "", TEXTS.text("setting.pieces.hint"))
            .of(BondSetting.Form.COUNTS));
  }

  @Override
  public BondRequest sample() {
    return BondRequest.sample(110, 110, 0, Map.of("radius", "250 mm", "rings", "90, 90"));
  }

  /** The largest face in the box; rings a little narrower than the tile, since their edges bend into it. */
  @Override
  public Map<String, String> start(double width, double height, TileSpec tile, double joint) {
    double radius = Math.min(width, height) / 2;
    double ring = Math.floor(RING_SHARE * Math.min(tile.width(), tile.height()));
    int count = (int) Math.min(MOST_RINGS, Math.floor((radius - ring / 2) / (ring + joint)));
    return count < 1 || ring <= 0 ? sample().settings() : Map.of("radius", radius + " mm", "rings",
        String.join(", ", Collections.nCopies(count, ring + " mm")));
  }

  @Override
  public boolean takesOffset() {
    return false;
  }

  @Override
  public Pattern lay(BondRequest request) throws InputException {
    BondSettings settings = new BondSettings(request);
    double joint = request.joint();
    double outer = settings.length("radius", 0);
    if (outer == 0) {
      throw BondSettings.refused("radius", "rings.radius");
    }
    List<Double> widths = settings.lengths("rings");
    List<Integer> pieces = settings.counts("pieces", MOST_PIECES);
    if (widths.isEmpty() || !pieces.isEmpty() && pieces.size() != widths.size()) {
      throw BondSettings.refused("rings", "rings.count", "rings", widths.size(), "pieces", pieces.size());
    }
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < widths.size(); i++) {
      double inner = outer - widths.get(i);
      if (inner < joint) {
        throw BondSettings.refused("rings", "rings.deep", "ring", i + 1);
      }
      int count = pieces.isEmpty() ? fewest(inner, outer, request) : pieces.get(i);
      Ring ring = new Ring(inner, outer, count, joint);
      if (!ring.possible()) {
        throw BondSettings.refused("pieces", "rings.narrow", "ring", i + 1, "count", count);
      }
      rings.add(ring);
      outer = inner - joint;
    }
    return new RingPattern(rings, outer);
  }

  /** The smallest number of pieces whose blanks fit the field tile, the chord along either side of the tile. */
  private static int fewest(double inner, double outer, BondRequest request) throws InputException {
    double width = request.tile().width();
    double height = request.tile().height();
    for (int count = 3; count <= MOST_PIECES; count++) {
      Ring ring = new Ring(inner, outer, count, request.joint());
      if (ring.possible() && ring.blankWidth() <= width && ring.blankHeight() <= height) {
        return count;
      }
    }
    throw BondSettings.refused("rings", "rings.blank", "depth", Math.round((outer - inner) * 100) / 100.0);
  }
}
