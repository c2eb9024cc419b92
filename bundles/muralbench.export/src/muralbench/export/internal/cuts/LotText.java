// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.Optional;
import muralbench.base.Messages;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutGroup.Lot;

/** How the tiles of a lot are laid before they are cut, in words. */
final class LotText {
  private static final Messages TEXT = Messages.of(LotText.class);

  private LotText() {}

  /** For tiles that can be laid in several ways: what is done with those of a lot. */
  static String of(Lot lot) {
    double turn = lot.turn();
    if (turn == 0) {
      return TEXT.text("lay.upright");
    }
    if (turn % 90 == 0) {
      return TEXT.text("lay.quarters." + Math.round(turn / 90));
    }
    boolean left = turn < 180;
    return TEXT.text(left ? "lay.left" : "lay.right", "degrees", PlainNumber.rounded(left ? turn : 360 - turn, 1));
  }

  /** For pieces that are all laid alike because there is no other way; empty for those that are laid in lots. */
  static Optional<String> ofAll(CutGroup group) {
    if (group.fromBlank()) {
      return Optional.of(TEXT.text("lay.blank"));
    }
    return group.fitsOneWay() ? Optional.of(TEXT.text("lay.oneway")) : Optional.empty();
  }
}
