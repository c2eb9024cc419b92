// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A panel whose opening is dragged, against the same panel set out as a whole: equal to the last bit. */
class OpeningDragProperties {
  private static final BondRegistry BONDS = BondRegistry.standard();

  /** A set-out that may be refused. */
  private interface Attempt {
    PanelSetOut get() throws InputException;
  }

  @Property(tries = 80)
  void everyStepOfAPathEqualsTheWholeSetOut(@ForAll long seed) throws InputException {
    DragWalls walls = new DragWalls(new Random(seed));
    PanelSetOut begun = walls.setOut();
    OpeningSpec opening = any(begun, seed);
    OpeningDrag drag = OpeningDrag.of(begun, opening.id(), BONDS);
    Contour outline = opening.outline();
    for (int step = 0; step < 4; step++) {
      outline = walls.moved(outline, begun.spec().outline().box());
      check(drag, outline);
    }
  }

  @Property(tries = 40)
  void anyOtherShapeOfTheOpeningEqualsTheWholeSetOut(@ForAll long seed) throws InputException {
    DragWalls walls = new DragWalls(new Random(seed));
    PanelSetOut begun = walls.setOut();
    OpeningDrag drag = OpeningDrag.of(begun, any(begun, seed).id(), BONDS);
    for (int step = 0; step < 3; step++) {
      check(drag, walls.opening(begun.spec().outline().box()));
    }
  }

  /** Only widths of opened joints are computed anew, so that the last digits may differ where there are any. */
  @Property(tries = 40)
  void anOpeningThatIsNotMovedLeavesAllAsItWas(@ForAll long seed) throws InputException {
    PanelSetOut begun = new DragWalls(new Random(seed)).setOut();
    OpeningSpec opening = any(begun, seed);
    PanelSetOut still = OpeningDrag.of(begun, opening.id(), BONDS).moved(opening.outline());
    assertEquals(begun.pieces().stream().map(Piece::key).toList(), still.pieces().stream().map(Piece::key).toList());
    for (int i = 0; i < begun.pieces().size(); i++) {
      assertEquals(begun.pieces().get(i).area(), still.pieces().get(i).area(), 1e-6);
      assertEquals(begun.pieces().get(i).box().minX(), still.pieces().get(i).box().minX(), 1e-9);
    }
  }

  private static OpeningSpec any(PanelSetOut panel, long seed) {
    List<OpeningSpec> openings = panel.spec().openings();
    return openings.get((int) Math.floorMod(seed, (long) openings.size()));
  }

  private static void check(OpeningDrag drag, Contour opening) {
    assertEquals(result(() -> SetOut.panel(drag.asked(opening), BONDS, Progress.NONE)),
        result(() -> drag.moved(opening)));
  }

  private static Object result(Attempt attempt) {
    try {
      return attempt.get();
    } catch (InputException e) {
      return e.getMessage();
    }
  }
}
