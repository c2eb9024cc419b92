// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.model.Panel;
import muralbench.setout.PanelSetOut;
import org.junit.jupiter.api.Test;

class SnappingTest {
  private final Snapping snapping = new Snapping(List.of(100.0, 300.0), List.of(50.0), 4, 5);
  private final Frame frame = new Frame(0, 0, 40, 20);

  @Test
  void anEdgeNearALineGoesOntoIt() {
    Snapping.Snapped snapped = snapping.move(frame, 98, 0);
    assertEquals(100, snapped.frame().x());
    assertEquals(100, snapped.x().orElseThrow());
    assertTrue(snapped.y().isEmpty());
  }

  @Test
  void theMiddleAndTheFarEdgeArePulledToo() {
    assertEquals(80, snapping.move(frame, 82, 0).frame().x());
    assertEquals(60, snapping.move(frame, 61, 0).frame().x());
  }

  @Test
  void awayFromLinesTheGridHolds() {
    assertEquals(25, snapping.move(frame, 23.4, 0).frame().x());
  }

  @Test
  void anAxisWithoutMovementStaysOffTheGrid() {
    Frame off = new Frame(0, 13.3, 40, 20);
    assertEquals(13.3, snapping.move(off, 98, 0).frame().y());
  }

  @Test
  void aHeldEdgeIsPulledAndTheOthersStay() {
    Snapping.Edges right = new Snapping.Edges(false, true, false, false);
    Frame wide = snapping.resize(frame, right, 58, 30).frame();
    assertEquals(new Frame(0, 0, 100, 20), wide);
    Snapping.Edges lowerLeft = new Snapping.Edges(true, false, true, false);
    assertEquals(new Frame(-10, -5, 50, 25), snapping.resize(frame, lowerLeft, -9, -6).frame());
  }

  @Test
  void nothingIsResizedAwayToNothing() {
    Snapping.Edges left = new Snapping.Edges(true, false, false, false);
    assertEquals(Snapping.SMALLEST, snapping.resize(frame, left, 500, 0).frame().width());
  }

  @Test
  void aCircleStaysRoundAroundTheEdgesThatAreNotHeld() {
    Snapping.Edges top = new Snapping.Edges(false, false, false, true);
    assertEquals(new Frame(-10, 0, 60, 60), top.square(new Frame(0, 0, 40, 60)));
    Snapping.Edges lowerLeft = new Snapping.Edges(true, false, true, false);
    assertEquals(new Frame(-20, 0, 60, 60), lowerLeft.square(new Frame(0, 0, 40, 60)));
  }

  @Test
  void theGridIsAFractionOfAnInchOrWholeMillimetres() {
    assertEquals(25.4 / 16, SnapLines.step(10, LengthUnit.INCH));
    assertEquals(25.4, SnapLines.step(0.15, LengthUnit.INCH));
    assertEquals(5, SnapLines.step(1, LengthUnit.MILLIMETRE));
  }

  @Test
  void openingsFindTheEdgesOfTheTilesOfTheirPanel() {
    OpenMural mural = SampleMural.open();
    Panel panel = mural.mural().getPanels().get(0);
    PanelSetOut setOut = mural.setOut(panel).orElseThrow();
    double edge = setOut.pieces().stream().filter(piece -> piece.key().equals("A-02-03")).findAny().orElseThrow().box()
        .minX();
    SnapLines withTiles = SnapLines.around(mural.mural(), panel.getOpenings(), Optional.of(setOut));
    SnapLines without = SnapLines.around(mural.mural(), List.of(panel), Optional.of(setOut));
    assertTrue(withTiles.xs().contains(Frame.clean(edge)));
    assertTrue(!without.xs().contains(Frame.clean(edge)));
  }

  @Test
  void whatIsMovedGivesNoLines() {
    OpenMural mural = SampleMural.open();
    SnapLines lines = SnapLines.around(mural.mural(), List.of(mural.mural().getPanels().get(0)), Optional.empty());
    assertTrue(!lines.xs().contains(1828.8));
    assertTrue(lines.xs().contains(2500.0));
    assertTrue(lines.ys().contains(0.0));
  }
}
