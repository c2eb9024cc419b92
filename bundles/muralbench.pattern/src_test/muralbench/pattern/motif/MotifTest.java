// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a motif knows about itself. */
class MotifTest {
  private static final double TINY = 1e-9;

  @Test
  void areasOfLinesAndArcsAreThoseOfTheFormulas() {
    Motif disc = Drawings.tile("region disc red M 0.8 0.5 A 0.3 0.3 0 0 1 0.2 0.5 A 0.3 0.3 0 0 1 0.8 0.5 Z");
    assertEquals(Math.PI * 0.09, disc.shares().get("red"), TINY);
    assertEquals(1 - Math.PI * 0.09, disc.shares().get("white"), TINY);
    assertEquals(2 * Math.PI * 0.3, disc.waxLength(), TINY);
  }

  @Test
  void aHoleIsNotFilledAndHasAnEdge() {
    Motif frame = Drawings.tile("region frame red M 0.1 0.1 H 0.9 V 0.9 H 0.1 Z M 0.3 0.3 H 0.7 V 0.7 H 0.3 Z");
    assertEquals(0.64 - 0.16, frame.shares().get("red"), TINY);
    assertEquals(3.2 + 1.6, frame.waxLength(), TINY);
  }

  @Test
  void aSharedEdgeTakesWaxOnceAndTheSidesOfTheTileNone() {
    Motif halves = Drawings.tile("region left red M 0 0 H 0.5 V 1 H 0 Z", "region right blue M 1 0 V 1 H 0.5 V 0 Z");
    assertEquals(1, halves.waxLength(), TINY);
    assertEquals(Map.of("red", 0.5, "blue", 0.5), halves.shares());
  }

  @Test
  void regionsOfOneColourHaveNoWaxBetweenThem() {
    Motif halves = Drawings.tile("region left red M 0 0 H 0.5 V 1 H 0 Z", "region right red M 1 0 V 1 H 0.5 V 0 Z");
    assertEquals(0, halves.waxLength());
    assertTrue(Drawings.tile().picture().same(halves.in(new Colourway("w", Map.of("red", "white"))).picture()));
  }

  @Test
  void aLineDrawnWithinAColourTakesWaxAndOnABoundaryNoMore() {
    String half = "region left red M 0 0 H 0.5 V 1 H 0 Z";
    assertEquals(1 + 0.5, Drawings.tile(half, "line vein M 0.2 0.2 L 0.5 0.6").waxLength(), TINY);
    assertEquals(1, Drawings.tile(half, "line on M 0.5 0.2 V 0.6").waxLength(), TINY);
  }

  @Test
  void anUnsymmetricDrawingKeepsOnlyItself() {
    assertEquals(Set.of(Orientation.AS_DRAWN), Drawings.flag().symmetries());
    assertFalse(Drawings.flag().ownMirror());
  }

  @Test
  void symmetriesAreComputedWithColours() {
    Motif lower = Drawings.tile("region lower red M 0 0 L 1 0 L 0 1 Z");
    assertEquals(Set.of(Orientation.AS_DRAWN, Orientation.MIRRORED_THREE_QUARTER_TURN), lower.symmetries());
    String wings = "region a red M 0 0 L 1 0 L 0.5 0.5 Z\nregion b RED M 1 1 L 0 1 L 0.5 0.5 Z";
    assertEquals(Set.of(Orientation.AS_DRAWN, Orientation.HALF_TURN, Orientation.MIRRORED,
        Orientation.MIRRORED_HALF_TURN), Drawings.tile(wings.replace("RED", "red")).symmetries());
    assertEquals(Set.of(Orientation.AS_DRAWN, Orientation.MIRRORED), Drawings.tile(wings).symmetries());
  }

  @Test
  void aPlainTileHasAllEightSymmetries() {
    assertEquals(EnumSet.allOf(Orientation.class), Motif.plain("Plain", "white").symmetries());
  }

  /** A strip is no square: quarter turns do not keep it. */
  @Test
  void aPlainStripHasFourSymmetries() {
    assertEquals(4, Drawings.read("motif S\ntile 1 1\ntiles 3\nground red").symmetries().size());
  }

  @Test
  void coloursAlongTheSidesAreReadOff() {
    Motif band = Drawings.tile("region band red M 0 0.25 L 1 0.5 L 1 0.75 L 0 0.5 Z");
    assertEquals(List.of(0.25, 0.5), band.edge(Edge.LEFT, Orientation.AS_DRAWN).changes());
    assertEquals(List.of(0.5, 0.75), band.edge(Edge.RIGHT, Orientation.AS_DRAWN).changes());
    assertEquals(List.of(), band.edge(Edge.TOP, Orientation.AS_DRAWN).changes());
    assertEquals(List.of(0.25, 0.5), band.edge(Edge.RIGHT, Orientation.MIRRORED).changes());
  }

  /** A rising band joins its mirror images, but neither itself nor itself upside down. */
  @Test
  void joinsFollowTheColoursAlongTheSides() {
    Motif rising = Drawings.tile("region band red M 0 0.25 L 1 0.5 L 1 0.75 L 0 0.5 Z");
    assertEquals(Set.of(Orientation.MIRRORED, Orientation.MIRRORED_HALF_TURN), rising.joins(Edge.RIGHT));
    Motif level = Drawings.tile("region band red M 0 0.25 H 1 V 0.5 H 0 Z");
    assertTrue(level.joins(Edge.RIGHT).contains(Orientation.AS_DRAWN));
    assertFalse(level.joins(Edge.RIGHT).contains(Orientation.HALF_TURN));
  }

  /** The orientation of the sides agrees with turning the drawing itself. */
  @ParameterizedTest
  @EnumSource
  void sidesTurnWithTheDrawing(Orientation orientation) {
    Motif drawn = Drawings.read("motif M\ntile 2 1\nground white\nregion r red M 0 0 H 0.5 L 2 0.3 V 0.7 L 0 0.2 Z");
    Motif turned = drawn.in(orientation);
    for (Edge edge : Edge.values()) {
      assertTrue(turned.edge(edge, Orientation.AS_DRAWN).meets(drawn.edge(edge, orientation)), edge.name());
    }
    assertTrue(turned.picture().same(drawn.picture().in(orientation)));
  }

  @Test
  void aStripIsCutIntoItsTiles() {
    Motif strip = Drawings.read("motif S\ntile 1 1\ntiles 2\nground white\n"
        + "region disc red M 1.3 0.5 A 0.3 0.3 0 1 1 0.7 0.5 A 0.3 0.3 0 0 1 1.3 0.5 Z");
    assertEquals(Math.PI * 0.045, strip.tile(0).shares().get("red"), TINY);
    assertEquals(List.of(0.2, 0.8), rounded(strip.tile(0).edge(Edge.RIGHT, Orientation.AS_DRAWN).changes()));
    assertEquals(strip.waxLength(), strip.tile(0).waxLength() + strip.tile(1).waxLength(), TINY);
    assertTrue(strip.tile(0).joins(Orientation.AS_DRAWN, Edge.RIGHT, strip.tile(1), Orientation.AS_DRAWN));
  }

  /** Two prongs, cut off on each side in turn, stay two; what shows along the cut says where they are. */
  @ParameterizedTest
  @EnumSource
  void prongsThatAreCutStayApart(Orientation orientation) {
    Motif drawn = Drawings.tile("region fork red M 0.1 0.1 H 0.9 V 0.9 H 0.7 V 0.3 H 0.3 V 0.9 H 0.1 Z");
    Motif fork = drawn.in(orientation);
    Edge open = Stream.of(Edge.values()).filter(edge -> Edge.TOP == edge.of(orientation).edge()).findFirst()
        .orElseThrow();
    Motif prongs = switch (open) {
      case TOP -> fork.window(0, 0.5, 1, 0.5);
      case BOTTOM -> fork.window(0, 0, 1, 0.5);
      case LEFT -> fork.window(0, 0, 0.5, 1);
      case RIGHT -> fork.window(0.5, 0, 0.5, 1);
    };
    assertEquals(2, prongs.regions().get(0).contours().size());
    EdgeProfile cut = prongs.edge(open.opposite(), Orientation.AS_DRAWN);
    assertEquals(List.of(0.1, 0.3, 0.7, 0.9), rounded(cut.changes()));
  }

  @Test
  void aFrameThatIsCutThroughItsHoleIsAFork() {
    Motif frame = Drawings.tile("region frame red M 0.1 0.1 H 0.9 V 0.9 H 0.1 Z M 0.3 0.3 H 0.7 V 0.7 H 0.3 Z");
    Motif half = frame.window(0, 0.5, 1, 0.5);
    assertEquals(1, half.regions().get(0).contours().size());
    assertEquals(List.of(0.1, 0.3, 0.7, 0.9), rounded(half.edge(Edge.BOTTOM, Orientation.AS_DRAWN).changes()));
    assertEquals((0.64 - 0.16), half.shares().get("red"), TINY);
  }

  private static List<Double> rounded(List<Double> values) {
    return values.stream().map(value -> Math.rint(value * 1e9) / 1e9).toList();
  }

  @Test
  void aRegionThatLeavesItsTileIsRefusedByName() {
    assertRefused("region leaf red M 0.5 0.5 L 1.25 0.5 L 0.5 0.8 Z", "leaf", "leaves the tile by 0.25");
  }

  @Test
  void overlappingRegionsAreRefusedByName() {
    assertRefused("region leaf red M 0 0 H 0.6 V 1 H 0 Z\nregion stem blue M 0.5 0 H 1 V 1 H 0.5 Z", "leaf and stem",
        "10 percent");
  }

  @Test
  void aContourThatCrossesItselfIsRefusedByName() {
    assertRefused("region bow red M 0 0 L 1 1 L 1 0 L 0 1 Z", "bow", "two regions");
  }

  @Test
  void regionsThatTouchAreFine() {
    Motif touching = Drawings.tile("region a red M 0 0 H 0.333333 V 1 H 0 Z",
        "region b blue M 0.333334 0 H 1 V 1 H 0.3333331 Z");
    assertEquals(1, touching.waxLength(), 1e-5);
  }

  /** A fan of triangles on a 150 mm tile, each with corners off by up to 0.005 mm each way. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void roundingToAHundredthOfAMillimetreDoesNoHarm(int seed) {
    Motif exact = fan(null);
    Motif rounded = fan(new Random(seed));
    assertEquals(exact.waxLength(), rounded.waxLength(), 0.1);
    assertEquals(Set.of("red", "blue"), rounded.shares().keySet());
    assertTrue(exact.picture().same(rounded.picture()));
  }

  private static Motif fan(Random random) {
    List<String> corners = List.of("0 0", "70 0", "150 0", "150 65", "150 150", "60 150", "0 150", "0 40");
    StringBuilder lines = new StringBuilder("motif Fan\ntile 150 150\nground white\n");
    for (int i = 0; i < 8; i++) {
      String colour = i % 2 == 0 ? "red" : "blue";
      lines.append("region r").append(i).append(' ').append(colour).append(" M ")
          .append(near("66.6666 77.7777", random))
          .append(" L ").append(near(corners.get(i), random)).append(" L ")
          .append(near(corners.get((i + 1) % 8), random)).append(" Z\n");
    }
    return Drawings.read(lines.toString());
  }

  private static String near(String point, Random random) {
    String[] parts = point.split(" ");
    double off = random == null ? 0 : 0.005;
    double x = Double.parseDouble(parts[0]) + (random == null ? 0 : random.nextDouble() * 2 - 1) * off;
    double y = Double.parseDouble(parts[1]) + (random == null ? 0 : random.nextDouble() * 2 - 1) * off;
    return x + " " + y;
  }

  @Test
  void aSmallOverlapIsAnOverlap() {
    assertRefused("region a red M 0 0 H 0.5 V 0.5 H 0 Z\nregion b blue M 0.495 0.495 H 1 V 1 H 0.495 Z",
        "a and b");
  }

  private static void assertRefused(String lines, String... parts) {
    InputException refusal = assertThrows(InputException.class,
        () -> MotifText.parse("test", "motif Test\ntile 1 1\nground white\n" + lines));
    for (String part : parts) {
      assertTrue(refusal.getMessage().contains(part), refusal.getMessage());
    }
  }
}
