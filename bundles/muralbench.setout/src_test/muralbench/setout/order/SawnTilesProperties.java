// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import muralbench.setout.geometry.Box;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SawnTilesProperties {
  private static final int WIDE = 7;
  private static final int HIGH = 5;

  /** Rectangles that fit on the tile; one that keeps opposite edges is as long as they are apart. */
  private static Arbitrary<SawnRect> rects(int wide, int high) {
    return Combinators.combine(Arbitraries.integers().between(1, wide), Arbitraries.integers().between(1, high),
        Arbitraries.integers().between(0, 15)).as((width, height, sides) -> {
          boolean across = (sides & (SawnRect.LEFT | SawnRect.RIGHT)) == (SawnRect.LEFT | SawnRect.RIGHT);
          boolean up = (sides & (SawnRect.BOTTOM | SawnRect.TOP)) == (SawnRect.BOTTOM | SawnRect.TOP);
          return new SawnRect(across ? wide : width, up ? high : height, sides);
        });
  }

  @Provide
  Arbitrary<List<SawnRect>> few() {
    return rects(WIDE, HIGH).list().ofMinSize(1).ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<SawnRect>> many() {
    return rects(60, 40).list().ofMinSize(1).ofMaxSize(60);
  }

  @Property(tries = 300)
  void noWayToShareAFewTakesFewerTiles(@ForAll("few") List<SawnRect> rects) {
    for (int kerf = 0; kerf < 2; kerf++) {
      assertEquals(new BruteForce(WIDE, HIGH, kerf).fewest(rects), new SawnTiles(WIDE, HIGH, kerf).share(rects).size());
    }
  }

  @Property(tries = 200)
  void everyRectangleIsOnOneTile(@ForAll("many") List<SawnRect> rects) {
    List<List<Integer>> tiles = new SawnTiles(60, 40, 2).share(rects);
    assertEquals(IntStream.range(0, rects.size()).boxed().toList(), tiles.stream().flatMap(List::stream).sorted().toList());
    assertTrue(tiles.size() <= rects.size());
  }

  @Property(tries = 200)
  void whatIsOnATileLiesApartAndOnItsEdges(@ForAll("many") List<SawnRect> rects) {
    for (List<Integer> tile : new SawnTiles(60, 40, 2).share(rects)) {
      List<SawnRect> group = tile.stream().map(rects::get).toList();
      List<Box> boxes = new ArrayList<>();
      for (SawPlan.Placed placed : new SawPlan(group, 60, 40, 2).places((1 << group.size()) - 1)) {
        onItsEdges(group.get(placed.item()).turned(placed.quarters()), placed.place());
        boxes.forEach(other -> assertTrue(apart(placed.place(), other), () -> boxes + " " + placed));
        boxes.add(placed.place());
      }
      assertEquals(group.size(), boxes.size());
    }
  }

  private static void onItsEdges(SawnRect rect, Box box) {
    assertEquals(rect.width(), box.width(), 1e-9);
    assertEquals(rect.height(), box.height(), 1e-9);
    assertTrue(box.minX() >= -1e-9 && box.minY() >= -1e-9 && box.maxX() <= 60 + 1e-9 && box.maxY() <= 40 + 1e-9);
    assertEquals(0, rect.needs(SawnRect.LEFT) ? box.minX() : 0, 1e-9);
    assertEquals(60, rect.needs(SawnRect.RIGHT) ? box.maxX() : 60, 1e-9);
    assertEquals(0, rect.needs(SawnRect.BOTTOM) ? box.minY() : 0, 1e-9);
    assertEquals(40, rect.needs(SawnRect.TOP) ? box.maxY() : 40, 1e-9);
  }

  private static boolean apart(Box a, Box b) {
    return a.maxX() + 2 <= b.minX() + 1e-9 || b.maxX() + 2 <= a.minX() + 1e-9 || a.maxY() + 2 <= b.minY() + 1e-9
        || b.maxY() + 2 <= a.minY() + 1e-9;
  }
}
