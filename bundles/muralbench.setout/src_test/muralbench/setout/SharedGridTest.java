// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementRule;
import muralbench.setout.movement.MovementSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels of 6 in tile with joints of 1/8 in that share a grid or a level line. */
class SharedGridTest {
  private static final double IN = Walls.IN;
  private static final double MODULE = 6.125 * IN;

  private static PanelSpec panel(String id, double x, double width, BondSpec bond, OriginSpec origin) {
    return new PanelSpec(id, "", "wall", "fixed", Walls.tile(6, 6), IN / 8, 0,
        Contour.rectangle(x * IN, 36 * IN, width * IN, 47 * IN), List.of(), bond, origin);
  }

  /** The panels as one field with a start. */
  private static List<PanelSpec> field(OriginSpec start, PanelSpec... panels) {
    List<PanelSpec> all = Stream.of(panels).map(panel -> panel.withOrigin(start)).toList();
    return all.stream().map(panel -> panel.withOrigin(new OriginSpec.Shared(start, all))).toList();
  }

  private static List<PanelSetOut> setOut(List<PanelSpec> panels) throws InputException {
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", panels);
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE).panels();
  }

  /** One panel with a window of its full height in the place of the gap. */
  private static PanelSetOut withWindow(double left, double gap, double right, BondSpec bond, MovementSpec movement)
      throws InputException {
    PanelSpec whole = new PanelSpec("A", "", "wall", "fixed", Walls.tile(6, 6), IN / 8, 0,
        Contour.rectangle(0, 36 * IN, (left + gap + right) * IN, 47 * IN),
        List.of(new OpeningSpec("W", "window", Contour.rectangle(left * IN, 36 * IN, gap * IN, 47 * IN))), bond,
        new OriginSpec.Balanced());
    return SetOut.panel(whole.withMovement(movement), BondRegistry.standard(), Progress.NONE);
  }

  private static List<String> boxes(List<PanelSetOut> panels) {
    List<String> boxes = new ArrayList<>();
    for (PanelSetOut panel : panels) {
      for (Piece piece : panel.pieces()) {
        Box box = piece.box();
        boxes.add(piece.kind() + " " + micrometres(box.minX()) + " " + micrometres(box.maxX()) + " "
            + micrometres(box.minY()) + " " + micrometres(box.maxY()));
      }
    }
    return boxes.stream().sorted().toList();
  }

  /** Whole ones; the odd share keeps the halves of a module off the edge between two of them. */
  private static long micrometres(double length) {
    return Math.round(length * 1000 + 0.123);
  }

  /** A grid that runs on behind a column is that of one panel with an opening where the column is. */
  @ParameterizedTest
  @CsvSource({"50, 20, 40, grid, 0, 0", "31.3, 7.9, 55.5, grid, 0, 0", "50, 20, 40, running, 0.5, 0",
      "40, 33, 40, running, 0.333, 90", "50, 20, 40, diagonal, 0, 0"})
  void aSharedGridRunsOnBehindAColumn(double left, double gap, double right, String kind, double offset, double turn)
      throws InputException {
    BondSpec bond = new BondSpec(kind, offset, turn, Map.of());
    OriginSpec balanced = new OriginSpec.Balanced();
    List<PanelSetOut> two = setOut(field(balanced, panel("A", 0, left, bond, balanced),
        panel("B", left + gap, right, bond, balanced)));
    assertEquals(boxes(List.of(withWindow(left, gap, right, bond, new MovementSpec.None()))), boxes(two));
    assertEquals(two.get(0).origin(), two.get(1).origin());
  }

  /** The start that is best for one of the panels alone is not better for both. */
  @ParameterizedTest
  @CsvSource({"40, 20, 50", "31.3, 7.9, 55.5", "26, 31, 49", "61, 3, 37"})
  void aSharedGridIsBalancedOverAllOfItsPanels(double left, double gap, double right) throws InputException {
    OriginSpec balanced = new OriginSpec.Balanced();
    PanelSpec first = panel("A", 0, left, BondSpec.grid(), balanced);
    PanelSpec second = panel("B", left + gap, right, BondSpec.grid(), balanced);
    double shared = smallest(setOut(field(balanced, first, second)));
    for (PanelSetOut alone : setOut(List.of(first, second))) {
      OriginSpec at = new OriginSpec.At(alone.origin());
      assertTrue(shared >= smallest(setOut(field(at, first, second))) - 1e-6, "smallest cut " + shared);
    }
  }

  private static double smallest(List<PanelSetOut> panels) {
    return panels.stream().flatMap(panel -> panel.pieces().stream())
        .mapToDouble(piece -> Math.min(piece.box().width(), piece.box().height())).min().orElseThrow();
  }

  @Test
  void aGivenOriginHoldsInAllPanels() throws InputException {
    OriginSpec at = new OriginSpec.At(new Vec(5 * IN, 37 * IN));
    List<PanelSetOut> two = setOut(field(at, panel("A", 0, 50, BondSpec.grid(), at), panel("B", 77, 40, BondSpec.grid(), at)));
    for (Piece piece : two.get(1).pieces()) {
      double modules = (piece.face().box().minX() - 5 * IN) / MODULE;
      assertEquals(Math.rint(modules), modules, 1e-9);
    }
  }

  @Test
  void aPanelThatCannotBeLaidLeavesTheOthersTheirGrid() throws InputException {
    OriginSpec balanced = new OriginSpec.Balanced();
    PanelSpec broken = new PanelSpec("B", "", "wall", "fixed", Walls.tile(6, 6), IN / 8, 0,
        Contour.rectangle(60 * IN, 36 * IN, 40 * IN, 47 * IN),
        List.of(new OpeningSpec("B1", "window", Contour.rectangle(90 * IN, 40 * IN, 20 * IN, 20 * IN))),
        BondSpec.grid(), balanced);
    List<PanelSpec> both = field(balanced, panel("A", 0, 50, BondSpec.grid(), balanced), broken);
    assertTrue(SetOut.panel(both.get(0), BondRegistry.standard(), Progress.NONE).pieces().size() > 50);
    assertThrows(InputException.class, () -> SetOut.panel(both.get(1), BondRegistry.standard(), Progress.NONE));
  }

  /** A joint that one panel asks for shifts the tiles of the next as in one panel with an opening. */
  @Test
  void movementJointsRunOnThroughAllPanelsOfAGrid() throws InputException {
    OriginSpec balanced = new OriginSpec.Balanced();
    MovementSpec vertical = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, 25 * IN, 10)));
    MovementSpec level = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.HORIZONTAL, 55 * IN, 12)));
    List<MovementJoint> all = List.of(((MovementSpec.Given) vertical).joints().get(0),
        ((MovementSpec.Given) level).joints().get(0));
    List<PanelSetOut> two = setOut(field(balanced, panel("A", 0, 50, BondSpec.grid(), balanced).withMovement(vertical),
        panel("B", 70, 40, BondSpec.grid(), balanced).withMovement(level)));
    PanelSetOut one = withWindow(50, 20, 40, BondSpec.grid(), new MovementSpec.Given(all));
    assertEquals(boxes(List.of(one)), boxes(two));
    assertEquals(2, two.get(0).movement().size());
    assertEquals(1, two.get(1).movement().size());
  }

  @Test
  void movementJointsByRuleAreThoseOfTheWholeField() throws InputException {
    OriginSpec balanced = new OriginSpec.Balanced();
    MovementSpec rule = new MovementSpec.ByRule(MovementRule.of("exterior", "wall"), 100);
    List<PanelSetOut> two = setOut(field(balanced, panel("A", 0, 150, BondSpec.grid(), balanced).withMovement(rule),
        panel("B", 170, 140, BondSpec.grid(), balanced)));
    assertEquals(boxes(List.of(withWindow(150, 20, 140, BondSpec.grid(), rule))), boxes(two));
    assertTrue(two.get(0).movement().size() + two.get(1).movement().size() >= 2);
  }

  @Test
  void movementJointsByRuleAndGivenOnesDoNotGoTogether() {
    OriginSpec balanced = new OriginSpec.Balanced();
    MovementSpec rule = new MovementSpec.ByRule(MovementRule.of("exterior", "wall"), 100);
    MovementSpec given = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.VERTICAL, 100 * IN, 10)));
    InputException e = assertThrows(InputException.class, () -> setOut(field(balanced,
        panel("A", 0, 150, BondSpec.grid(), balanced).withMovement(rule),
        panel("B", 170, 140, BondSpec.grid(), balanced).withMovement(given))));
    assertTrue(e.getMessage().contains("panels A, B share one grid"), e.getMessage());
  }

  /** B stands 7 in higher, and its tile is twice as wide; its courses go on where those of A do. */
  @ParameterizedTest
  @CsvSource({"grid, 0, 12, 0", "running, 0.5, 6, 0", "grid, 0, 3, 180"})
  void coursesAreLevelWithThoseOfAnotherPanel(String kind, double offset, double width, double turn)
      throws InputException {
    PanelSpec first = panel("A", 0, 50, BondSpec.grid(), new OriginSpec.Balanced());
    PanelSpec second = new PanelSpec("B", "", "wall", "fixed", Walls.tile(width, 6), IN / 8, 0,
        Contour.rectangle(70 * IN, 43 * IN, 41 * IN, 30 * IN), List.of(), new BondSpec(kind, offset, turn, Map.of()),
        new OriginSpec.Level(first));
    List<PanelSetOut> two = setOut(List.of(first, second));
    for (Piece piece : two.get(1).pieces()) {
      double modules = (piece.face().box().minY() - two.get(0).origin().y()) / MODULE;
      assertEquals(Math.rint(modules), modules, 1e-9);
    }
    PanelSetOut alone = SetOut.panel(second.withOrigin(new OriginSpec.Balanced()), BondRegistry.standard(), Progress.NONE);
    assertEquals(ends(alone), ends(two.get(1)), 1e-6);
  }

  /** The width of the narrowest cut at the left end of a course; which course of a running bond has it is all the same. */
  private static double ends(PanelSetOut panel) {
    double left = panel.spec().outline().box().minX();
    return panel.pieces().stream().map(Piece::box).filter(box -> box.minX() < left + 1e-6).mapToDouble(Box::width).min()
        .orElseThrow();
  }

  @Test
  void herringboneIsLevelWithTheSameHerringbone() throws InputException {
    BondSpec bond = new BondSpec("herringbone", 0, 0, Map.of());
    PanelSpec first = new PanelSpec("A", "", "wall", "fixed", Walls.tile(8, 4), 0, 0,
        Contour.rectangle(0, 36 * IN, 50 * IN, 47 * IN), List.of(), bond, new OriginSpec.Balanced());
    PanelSpec second = new PanelSpec("B", "", "wall", "fixed", first.tile(), 0, 0,
        Contour.rectangle(70 * IN, 43 * IN, 41 * IN, 30 * IN), List.of(), bond, new OriginSpec.Level(first));
    List<PanelSetOut> two = setOut(List.of(first, second));
    double modules = (two.get(1).pieces().get(0).face().box().minY() - two.get(0).pieces().get(0).face().box().minY())
        / (4 * IN);
    assertEquals(Math.rint(modules), modules, 1e-6);
  }

  @Test
  void coursesOfAnotherHeightCannotBeLevel() {
    PanelSpec first = panel("A", 0, 50, BondSpec.grid(), new OriginSpec.Balanced());
    PanelSpec second = new PanelSpec("B", "", "wall", "fixed", Walls.tile(6, 8), IN / 8, 0,
        Contour.rectangle(70 * IN, 43 * IN, 41 * IN, 30 * IN), List.of(), BondSpec.grid(), new OriginSpec.Level(first));
    InputException e = assertThrows(InputException.class, () -> setOut(List.of(first, second)));
    assertEquals("B", e.place());
    assertTrue(e.getMessage().contains("its courses rise by 8-1/8 in and those of panel A by 6-1/8 in"), e.getMessage());
  }

  @Test
  void movementJointsOfALevelPanelKeepItsCoursesInLine() throws InputException {
    MovementSpec level = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.HORIZONTAL, 55 * IN, 12),
        new MovementJoint(MovementAxis.VERTICAL, 90 * IN, 12)));
    MovementSpec same = new MovementSpec.Given(List.of(new MovementJoint(MovementAxis.HORIZONTAL, 55 * IN, 12)));
    PanelSpec first = panel("A", 0, 50, BondSpec.grid(), new OriginSpec.Balanced()).withMovement(same);
    PanelSpec second = panel("B", 70, 41, BondSpec.grid(), new OriginSpec.Level(first)).withMovement(level);
    List<PanelSetOut> two = setOut(List.of(first, second));
    assertEquals(heights(two.get(0)), heights(two.get(1)));
  }

  private static List<Long> heights(PanelSetOut panel) {
    return panel.pieces().stream().map(piece -> Math.round(piece.face().box().minY() * 1000)).distinct().sorted().toList();
  }
}
