// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;
import muralbench.setout.Walls;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.fit.Alternative.Kind;
import org.junit.jupiter.api.Test;

/**
 * Worked cases with 6 in tile and 1/8 in joints. A span S takes n whole tiles a with the joint (S - n a) / (n - 1), and
 * its two equal end cuts are (S - n a - (n + 1) j) / 2: arithmetic, as in the exact form of the half-tile rule.
 */
class FitAlternativesTest {
  private static final double IN = 25.4;

  @Test
  void fortyNineInchesTakeEightTilesWithAJointOfASeventh() throws Exception {
    Alternative joint = first(Kind.JOINT, Walls.rectangle(0, 0, 49, 49));
    assertEquals(IN / 7, joint.joint(), 1e-9);
    assertTrue(joint.noCuts());
    assertEquals(64, joint.tilesToOrder());
    assertEquals("Joint 0.143 in instead of 1/8 in.", joint.change());
  }

  @Test
  void wholeTilesBySmallestChangeComeFirst() throws Exception {
    List<Alternative> all = all(Walls.rectangle(0, 0, 49, 49));
    assertEquals(Kind.JOINT, all.get(0).kind());
    assertTrue(all.stream().limit(3).allMatch(Alternative::noCuts));
  }

  @Test
  void anEvenPanelIsBestAsItIs() throws Exception {
    Alternative best = all(Walls.rectangle(0, 0, 48.875, 48.875)).get(0);
    assertEquals(Kind.PRESENT, best.kind());
    assertEquals("Whole tiles only; nothing is cut.", best.consequence());
  }

  @Test
  void aHundredInchesLeaveAMarginOfOneAndASixteenth() throws Exception {
    // 16 tiles and 15 joints are 97 7/8 in; the rest of 2 1/8 in is 1 1/16 in on either side.
    Alternative margin = first(Kind.EDGE, Walls.rectangle(0, 0, 100, 100));
    assertEquals(1.0625 * IN, margin.spec().edgeGap(), 1e-9);
    assertTrue(margin.noCuts());
    assertEquals(256, margin.tilesToOrder());
  }

  @Test
  void aMarginForOneAxisLeavesTheCutsOfTheOther() throws Exception {
    Alternative margin = all(Walls.rectangle(0, 0, 100, 49)).stream()
        .filter(one -> one.kind() == Kind.EDGE && one.wholeAcross()).findFirst().orElseThrow();
    assertFalse(margin.wholeUp());
    assertFalse(margin.noCuts());
  }

  @Test
  void theNextSizesAreOneModuleApart() throws Exception {
    // 8 tiles are 48 7/8 in, 9 are 55 in; 5 are 30 1/2 in, which fits as it is.
    List<Double> widths = all(Walls.rectangle(10, 0, 50, 30.5)).stream().filter(one -> one.kind() == Kind.SIZE)
        .map(one -> one.spec().outline().box().width() / IN).map(width -> Math.rint(width * 1e6) / 1e6).toList();
    assertEquals(List.of(48.875, 55.0), widths);
  }

  @Test
  void aFixedStartIsOfferedTheTrimOfBothEnds() throws Exception {
    // 100 in: 15 tiles, 16 joints and two cuts of 4 in.
    Alternative trim = first(Kind.TRIM, Walls.rectangle(0, 0, 100, 48.875).from(0, 0));
    assertEquals(4 * IN, trim.smallestCut().orElseThrow(), 1e-6);
    assertEquals(0, trim.smallCuts());
    assertEquals(new OriginSpec.Balanced(), trim.spec().origin());
  }

  @Test
  void otherStartsGiveOtherPieces() throws Exception {
    List<Alternative> all = all(Walls.rectangle(0, 0, 100, 100));
    List<Alternative> starts = all.stream().filter(one -> one.kind() == Kind.START).toList();
    assertFalse(starts.isEmpty());
    Alternative present = all.stream().filter(one -> one.kind() == Kind.PRESENT).findFirst().orElseThrow();
    assertTrue(starts.stream().allMatch(start -> all.indexOf(start) > all.indexOf(present)));
  }

  @Test
  void theFirstThreeAreOfThreeKindsThatHelp() throws Exception {
    // Eight tiles over 50 in need a joint of 2/7 in, a margin of 9/16 in or another size; each leaves whole tiles only.
    List<Alternative> all = all(Walls.rectangle(0, 0, 49.25, 49.25));
    List<Alternative> first = FitAlternatives.shortlist(all, 3);
    assertEquals(3, first.stream().map(Alternative::kind).distinct().count());
    int present = all.indexOf(all.stream().filter(one -> one.kind() == Kind.PRESENT).findFirst().orElseThrow());
    assertTrue(first.stream().allMatch(one -> all.indexOf(one) < present));
  }

  @Test
  void theShortlistIsRankedAndHoldsEverythingWhenAskedFor() throws Exception {
    List<Alternative> all = all(Walls.rectangle(0, 0, 50, 30.5));
    List<Alternative> without = all.stream().filter(one -> one.kind() != Kind.PRESENT).toList();
    assertEquals(without, FitAlternatives.shortlist(all, all.size()));
  }

  @Test
  void aStartIsToldByTheWayItMoves() throws Exception {
    List<String> moves = all(Walls.rectangle(0, 0, 50, 40)).stream().filter(one -> one.kind() == Kind.START)
        .map(Alternative::change).toList();
    assertFalse(moves.isEmpty());
    String told = "The first face moves [0-9]\\S* in (to the (left|right)|up|down).*";
    assertTrue(moves.stream().allMatch(move -> move.matches(told)), moves.toString());
  }

  @Test
  void theJointStaysAboveThreeTimesTheSpreadOfTheTile() throws Exception {
    // Spread 1/16 in asks for joints of 3/16 in: the printed example of ANSI A108.02 §4.3.8 in the trade press.
    PanelSpec panel = Walls.rectangle(0, 0, 49, 49).spec();
    TileSpec varied = new TileSpec("T", 6 * IN, 6 * IN, 0, IN / 16, -1);
    PanelSpec wide = new PanelSpec("A", "", "wall", "fixed", varied, panel.joint(), 0, panel.outline(), List.of(),
        panel.bond(), panel.origin());
    assertTrue(all(wide).stream().allMatch(one -> one.kind() != Kind.JOINT || one.joint() >= 3 * IN / 16 - 1e-9));
    assertTrue(all(wide).stream().noneMatch(one -> Math.abs(one.joint() - IN / 7) < 1e-6));
  }

  @Test
  void aRunningBondIsFittedInHeightOnly() throws Exception {
    Alternative joint = first(Kind.JOINT, Walls.rectangle(0, 0, 49, 49).bond("running", 0.5, 0));
    assertTrue(joint.wholeUp());
    assertFalse(joint.wholeAcross());
  }

  @Test
  void theTileThatStandsIsFittedByItsOtherSide() throws Exception {
    // 4 x 6 in tile turned by a quarter: 6 in along the wall, 4 in up. 6 x 4 + 5 x 1/8 in are 24 5/8 in up.
    Alternative size = first(Kind.SIZE, Walls.rectangle(0, 0, 48.875, 26).tiles(4, 6, 1 / 8.0).bond("grid", 0, 90));
    assertTrue(size.noCuts());
    assertEquals(24.625, size.spec().outline().box().height() / IN, 1e-9);
  }

  @Test
  void theCutsOfAnOpeningStay() throws Exception {
    Alternative joint = first(Kind.JOINT, Walls.rectangle(0, 0, 49, 49).opening(20, 20, 10, 10));
    assertTrue(joint.wholeAcross() && joint.wholeUp());
    assertTrue(joint.cuts() > 0);
    assertTrue(joint.consequence().startsWith("Whole tiles fit across and up."), joint.consequence());
  }

  @Test
  void aRoundPanelHasNoSizeToOffer() throws Exception {
    assertTrue(all(Walls.circle(40, 40, 30)).stream().noneMatch(one -> one.kind() == Kind.SIZE));
  }

  @Test
  void everyBondHasItsPresentStateAmongTheChoices() throws Exception {
    for (String kind : List.of("diagonal", "octagon")) {
      List<Alternative> all = all(Walls.rectangle(0, 0, 50, 40).bond(kind, 0, 0));
      assertEquals(1, all.stream().filter(one -> one.kind() == Kind.PRESENT).count(), kind);
      assertTrue(all.size() > 1, kind);
    }
  }

  @Test
  void aPanelThatCannotBeSetOutIsRefused() {
    assertThrows(InputException.class, () -> all(Walls.rectangle(0, 0, 4, 4)));
  }

  @Test
  void itStopsWhenCancelled() {
    CancelledException stop = new CancelledException();
    Progress cancelled = new Progress() {
      @Override
      public void begin(String task, int steps) {}

      @Override
      public void step(int steps) {
        throw stop;
      }
    };
    PanelSpec panel = Walls.rectangle(0, 0, 49, 49).spec();
    assertSame(stop, assertThrows(CancelledException.class,
        () -> FitAlternatives.of(panel, BondRegistry.standard(), cancelled)));
  }

  private static Alternative first(Kind kind, Walls walls) throws InputException {
    return all(walls).stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
  }

  private static List<Alternative> all(Walls walls) throws InputException {
    return all(walls.spec());
  }

  private static List<Alternative> all(PanelSpec panel) throws InputException {
    return FitAlternatives.of(panel, BondRegistry.standard(), LengthUnit.INCH, Progress.NONE);
  }
}
