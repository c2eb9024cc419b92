// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.ArrayList;
import java.util.List;
import muralbench.pattern.border.TileTurn;
import muralbench.pattern.work.LaidBorder.Painted;

/** Names for the tiles of a sequence that say which motif, colourway and tile of a strip they are. */
final class Steps {
  private Steps() {}

  /** The name of a tile of a motif; {@code colourway} may be null. */
  static String name(String motif, String colourway, int strip) {
    return (motif == null ? "" : motif) + '/' + (colourway == null ? "" : colourway) + '/' + strip;
  }

  /** The names of all tiles of a strip. */
  static List<String> strip(String motif, String colourway, int tiles) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < tiles; i++) {
      names.add(name(motif, colourway, i));
    }
    return names;
  }

  /** What a name says. */
  static Painted painted(int row, int number, String name, TileTurn turn) {
    String[] words = name.split("/", -1);
    return new Painted(row, number, words[0], words[1], Integer.parseInt(words[2]), turn);
  }
}
