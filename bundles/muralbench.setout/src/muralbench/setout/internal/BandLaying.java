// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.setout.BandSpec;
import muralbench.setout.BandSpec.BandTile;
import muralbench.setout.KeyScheme;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.SetOut;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** Cuts the tiles of a border with the edges of its panel and with the openings, and names the pieces. */
final class BandLaying {
  private final PanelSpec panel;
  private final BandSpec band;
  private final TiledRegion whole;
  private final Map<Integer, Integer> last;
  private final KeyScheme scheme = KeyScheme.coursePosition();

  /** A border; {@code whole} is all that is tiled of the panel, field and border. */
  BandLaying(PanelSpec panel, BandSpec band, TiledRegion whole) {
    this.panel = panel;
    this.band = band;
    this.whole = whole;
    last = band.lastNumbers();
  }

  /** The pieces, in the order of the tiles. */
  List<Piece> pieces() throws InputException {
    List<Piece> pieces = new ArrayList<>();
    for (BandTile tile : band.tiles()) {
      Box box = tile.whole().box();
      Motion placed = Motion.shift(new Vec(box.minX(), box.minY()));
      Cell cell = new Cell(-tile.row(), tile.number(), tile.whole().moved(placed.inverse()), "");
      CutCell cut = new CellCutter(region(tile), placed).cut(cell);
      if (cut != null) {
        name(cut, tile, placed, pieces);
      }
    }
    return pieces;
  }

  /** What may be tiled by a tile: of one that is cut on a diagonal only its own half. */
  private TiledRegion region(BandTile tile) throws InputException {
    double cut = tile.whole().area() - tile.face().area();
    return cut > SetOut.DUST_AREA ? whole.within(tile.face()) : whole;
  }

  private void name(CutCell cut, BandTile tile, Motion placed, List<Piece> pieces) {
    List<CutCell.Part> parts = new ArrayList<>(cut.parts());
    parts.sort(Comparator.comparing(part -> part.outline().box(), Box.FROM_LEFT));
    for (int part = 0; part < parts.size(); part++) {
      CutCell.Part each = parts.get(part);
      String key = scheme.borderKey(panel.id(), tile.row(), tile.number(), last.get(tile.row()), part);
      pieces.add(new Piece(key, 0, tile.number(), each.kind(), tile.tile(), each.area(), each.outline(), each.holes(),
          cut.cell(), placed, tile.row()));
    }
  }
}
