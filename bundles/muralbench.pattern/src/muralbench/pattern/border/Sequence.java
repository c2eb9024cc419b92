// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import muralbench.pattern.symmetry.FriezeGroup;

/**
 * The tiles of one repeat along a run, each a motif and how it lies. A border motif is drawn for the top side of a
 * panel: the run goes from left to right, the outer edge is above.
 *
 * @param steps the tiles in order, at least one
 */
public record Sequence(List<Step> steps) {
  /** One tile of a sequence. */
  public record Step(String motif, TileTurn turn) {}

  public Sequence {
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a sequence needs a tile");
    }
    steps = List.copyOf(steps);
  }

  /** A free sequence, all tiles as drawn, such as reed, knot, reed, shell. */
  public static Sequence free(List<String> motifs) {
    return new Sequence(motifs.stream().map(motif -> new Step(motif, TileTurn.AS_DRAWN)).toList());
  }

  /**
   * One motif as a frieze group lays it, tile by tile. The repeat starts at an upright mirror where the group has
   * one, so that whole repeats are symmetric about their middle. The two groups that have the middle line as a mirror
   * ask for a motif that is its own mirror image there, see {@link #needsMirroredMotif}; a tile cannot be mirrored on
   * itself.
   */
  public static Sequence of(FriezeGroup group, String motif) {
    List<TileTurn> turns = switch (group) {
      case HOP, JUMP -> List.of(TileTurn.AS_DRAWN);
      case STEP -> List.of(TileTurn.AS_DRAWN, TileTurn.ALONG);
      case SIDLE, SPINNING_JUMP -> List.of(TileTurn.AS_DRAWN, TileTurn.ACROSS);
      case SPINNING_HOP -> List.of(TileTurn.AS_DRAWN, TileTurn.HALF);
      case SPINNING_SIDLE -> List.of(TileTurn.AS_DRAWN, TileTurn.HALF, TileTurn.ALONG, TileTurn.ACROSS);
    };
    return new Sequence(turns.stream().map(turn -> new Step(motif, turn)).toList());
  }

  /** Whether the motif itself has to be its own mirror image in the middle line of the band. */
  public static boolean needsMirroredMotif(FriezeGroup group) {
    return group == FriezeGroup.JUMP || group == FriezeGroup.SPINNING_JUMP;
  }

  /** How many tiles one repeat takes. */
  public int repeat() {
    return steps.size();
  }

  /** The tile at a place of the endless run; places before the start are negative. */
  public Step at(int place) {
    return steps.get(Math.floorMod(place, steps.size()));
  }

  /**
   * The mirror image of the run in an upright line at the end of a repeat: the tiles backwards, each the other hand.
   */
  public Sequence mirrored() {
    List<Step> back = new ArrayList<>();
    steps.forEach(step -> back.add(new Step(step.motif(), step.turn().then(TileTurn.ACROSS))));
    Collections.reverse(back);
    return new Sequence(back);
  }
}
