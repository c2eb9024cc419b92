// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which tiles are one to paint. */
class DesignsTest {
  @Test
  void turnedTilesAreOneDesignAndMirroredOnesAnother() {
    Designs designs = new Designs();
    Motif flag = Drawings.flag();
    for (Orientation orientation : Orientation.values()) {
      designs.add(flag, orientation, Colourway.AS_DRAWN);
    }
    assertEquals(2, designs.designs().size());
    designs.designs().forEach(design -> assertEquals(4, designs.count(design)));
    assertEquals(Map.of(Hand.AS_DRAWN, 1, Hand.MIRRORED, 1), Map.of(hand(designs, 1), 1, hand(designs, 2), 1));
  }

  private static Hand hand(Designs designs, int number) {
    return designs.designs().stream().filter(each -> each.number() == number).findFirst().orElseThrow().hand();
  }

  @Test
  void aMotifWithAMirrorNeedsNoSecondHand() {
    Designs designs = new Designs();
    Motif kite = Drawings.tile("region kite red M 0.5 0 L 0.8 0.6 L 0.5 1 L 0.2 0.6 Z");
    PaintedTile drawn = designs.add(kite, Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    PaintedTile mirrored = designs.add(kite, Orientation.MIRRORED_QUARTER_TURN, Colourway.AS_DRAWN);
    assertEquals(drawn.design(), mirrored.design());
    assertEquals(Hand.ONE, drawn.design().hand());
    assertEquals(Orientation.QUARTER_TURN, mirrored.turn());
  }

  /** Seen mirrored first, a motif still is painted as drawn elsewhere; its mirror image is told as such. */
  @Test
  void theHandDoesNotDependOnWhatComesFirst() {
    Designs designs = new Designs();
    PaintedTile mirrored = designs.add(Drawings.flag(), Orientation.MIRRORED, Colourway.AS_DRAWN);
    assertEquals(Hand.MIRRORED, mirrored.design().hand());
    assertEquals(1, designs.designs().size());
  }

  @ParameterizedTest
  @EnumSource
  void theTurnBringsThePaintedTileToItsPlace(Orientation orientation) {
    Designs designs = new Designs();
    Motif flag = Drawings.flag();
    designs.add(flag, Orientation.MIRRORED_QUARTER_TURN, Colourway.AS_DRAWN);
    PaintedTile tile = designs.add(flag, orientation, Colourway.AS_DRAWN);
    assertTrue(tile.design().motif().in(tile.turn()).picture().same(flag.in(orientation).picture()));
  }

  @Test
  void aColourwayIsAnotherDesignUnlessItChangesNothing() {
    Designs designs = new Designs();
    Motif flag = Drawings.flag();
    PaintedTile drawn = designs.add(flag, Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    PaintedTile green = designs.add(flag, Orientation.AS_DRAWN, new Colourway("green", Map.of("red", "green")));
    PaintedTile none = designs.add(flag, Orientation.AS_DRAWN, new Colourway("none", Map.of("grey", "black")));
    assertNotEquals(drawn.design(), green.design());
    assertSame(drawn.design(), none.design());
  }

  /** The same half red tile drawn in one piece, in two, from another corner, with more points, and in millimetres. */
  @ParameterizedTest
  @CsvSource({"M 0 0 L 1 0 L 0 1 Z", "M 0 1 L 0 0 L 1 0 Z", "M 0 1 L 0.25 0.75 L 0.6 0.4 L 1 0 L 0.5 0 L 0 0 Z",
      "M 0 0 L 0 1 L 1 0 Z", "M 0.00001 0 C 0.3 0 0.6 0 1 0 L 0 0.99999 Z",
      "M 0 0 L 1 0 L 0.5 0.5 Z M 0 0 L 0.5 0.5 L 0 1 Z"})
  void howAShapeWasDrawnDoesNotMatter(String path) {
    Designs designs = new Designs();
    designs.add(Drawings.tile("region half red " + path), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    designs.add(Drawings.tile("region upper red M 1 1 L 0.6 1 L 0 1 L 1 0 Z"), Orientation.AS_DRAWN,
        Colourway.AS_DRAWN);
    designs.add(Drawings.read("motif M\ntile 150 150\nground white\nregion a red M 150 150 H 75 L 150 75 Z\n"
        + "region b red M 75 150 H 0 L 150 0 V 75 Z"), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    assertEquals(1, designs.designs().size());
  }

  /** Circles may start anywhere and be drawn in any number of arcs; so may Bezier curves. */
  @Test
  void dividedCurvesAreTheSameCurves() {
    Designs designs = new Designs();
    designs.add(Drawings.tile("region d red M 0.8 0.5 A 0.3 0.3 0 0 1 0.2 0.5 A 0.3 0.3 0 0 1 0.8 0.5 Z"),
        Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    designs.add(Drawings.tile("region d red M 0.5 0.8 A 0.3 0.3 0 1 1 0.8 0.5 A 0.3 0.3 0 0 1 0.5 0.8 Z"),
        Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    assertEquals(1, designs.designs().size());
    designs.add(Drawings.tile("region c red M 0 0 C 0.4 0.8 0.6 0.8 1 0 Z"), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    designs.add(Drawings.tile("region c red M 0 0 C 0.2 0.4 0.35 0.6 0.5 0.6 C 0.65 0.6 0.8 0.4 1 0 Z"),
        Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    assertEquals(2, designs.designs().size());
  }

  @Test
  void aTileThatStandsIsTheOneThatLies() {
    Designs designs = new Designs();
    Motif lying = Drawings.read("motif M\ntile 2 1\nground white\nregion r red M 0 0 H 1 L 0 1 Z");
    Motif standing = Drawings.read("motif M\ntile 1 2\nground white\nregion r red M 1 0 V 1 L 0 0 Z");
    designs.add(lying, Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    assertEquals(Orientation.QUARTER_TURN, designs.add(standing, Orientation.AS_DRAWN, Colourway.AS_DRAWN).turn());
    assertEquals(1, designs.designs().size());
  }

  /**
   * Burnside's lemma: colourings of a square grid that no turn carries into each other. For 2 x 2 squares there are
   * (k^4 + k^2 + 2k) / 4, for 3 x 3 squares (k^9 + k^5 + 2k^3) / 4.
   */
  @ParameterizedTest
  @CsvSource({"2,1", "2,2", "2,3", "2,4", "2,6", "3,2", "3,3"})
  void designsAreAsManyAsBurnsideCounts(int side, int colours) {
    long k = colours;
    long expected = side == 2 ? (k * k * k * k + k * k + 2 * k) / 4
        : ((long) Math.pow(k, 9) + (long) Math.pow(k, 5) + 2 * k * k * k) / 4;
    Designs designs = new Designs();
    for (int number = 0; number < Math.pow(colours, side * side); number++) {
      designs.add(Drawings.grid(side, number, colours), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    }
    assertEquals(expected, designs.designs().size());
  }

  /** The same with mirror images: families are the colourings up to all eight orientations. */
  @ParameterizedTest
  @CsvSource({"2,2", "2,3", "3,2"})
  void familiesAreAsManyAsBurnsideCountsWithMirrors(int side, int colours) {
    long k = colours;
    // 2 x 2: (k^4 + 2k + 3k^2 + 2k^3) / 8; 3 x 3: (k^9 + 2k^3 + k^5 + 4k^6) / 8.
    long expected = side == 2 ? (k * k * k * k + 2 * k + 3 * k * k + 2 * k * k * k) / 8
        : ((long) Math.pow(k, 9) + 2 * k * k * k + (long) Math.pow(k, 5) + 4 * (long) Math.pow(k, 6)) / 8;
    Designs designs = new Designs();
    for (int number = 0; number < Math.pow(colours, side * side); number++) {
      designs.add(Drawings.grid(side, number, colours), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    }
    assertEquals(expected, designs.designs().stream().map(Design::family).distinct().count());
  }
}
