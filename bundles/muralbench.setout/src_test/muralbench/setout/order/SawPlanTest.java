// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import muralbench.setout.geometry.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SawPlanTest {
  private static final double INCH = 25.4;
  private static final int ALL_BUT_RIGHT = SawnRect.LEFT | SawnRect.TOP | SawnRect.BOTTOM;

  private static boolean fits(int count, SawnRect rect, double side, double kerf) {
    return new SawPlan(Collections.nCopies(count, rect), side, side, kerf).fits();
  }

  /** Yield is a - kerf: two exact halves of a 6 in tile with a kerf of 1/16 in are (6 - 1/16) / 2 = 2.96875 in. */
  @ParameterizedTest
  @CsvSource({"3, 0.0625, false", "2.96875, 0.0625, true", "2.97, 0.0625, false", "3, 0, true"})
  void twoHalvesLoseTheKerf(double width, double kerf, boolean fit) {
    assertEquals(fit, fits(2, new SawnRect(width * INCH, 6 * INCH, ALL_BUT_RIGHT), 6 * INCH, kerf * INCH));
  }

  /** A quarter of a tile has two factory edges, and a tile has four corners. */
  @ParameterizedTest
  @CsvSource({"4, true", "5, false"})
  void fourQuartersHaveACornerEach(int count, boolean fit) {
    assertEquals(fit, fits(count, new SawnRect(20, 40, SawnRect.LEFT | SawnRect.BOTTOM), 100, 2));
  }

  /** Full strips need both their ends on factory edges: they lie side by side, one way, as many as there is room. */
  @Test
  void stripsKeepTheirEnds() {
    SawnRect strip = new SawnRect(10, 100, SawnRect.TOP | SawnRect.BOTTOM);
    assertEquals(true, fits(8, strip, 100, 2));
    assertEquals(false, new SawPlan(List.of(strip, new SawnRect(100, 10, SawnRect.LEFT | SawnRect.RIGHT),
        new SawnRect(20, 20, SawnRect.LEFT | SawnRect.BOTTOM | SawnRect.TOP)), 100, 100, 2).fits());
  }

  /** A quarter turn takes a lower left corner to the lower right, since the lower side becomes the right one. */
  @Test
  void aQuarterTurnTakesTheEdgesAlong() {
    SawnRect one = new SawnRect(40, 60, SawnRect.LEFT | SawnRect.BOTTOM);
    assertEquals(new SawnRect(60, 40, SawnRect.BOTTOM | SawnRect.RIGHT), one.turned());
    assertEquals(List.of(0, 2), one.quarters(55, 61));
    assertEquals(List.of(0, 1, 2, 3), one.quarters(100, 61));
  }

  /**
   * Beside a piece of 60 by 50 on a tile of 100 by 50 there is room for two corner pieces of 38 by 20 if one is the mirror
   * image of the other; of two alike one would have to stand, 20 by 38, and 38 + 2 + 20 is over 50.
   */
  @Test
  void piecesAreNeverTurnedOver() {
    SawnRect large = new SawnRect(60, 50, ALL_BUT_RIGHT);
    SawnRect one = new SawnRect(38, 20, SawnRect.LEFT | SawnRect.BOTTOM);
    SawnRect mirrored = new SawnRect(38, 20, SawnRect.RIGHT | SawnRect.BOTTOM);
    assertEquals(true, new SawPlan(List.of(large, one, mirrored), 100, 50, 2).fits());
    assertEquals(false, new SawPlan(List.of(large, one, one), 100, 50, 2).fits());
  }

  @Test
  void piecesLieOnTheEdgesTheyNeed() {
    SawnRect right = new SawnRect(30, 50, SawnRect.RIGHT | SawnRect.TOP);
    List<SawPlan.Placed> places = new SawPlan(List.of(right), 100, 50, 2).places(1);
    assertEquals(new Box(70, 0, 100, 50), places.get(0).place());
  }
}
