// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The run of a sequence has the operations of its group and no others; the motif is a cell of 4 by 2 different colours. */
class SequenceTest {
  private static final int LENGTH = 4;
  private static final int[][] LOPSIDED = {{1, 2}, {3, 4}, {5, 6}, {7, 8}};
  private static final int[][] FOLDED = {{1, 1}, {3, 3}, {5, 5}, {7, 7}};

  /** Colour of a cell of the endless run, y from the lower edge. */
  private static int colour(FriezeGroup group, int x, int y) {
    Sequence sequence = Sequence.of(group, "m");
    int[][] motif = Sequence.needsMirroredMotif(group) ? FOLDED : LOPSIDED;
    int tile = Math.floorDiv(x, LENGTH);
    Isometry placed = sequence.at(tile).turn().on(new Box(tile * LENGTH, 0, (tile + 1) * LENGTH, 2));
    for (int u = 0; u < LENGTH; u++) {
      for (int v = 0; v < 2; v++) {
        if (placed.of(new Vec(u + 0.5, v + 0.5)).distance(new Vec(x + 0.5, y + 0.5)) < 1e-9) {
          return motif[u][v];
        }
      }
    }
    throw new AssertionError("no colour at " + x + ", " + y);
  }

  private static boolean keeps(FriezeGroup group, boolean back, boolean over, int shift) {
    int period = LENGTH * Sequence.of(group, "m").repeat();
    for (int x = 0; x < period; x++) {
      for (int y = 0; y < 2; y++) {
        int toX = (back ? -1 - x : x) + shift;
        if (colour(group, toX, over ? 1 - y : y) != colour(group, x, y)) {
          return false;
        }
      }
    }
    return true;
  }

  /** What kinds of operations keep the run: by whether they turn x and y round, with the number of such in one repeat. */
  private static Set<String> found(FriezeGroup group) {
    Set<String> found = new TreeSet<>();
    int period = LENGTH * Sequence.of(group, "m").repeat();
    for (int kind = 0; kind < 4; kind++) {
      for (int shift = 0; shift < period; shift++) {
        if (keeps(group, kind % 2 == 1, kind > 1, shift)) {
          found.add((kind % 2 == 1) + " " + (kind > 1) + " " + (kind == 2 ? (double) shift / period : 0));
        }
      }
    }
    return found;
  }

  @ParameterizedTest
  @EnumSource
  void theRunHasTheOperationsOfItsGroupAndNoOthers(FriezeGroup group) {
    Set<String> published = new TreeSet<>();
    for (Isometry operation : group.placements(1, 0, 1)) {
      boolean over = operation.yy() < 0;
      boolean back = operation.xx() < 0;
      published.add(back + " " + over + " " + (over && !back ? operation.shift().x() : 0));
    }
    assertEquals(published, found(group));
  }

  @ParameterizedTest
  @EnumSource
  void oneRepeatIsTheShortestShift(FriezeGroup group) {
    for (int shift = 1; shift < LENGTH * Sequence.of(group, "m").repeat(); shift++) {
      assertEquals(false, keeps(group, false, false, shift), "shift " + shift);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theRepeatStartsAtAMirrorIfThereIsOne(FriezeGroup group) {
    assertEquals(CornerRule.mirrorsAcross(group), keeps(group, true, false, 0));
  }

  @Test
  void theMirrorImageOfAFreeSequenceRunsBackwards() {
    Sequence mirrored = Sequence.free(List.of("reed", "knot", "shell")).mirrored();
    assertEquals(List.of("shell", "knot", "reed"), mirrored.steps().stream().map(Sequence.Step::motif).toList());
    assertEquals(TileTurn.ACROSS, mirrored.at(1).turn());
    assertEquals(mirrored.at(-1), mirrored.at(2));
  }
}
