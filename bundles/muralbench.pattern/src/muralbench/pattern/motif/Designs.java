// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Tells tiles of one design from tiles of another and counts them. What a motif looks like in an orientation and a
 * colourway is worked out once, however many tiles show it; so the time grows with the number of tiles, and not with
 * their pairs. Pictures are looked up by numbers that turning and mirroring leave alone, then compared within a
 * tolerance of two ten-thousandths of the tile. Not for use by several threads.
 */
public final class Designs {
  private record Known(Design design, Picture picture) {}

  /** What was worked out, by identity of the motif, since looking into a drawing again costs more than it saves. */
  private final Map<Motif, Map<Colourway, Map<Orientation, PaintedTile>>> drawings = new IdentityHashMap<>();
  private final Map<String, TreeMap<Double, List<Known>>> known = new HashMap<>();
  private final Map<Design, Map<Orientation, Integer>> counts = new LinkedHashMap<>();
  private int designs;

  /**
   * Adds one tile.
   *
   * @param motif a drawing on one tile
   * @param orientation how the drawing lies on the wall
   * @param colourway its colours
   * @return its design and how the painted tile is turned
   * @throws IllegalArgumentException if the motif covers several tiles; give them one by one
   */
  public PaintedTile add(Motif motif, Orientation orientation, Colourway colourway) {
    if (motif.tiles() != 1) {
      throw new IllegalArgumentException("the tiles of a strip are added one by one");
    }
    Map<Orientation, PaintedTile> tiles = drawings.computeIfAbsent(motif, any -> new HashMap<>())
        .computeIfAbsent(colourway, any -> new EnumMap<>(Orientation.class));
    if (tiles.isEmpty()) {
      // The drawing itself first: it is painted as it was drawn, and is not the mirror image.
      tiles.put(Orientation.AS_DRAWN, find(motif.in(colourway), Orientation.AS_DRAWN));
    }
    PaintedTile tile = tiles.get(orientation);
    if (tile == null) {
      tile = find(motif.in(colourway), orientation);
      tiles.put(orientation, tile);
    }
    counts.computeIfAbsent(tile.design(), any -> new EnumMap<>(Orientation.class)).merge(tile.turn(), 1, Integer::sum);
    return tile;
  }

  /** The designs of the tiles that were added, in the order of their first tile. */
  public Collection<Design> designs() {
    return List.copyOf(counts.keySet());
  }

  /** How many tiles of a design were added. */
  public int count(Design design) {
    return turns(design).values().stream().mapToInt(Integer::intValue).sum();
  }

  /** How many tiles of a design were added, by the turn they take on the wall. */
  public Map<Orientation, Integer> turns(Design design) {
    return Collections.unmodifiableMap(counts.getOrDefault(design, Map.of()));
  }

  private PaintedTile find(Motif motif, Orientation orientation) {
    Picture picture = motif.picture().in(orientation);
    double mark = picture.marks().one();
    double slack = 4 * picture.slack();
    TreeMap<Double, List<Known>> alike = known.computeIfAbsent(picture.rough(), any -> new TreeMap<>());
    Known mirrored = null;
    for (List<Known> list : alike.subMap(mark - slack, true, mark + slack, true).values()) {
      for (Known candidate : list) {
        Orientation turn = turn(candidate.picture, picture, false);
        if (turn != null) {
          return new PaintedTile(candidate.design, turn);
        }
        mirrored = turn(candidate.picture, picture, true) != null ? candidate : mirrored;
      }
    }
    designs++;
    int family = mirrored == null ? designs : mirrored.design.family();
    Hand hand = mirrored != null ? Hand.MIRRORED : turn(picture, picture, true) != null ? Hand.ONE : Hand.AS_DRAWN;
    // A mirrored drawing is painted as it first lies on the wall.
    Design design = new Design(designs, family, hand, motif.in(orientation));
    alike.computeIfAbsent(mark, any -> new ArrayList<>()).add(new Known(design, picture));
    return new PaintedTile(design, Orientation.AS_DRAWN);
  }

  /** The turn, after a mirroring or not, that makes the first picture look like the second; null if none does. */
  private static Orientation turn(Picture first, Picture second, boolean mirrored) {
    if (!first.marks().near(second.marks(), first.slack())) {
      return null;
    }
    for (Orientation turn : Orientation.turns()) {
      if (first.in(Orientation.of(mirrored, turn.quarterTurns())).same(second)) {
        return turn;
      }
    }
    return null;
  }
}
