// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static muralbench.pattern.border.Bands.INCH;
import static muralbench.pattern.border.Bands.best;
import static muralbench.pattern.border.Bands.joints;
import static muralbench.pattern.border.Bands.solve;
import static muralbench.pattern.border.Bands.square;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** Bands worked out by hand; lengths in inches. */
class ClosingSolverTest {
  private static final JointRange EIGHTH = joints(0.125, 0.125, 0.125);

  @Test
  void aSquareClosesByTheJointAlone() {
    // 48 = 8 faces of 5-7/8 (2 corners, 6 tiles) + 7 joints: the joint is 1/7.
    BandLayout layout = best(square(48, 48, 5.875, joints(0.0625, 0.125, 0.1875), Permits.NONE));
    assertEquals(INCH / 7, layout.joint(), 1e-9);
    assertEquals(6, layout.run(0, 0).whole());
    assertEquals(Set.of(Means.JOINT), layout.means());
    assertEquals(0, layout.relativeResidual(), 1e-9);
  }

  @Test
  void aPanelClosesWithTheBandMovedIn() {
    // 12 faces and 11 joints of 1/8 are 71-7/8, 8 faces and 7 joints 47-7/8: both sides want 1/16 at each end.
    BandLayout layout = best(square(72, 48, 5.875, EIGHTH, Permits.NONE.move(INCH / 4, 0)));
    assertEquals(INCH / 16, layout.move(), 1e-9);
    assertEquals(6, layout.run(0, 0).whole());
    assertEquals(10, layout.run(0, 1).whole());
    assertEquals((72 - 2 * (0.0625 + 5.875 + 0.125)) * INCH, layout.field().orElseThrow().box().width(), 1e-9);
  }

  @Test
  void aPanelClosesWithEqualEndCuts() {
    // 72 = 2 corners of 6 + 8 tiles of 6 + 11 joints of 1/8 + 2 x 5-5/16; 48 likewise with 4 tiles and 5-9/16.
    BandLayout layout = best(square(72, 48, 6, EIGHTH, Permits.NONE.ends(0.5)));
    assertEquals(5.3125 * INCH, layout.run(0, 1).end(), 1e-9);
    assertEquals(8, layout.run(0, 1).whole());
    assertEquals(5.5625 * INCH, layout.run(0, 0).end(), 1e-9);
    assertEquals(4, layout.run(0, 2).whole());
  }

  @Test
  void aPanelClosesWithCentrePieces() {
    // 72 = 2 x 6 + 8 x 6 + 10 joints + 10-3/4; 48 = 2 x 6 + 4 x 6 + 6 joints + 11-1/4.
    BandLayout layout = best(square(72, 48, 6, EIGHTH, Permits.NONE.centre(10 * INCH, 12 * INCH)));
    assertEquals(10.75 * INCH, layout.run(0, 1).centre(), 1e-9);
    assertEquals(11.25 * INCH, layout.run(0, 0).centre(), 1e-9);
  }

  @Test
  void aPanelClosesWithTilesMadeShorter() {
    // 12 + 10 x 5.9 + 11/8 = 72.375 and 12 + 6 x 5.9 + 7/8 = 48.275.
    BandLayout layout = best(square(72.375, 48.275, 6, EIGHTH, Permits.NONE.scale(0.02)));
    assertEquals(5.9 / 6, layout.scale(), 1e-12);
    assertEquals(Set.of(Means.SCALE), layout.means());
  }

  @Test
  void aRepeatOfThreeIsNotBroken() {
    // 5 repeats of 3 tiles of 4 in with 16 joints of 1/8 between corners of 4: 8 + 60 + 2 = 70.
    Border border = Border.of(Bands.panel(70, 70), BandRow.of(4 * INCH, 4 * INCH, 3), Corner.TURNED,
        joints(0.1, 0.125, 0.15), Permits.NONE);
    BandLayout layout = best(border);
    assertEquals(5, layout.run(0, 3).repeats());
    assertEquals(Set.of(), layout.means());
    assertEquals(0, layout.harm());
  }

  @Test
  void aRepeatWithAMotifOfItsOwnInTheMiddle() {
    // 2 x 3 + 2 x 2 x 4 tiles of 3 + centre 5 + 18 joints of 1/8: 6 + 48 + 5 + 2.25 = 61.25.
    Border border = Border.of(Bands.panel(61.25, 61.25), BandRow.of(3 * INCH, 3 * INCH, 4), Corner.TILE, EIGHTH,
        Permits.NONE.centre(5 * INCH));
    assertEquals(16, best(border).run(0, 0).whole());
    assertEquals(5 * INCH, best(border).run(0, 0).centre(), 1e-9);
  }

  @Test
  void mitredSidesCountTheJointOnTheDiagonal() {
    // 8 tiles of 6, 7 joints between them and half a mitre of 1/8 at each end: 48 + 7/8 + sqrt(2)/8.
    double side = 48 + 7 / 8.0 + Math.sqrt(2) / 8;
    Border border = Border.of(Bands.panel(side, side), BandRow.of(6 * INCH, 4 * INCH, 1), Corner.MITRED,
        joints(0.0625, 0.1, 0.1875), Permits.NONE);
    assertEquals(INCH / 8, best(border).joint(), 1e-9);
    assertEquals(8, best(border).run(0, 0).whole());
  }

  @Test
  void buttedSidesDifferByTheSideThatRunsThrough() {
    // Level sides: 8 x 6 + 7/8 = 48-7/8. Upright sides: 2 x 3 for the level ones, 5 x 6 and 6 joints: 36-3/4.
    Border border = Border.of(Bands.panel(48.875, 36.75), BandRow.of(6 * INCH, 3 * INCH, 1), Corner.BUTTED, EIGHTH,
        Permits.NONE);
    assertEquals(5, best(border).run(0, 0).whole());
    assertEquals(8, best(border).run(0, 1).whole());
  }

  @Test
  void aStraightRunEndsWithItsTiles() {
    // 10 tiles of 6 with 9 joints: 61-1/8.
    Border border = Border.of(BandPath.straight(Vec.ZERO, new Vec(61.125 * INCH, 0)), BandRow.of(6 * INCH, 4 * INCH, 2),
        Corner.TILE, EIGHTH, Permits.NONE);
    assertEquals(5, best(border).run(0, 0).repeats());
    assertTrue(best(border).field().isEmpty());
  }

  @Test
  void cutEndsShowTheNeighbouringRepeats() {
    // 2 x 4 + 10 x 4 + 13 joints of 1/8 + 2 x 3 = 55-5/8: two repeats of 4, one tile more at each end, and the cut.
    Border border = Border.of(Bands.panel(55.625, 55.625), BandRow.of(4 * INCH, 4 * INCH, 4), Corner.TILE, EIGHTH,
        Permits.NONE.ends(0.5));
    RunLayout run = best(border).run(0, 0);
    assertEquals(List.of(10, 2, 1), List.of(run.whole(), run.repeats(), run.outside(4)));
    assertEquals(3 * INCH, run.end(), 1e-9);
  }

  @Test
  void twoPaintedRowsCloseWithOneJoint() {
    // Outside 2 x 2 + 7 x 6 + 8 joints of 1/8 = 47; inside 47 - 4 - 1/4 = 2 x 6 + 5 x 6 + 6 joints.
    Border border = new Border(Bands.panel(47, 47), List.of(BandRow.of(6 * INCH, 2 * INCH, 1),
        BandRow.of(6 * INCH, 6 * INCH, 1)), Corner.TILE, Through.LEVEL, joints(0.0625, 0.1, 0.1875), Permits.NONE);
    BandLayout layout = best(border);
    assertEquals(INCH / 8, layout.joint(), 1e-9);
    assertEquals(List.of(7, 5), List.of(layout.run(0, 0).whole(), layout.run(1, 0).whole()));
  }

  @Test
  void plainRowsFollowTheRowWithTheMotif() {
    // The listel of 2 and a joint outside leave 48 for the row of 5-7/8. Outside: 3 listels of 12 would leave ends of
    // 5-5/7, under half a module; 2 leave a module's half more, 11-11/14.
    BandRow listel = BandRow.plain(12 * INCH, 2 * INCH);
    Border border = new Border(Bands.panel(52 + 2 / 7.0, 52 + 2 / 7.0),
        List.of(listel, BandRow.of(5.875 * INCH, 5.875 * INCH, 1), listel), Corner.TILE, Through.LEVEL,
        joints(0.0625, 0.125, 0.1875), Permits.NONE);
    BandLayout layout = best(border);
    assertEquals(INCH / 7, layout.joint(), 1e-9);
    assertEquals(6, layout.run(1, 0).whole());
    assertEquals(2, layout.run(0, 0).whole());
    assertEquals((11 + 11 / 14.0) * INCH, layout.run(0, 0).end(), 1e-9);
  }

  @Test
  void theBestThreeComeWithTheLeastHarmFirst() {
    Closing closing = solve(square(72, 48, 5.875, joints(0.0625, 0.125, 0.1875),
        Permits.NONE.move(INCH, INCH).ends(0.5)));
    assertEquals(3, closing.layouts().size());
    assertEquals(Set.of(Means.MOVE), closing.layouts().get(0).means());
    assertTrue(closing.layouts().get(0).harm() < closing.layouts().get(1).harm());
    assertTrue(closing.layouts().get(1).harm() < closing.layouts().get(2).harm());
  }

  @Test
  void whatWouldWorkInsteadIsTold() {
    Closing closing = solve(square(48, 48, 5.875, EIGHTH, Permits.NONE));
    assertTrue(closing.layouts().isEmpty());
    assertTrue(closing.message().contains("with a joint of 0.143 in"), closing.message());
    assertTrue(closing.message().contains("with the band moved in by 1/16 in"), closing.message());
  }

  @Test
  void theHintsCloseTheBand() {
    // 36 = 6 faces of 5-29/32 and 5 joints of 7/64 to the dust of the numbers: told as a joint and taken at its word.
    Closing closing = solve(square(36.03125, 36.03125, 5.9375, EIGHTH, Permits.NONE));
    assertTrue(closing.message().contains("with a joint of 0.081 in"), closing.message());
    Border mended = square(36.03125, 36.03125, 5.9375, joints(0.0625, 0.08125, 0.125), Permits.NONE);
    assertEquals(Set.of(), best(mended).means());
  }
}
