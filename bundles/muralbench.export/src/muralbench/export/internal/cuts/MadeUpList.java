// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.MuralSetOut;
import muralbench.setout.order.MadePiece;
import muralbench.setout.order.MadeTile;
import muralbench.setout.order.MadeUp;

/**
 * The tiles from which several pieces are made, numbered through the mural.
 *
 * @param tiles in the order of the panels and their pieces
 */
record MadeUpList(List<Numbered> tiles) {
  /**
   * One tile.
   *
   * @param number from 1
   * @param panel id of the panel whose pieces are made from it
   */
  record Numbered(int number, String panel, MadeTile tile) {}

  /** The tiles of a mural; {@code made} is how its panels are made up, in their order. */
  static MadeUpList of(MuralSetOut mural, List<MadeUp> made) {
    List<Numbered> tiles = new ArrayList<>();
    for (int i = 0; i < made.size(); i++) {
      String panel = mural.panels().get(i).spec().id();
      for (MadeTile tile : made.get(i).tiles()) {
        if (tile.pieces().size() > 1) {
          tiles.add(new Numbered(tiles.size() + 1, panel, tile));
        }
      }
    }
    return new MadeUpList(List.copyOf(tiles));
  }

  /** Those that are sawn by cuts that go right through, gathered by how they are sawn, in the order of the first of each. */
  List<List<Numbered>> layouts() {
    Map<String, List<Numbered>> layouts = new LinkedHashMap<>();
    for (Numbered numbered : tiles) {
      if (!numbered.tile().asLaid()) {
        layouts.computeIfAbsent(layout(numbered.tile()), any -> new ArrayList<>()).add(numbered);
      }
    }
    return List.copyOf(layouts.values());
  }

  /** The same text for tiles that are sawn alike, to 0.01 mm. */
  private static String layout(MadeTile tile) {
    StringBuilder layout = new StringBuilder(tile.tile());
    add(layout, tile.width(), tile.height());
    for (MadePiece piece : tile.pieces()) {
      add(layout, piece.place().minX(), piece.place().minY(), piece.place().maxX(), piece.place().maxY());
    }
    return layout.toString();
  }

  private static void add(StringBuilder layout, double... lengths) {
    for (double length : lengths) {
      layout.append(' ').append(PlainNumber.rounded(length, 2));
    }
  }
}
