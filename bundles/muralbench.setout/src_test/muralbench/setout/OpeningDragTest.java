// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;
import org.junit.jupiter.api.Test;

/**
 * Tiles of 150 mm with joints of 10 mm; the panel ends in the middle of joints, so that 10 columns and 5 courses of whole
 * tiles fill it.
 */
class OpeningDragTest {
  private static final double MODULE = 160;
  private static final BondRegistry BONDS = BondRegistry.standard();
  private static final OriginSpec CORNER = new OriginSpec.At(new Vec(5, 5));

  private static PanelSpec panel(OriginSpec origin, Contour... openings) {
    List<OpeningSpec> all = new ArrayList<>();
    for (Contour opening : openings) {
      all.add(new OpeningSpec("O" + (all.size() + 1), "window", opening));
    }
    return new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", 150, 150, 0, 0, -1), 10, 0,
        Contour.rectangle(0, 0, 10 * MODULE, 5 * MODULE), all, BondSpec.grid(), origin);
  }

  /** An opening over whole cells, from the middle of one joint to the middle of another. */
  private static Contour cells(int column, int course, int columns, int courses) {
    return Contour.rectangle(column * MODULE, course * MODULE, columns * MODULE, courses * MODULE);
  }

  private static OpeningDrag drag(PanelSpec panel) throws InputException {
    return OpeningDrag.of(whole(panel), "O1", BONDS);
  }

  private static PanelSetOut whole(PanelSpec panel) throws InputException {
    return SetOut.panel(panel, BONDS, Progress.NONE);
  }

  private static Piece piece(PanelSetOut panel, String key) {
    return panel.pieces().stream().filter(piece -> piece.key().equals(key)).findFirst().orElseThrow();
  }

  private static void assertWhole(OpeningDrag drag, Contour outline) throws InputException {
    assertEquals(whole(drag.asked(outline)), drag.moved(outline));
  }

  @Test
  void aCellThatVanishesMovesThePositionsOfItsCourse() throws InputException {
    PanelSetOut moved = drag(panel(CORNER, cells(1, 1, 1, 1))).moved(cells(4, 2, 2, 1));
    assertEquals(48, moved.pieces().size());
    assertEquals(6 * MODULE + 5, piece(moved, "A-03-05").box().minX(), 1e-9);
    assertEquals(MODULE + 5, piece(moved, "A-02-02").box().minX(), 1e-9);
  }

  @Test
  void aCourseThatIsEmptiedMovesTheCourses() throws InputException {
    OpeningDrag drag = drag(panel(CORNER, cells(1, 1, 1, 1)));
    Contour slot = Contour.rectangle(4, MODULE, 10 * MODULE - 8, MODULE);
    assertEquals(4, drag.moved(slot).courses());
    assertEquals(2 * MODULE + 5, piece(drag.moved(slot), "A-02-01").box().minY(), 1e-9);
    assertWhole(drag, slot);
  }

  @Test
  void piecesAwayFromTheOpeningAreUsedAgain() throws InputException {
    OpeningDrag drag = drag(panel(CORNER, cells(1, 1, 1, 1)));
    PanelSetOut first = drag.moved(cells(2, 2, 1, 1));
    PanelSetOut next = drag.moved(cells(3, 2, 1, 1));
    assertSame(piece(first, "A-01-07"), piece(next, "A-01-07"));
    assertSame(piece(first, "A-05-01"), piece(next, "A-05-01"));
  }

  /** A balanced start depends on the opening; while dragged the field keeps still. */
  @Test
  void theStartStaysAsItWas() throws InputException {
    PanelSpec balanced = panel(new OriginSpec.Balanced(), Contour.rectangle(300, 300, 400, 200));
    PanelSetOut begun = whole(balanced);
    Contour there = Contour.rectangle(437, 351, 400, 200);
    assertEquals(begun.origin(), drag(balanced).moved(there).origin());
    assertNotEquals(begun.origin(),
        whole(balanced.withOpenings(List.of(new OpeningSpec("O1", "window", there)))).origin());
  }

  @Test
  void movementJointsStayAsOpened() throws InputException {
    MovementSpec joints = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, 480, 24),
        new MovementJoint(MovementAxis.HORIZONTAL, 320, 18)));
    PanelSpec panel = panel(new OriginSpec.Balanced(), cells(1, 1, 2, 1)).withMovement(joints);
    OpeningDrag drag = drag(panel);
    Contour there = cells(5, 2, 2, 2);
    assertEquals(2, drag.moved(there).movement().size());
    for (int i = 0; i < 2; i++) {
      assertEquals(whole(panel).movement().get(i).at(), drag.moved(there).movement().get(i).at(), 1e-9);
    }
    assertWhole(drag, there);
  }

  @Test
  void anOpeningOverAnotherOrOnTheEdgeGivesTheWholeSetOut() throws InputException {
    OpeningDrag drag = drag(panel(CORNER, cells(1, 1, 1, 1), Contour.rectangle(700, 300, 300, 200)));
    assertWhole(drag, Contour.rectangle(900, 400, 200, 200));
    assertWhole(drag, Contour.rectangle(750, 350, 50, 50));
    assertWhole(drag, Contour.rectangle(600, 200, 500, 400));
    assertWhole(drag, Contour.rectangle(300, 0, 200, 400));
  }

  @Test
  void aDoorThatStaysDoesNotKeepAWindowFromMoving() throws InputException {
    Contour door = Contour.rectangle(900, 0, 330, 600);
    OpeningDrag drag = drag(panel(CORNER, cells(1, 1, 1, 1), door));
    PanelSetOut first = drag.moved(Contour.rectangle(300, 300, 170, 170));
    PanelSetOut next = drag.moved(Contour.rectangle(310, 300, 170, 170));
    assertSame(piece(first, "A-01-06"), piece(next, "A-01-06"));
    assertEquals(whole(next.spec()), next);
  }

  @Test
  void anOpeningThatLeavesThePanelIsRefusedAsInTheWholeSetOut() throws InputException {
    OpeningDrag drag = drag(panel(CORNER, cells(1, 1, 1, 1)));
    Contour out = cells(9, 4, 2, 1);
    InputException refused = assertThrows(InputException.class, () -> drag.moved(out));
    assertEquals(assertThrows(InputException.class, () -> whole(drag.asked(out))).getMessage(), refused.getMessage());
    assertEquals("O1", refused.place());
  }

  @Test
  void errorsGiveLengthsInTheUnitsAskedFor() throws InputException {
    PanelSetOut begun = whole(panel(CORNER, cells(1, 1, 1, 1)));
    OpeningDrag drag = OpeningDrag.of(begun, "O1", BONDS, LengthUnit.INCH);
    InputException refused = assertThrows(InputException.class, () -> drag.moved(cells(9, 4, 2, 1)));
    assertTrue(refused.problem().contains(" in"), refused.problem());
  }

  @Test
  void anOpeningThePanelDoesNotHaveIsRefused() throws InputException {
    PanelSetOut begun = whole(panel(CORNER, cells(1, 1, 1, 1)));
    assertThrows(IllegalArgumentException.class, () -> OpeningDrag.of(begun, "O9", BONDS));
  }

  /** The joint is in the other panel; what is beyond it stands aside by the 14 mm it is opened. */
  @Test
  void aJointOfASharedGridOutsideThePanelStaysOpened() throws InputException {
    PanelSpec first = panel(CORNER).withMovement(new MovementSpec.Given(
        List.of(new MovementJoint(MovementAxis.VERTICAL, 480, 24))));
    PanelSpec second = beside(cells(12, 1, 1, 1));
    PanelSetOut begun = whole(second.withOrigin(new OriginSpec.Shared(CORNER, List.of(first, second))));
    OpeningDrag drag = OpeningDrag.of(begun, "O1", BONDS);
    assertEquals(begun, drag.moved(cells(12, 1, 1, 1)));
    assertEquals(10 * MODULE + 5 + 14, piece(drag.moved(cells(14, 1, 1, 1)), "B-01-02").box().minX(), 1e-9);
  }

  @Test
  void aSharedGridWithoutJointsStaysWhereItIs() throws InputException {
    PanelSpec first = panel(new OriginSpec.Balanced());
    PanelSpec second = beside(cells(12, 1, 1, 1)).withOrigin(new OriginSpec.Balanced());
    PanelSetOut begun = whole(second.withOrigin(new OriginSpec.Shared(new OriginSpec.Balanced(), List.of(first, second))));
    OpeningDrag drag = OpeningDrag.of(begun, "O1", BONDS);
    assertEquals(begun.pieces(), drag.moved(cells(12, 1, 1, 1)).pieces());
    assertWhole(drag, Contour.rectangle(2000, 300, 170, 230));
  }

  @Test
  void aPanelThatOnlyRepeatsAnotherIsRefused() throws InputException {
    PanelSpec other = panel(CORNER, cells(1, 1, 1, 1));
    PanelSetOut begun = whole(other.withOrigin(new OriginSpec.Repeated(other, new Transfer(false, Vec.ZERO))));
    assertThrows(IllegalArgumentException.class, () -> OpeningDrag.of(begun, "O1", BONDS));
  }

  /** A panel as large as the others and right beside them. */
  private static PanelSpec beside(Contour opening) {
    return new PanelSpec("B", "", "wall", "fixed", new TileSpec("T", 150, 150, 0, 0, -1), 10, 0,
        Contour.rectangle(10 * MODULE, 0, 10 * MODULE, 5 * MODULE), List.of(new OpeningSpec("O1", "window", opening)),
        BondSpec.grid(), CORNER);
  }
}
