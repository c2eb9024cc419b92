// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.model.BackingBoard;
import muralbench.model.BoardMaterial;
import muralbench.model.Making;
import muralbench.model.Mural;
import muralbench.model.Painting;
import muralbench.model.Panel;
import muralbench.model.Spare;
import muralbench.model.TileKind;
import muralbench.setout.order.Allowances;

/**
 * Takes from the model what the studio makes of the tiles: how pieces are made up, spares and boards.
 *
 * @param ranges refuses values that cannot be
 */
record MakingReader(Ranges ranges) {
  /** How the pieces of a panel are made; a panel that stands alone is painted before cutting. */
  MakingSpec making(Panel panel) throws InputException {
    Making making = panel.eContainer() instanceof Mural mural ? mural.getMaking() : null;
    if (making == null) {
      return MakingSpec.beforeCutting();
    }
    Set<FaceSide> sides = EnumSet.noneOf(FaceSide.class);
    add(sides, FaceSide.BOTTOM, making.isFactoryBottom());
    add(sides, FaceSide.RIGHT, making.isFactoryRight());
    add(sides, FaceSide.TOP, making.isFactoryTop());
    add(sides, FaceSide.LEFT, making.isFactoryLeft());
    return new MakingSpec(making.getPainted() == Painting.AFTER_CUTTING, ranges.notNegative("kerf", making.getKerf()),
        sides);
  }

  /** The board of a panel; a usual one where none is given. */
  BoardSpec board(BackingBoard board) throws InputException {
    if (board == null) {
      return BoardSpec.usual();
    }
    double thickness = ranges.notNegative("board.thickness", board.getThickness());
    double density = atLeastZero("board.density", board.getDensity());
    if (board.getMaterial() == BoardMaterial.OTHER && (thickness == 0 || density == 0)) {
      throw ranges.error("read.board.other");
    }
    return new BoardSpec(board.getMaterial().getLiteral(), thickness, density,
        ranges.position("board.reveal", board.getReveal()), board.getEdge().getLiteral(),
        atLeastZero("board.hanger", board.getHangerCapacity()));
  }

  /** Spares and boxes; common practice where nothing else is said. */
  Allowances allowances(Mural mural) throws InputException {
    Allowances allowances = Allowances.commonPractice();
    for (Spare spare : mural.getSpares()) {
      String bond = spare.getBond() == null ? "" : spare.getBond();
      if (bond.isBlank()) {
        throw ranges.error("read.spare.unnamed");
      }
      allowances = allowances.withPercent(bond, BigDecimal.valueOf(atLeastZero("spare", spare.getPercent())).stripTrailingZeros());
    }
    for (TileKind tile : mural.getTileKinds()) {
      if (tile.getBox() < 0) {
        throw new Ranges(tile.getId(), ranges.units()).error("read.box", "box", tile.getBox());
      }
      allowances = tile.getBox() == 0 ? allowances : allowances.withBox(tile.getId(), tile.getBox());
    }
    return allowances;
  }

  /** How far the temperature swings, °C, 0 when not known. */
  double swing(Mural mural) throws InputException {
    return mural.getSite() == null ? 0 : atLeastZero("swing", mural.getSite().getTemperatureSwing());
  }

  /** A number of 0 or more without a unit of length. */
  double atLeastZero(String name, double value) throws InputException {
    if (ranges.plain(name, value) < 0) {
      throw ranges.error("read.negative", "what", ranges.called(name), "value", value);
    }
    return value;
  }

  private static void add(Set<FaceSide> sides, FaceSide side, boolean kept) {
    if (kept) {
      sides.add(side);
    }
  }
}
