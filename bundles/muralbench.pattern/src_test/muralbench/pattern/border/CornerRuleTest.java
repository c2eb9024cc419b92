// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.pattern.border.CornerVerdict.Course;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of corners against bands drawn point by point, for all groups and all corners. */
class CornerRuleTest {
  private static final int LONG = 8 * DrawnBand.LENGTH;
  private static final int SHORT = 4 * DrawnBand.LENGTH;

  static Stream<Arguments> all() {
    return Stream.of(FriezeGroup.values()).flatMap(group -> Stream.of(Corner.values()).flatMap(corner ->
        Stream.of(corner == Corner.BUTTED ? Through.values() : new Through[] {Through.LEVEL}).map(through ->
            Arguments.of(group, corner, through))));
  }

  @ParameterizedTest
  @MethodSource("all")
  void theMotifGoesOnWhereTheRuleSaysSo(FriezeGroup group, Corner corner, Through through) throws InputException {
    Course course = CornerRule.judge(group, corner, false).course();
    for (long seed = 1; seed <= 3; seed++) {
      boolean broken = !draw(group, corner, through, false, 0, true, seed).breaks().isEmpty();
      assertEquals(course == Course.BROKEN, broken);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theMotifGoesOnAfterCutEndsWhereTheRuleSaysSo(FriezeGroup group, Corner corner, Through through)
      throws InputException {
    Course course = CornerRule.judge(group, corner, true).course();
    boolean broken = !draw(group, corner, through, false, 4, true, 7).breaks().isEmpty();
    assertEquals(course == Course.BROKEN, broken);
  }

  @ParameterizedTest
  @EnumSource
  void anotherDrawingOnTheCornerTileStopsTheMotif(FriezeGroup group) throws InputException {
    assertEquals(Course.BY_DRAWING, CornerRule.judge(group, Corner.TILE, false).course());
    assertFalse(draw(group, Corner.TILE, Through.LEVEL, false, 0, false, 11).breaks().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("all")
  void theRingHasTheSymmetriesOfTheRuleAndNoOthers(FriezeGroup group, Corner corner, Through through)
      throws InputException {
    DrawnBand band = draw(group, corner, through, false, 0, true, 13);
    assertEquals(CornerRule.ring(group, corner, through, false), moves(band, width(corner, through, LONG),
        height(corner, through, SHORT)));
  }

  @ParameterizedTest
  @MethodSource("all")
  void cutEndsLeaveTheRingItsSymmetries(FriezeGroup group, Corner corner, Through through) throws InputException {
    DrawnBand band = draw(group, corner, through, false, 4, true, 23);
    assertEquals(CornerRule.ring(group, corner, through, false), moves(band, width(corner, through, LONG + 8),
        height(corner, through, SHORT + 8)));
  }

  @ParameterizedTest
  @MethodSource("all")
  void theSquareRingHasTheSymmetriesOfTheRuleAndNoOthers(FriezeGroup group, Corner corner, Through through)
      throws InputException {
    if (corner == Corner.BUTTED && through != Through.ROUND) {
      // Its level and upright sides never hold the same number of these tiles; not a quarter turn in any case.
      assertFalse(CornerRule.ring(group, corner, through, true).contains(RingMove.QUARTER_TURN));
      return;
    }
    int side = width(corner, through, LONG);
    assertEquals(CornerRule.ring(group, corner, through, true),
        moves(draw(group, corner, through, true, 0, true, 17), side, side));
  }

  @ParameterizedTest
  @EnumSource
  void theOtherHandIsNeededWhereTheRuleSaysSo(FriezeGroup group) throws InputException {
    DrawnBand band = draw(group, Corner.MIRRORED, Through.LEVEL, false, 0, true, 19);
    boolean more = !band.designs(1, 2).containsAll(band.designs(2, 2));
    assertEquals(CornerRule.judge(group, Corner.MIRRORED, false).otherHand(), more);
  }

  /** Against the operations of the group: a direction is lost by whatever turns the way round. */
  @ParameterizedTest
  @EnumSource
  void directionAndMirrorsFollowFromTheOperations(FriezeGroup group) {
    Set<Boolean> back = Set.copyOf(group.placements(1, 0, 1).stream().map(placed -> placed.xx() < 0).toList());
    assertEquals(!back.contains(true), CornerRule.hasDirection(group));
    assertEquals(group.placements(1, 0, 1).stream().anyMatch(placed -> placed.xx() < 0 && placed.mirrors()),
        CornerRule.mirrorsAcross(group));
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyVerdictHasItsReason(FriezeGroup group, Corner corner, Through through) {
    for (boolean cut : new boolean[] {false, true}) {
      assertTrue(CornerRule.judge(group, corner, cut).reason().length() > 60);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theCornersThatWorkAreThoseThatTheRuleLets(FriezeGroup group) {
    List<Corner> whole = CornerRule.working(group, false);
    assertEquals(CornerRule.mirrorsAcross(group), whole.contains(Corner.MITRED));
    assertTrue(whole.containsAll(List.of(Corner.TILE, Corner.TURNED, Corner.MIRRORED)));
    assertFalse(whole.contains(Corner.BUTTED));
    assertTrue(CornerRule.working(group, true).contains(Corner.MIRRORED));
  }

  private static DrawnBand draw(FriezeGroup group, Corner corner, Through through, boolean square, int cut, boolean swing,
      long seed) throws InputException {
    int width = width(corner, through, LONG + 2 * cut);
    int height = square ? width : height(corner, through, SHORT + 2 * cut);
    return new DrawnBand(group, corner, through, width, height, cut == 0 ? 0 : 0.5, swing, seed);
  }

  private static int width(Corner corner, Through through, int run) {
    return run + corners(corner, through, true);
  }

  private static int height(Corner corner, Through through, int run) {
    return run + corners(corner, through, false);
  }

  private static int corners(Corner corner, Through through, boolean level) {
    return switch (corner) {
      case MITRED -> 0;
      case BUTTED -> through == Through.ROUND ? DrawnBand.WIDTH
          : level == (through == Through.LEVEL) ? 0 : 2 * DrawnBand.WIDTH;
      default -> 2 * DrawnBand.WIDTH;
    };
  }

  private static Set<RingMove> moves(DrawnBand band, int width, int height) {
    Set<RingMove> moves = EnumSet.noneOf(RingMove.class);
    if (band.same(p -> new Vec(width - p.x(), height - p.y()))) {
      moves.add(RingMove.HALF_TURN);
    }
    if (width == height && band.same(p -> new Vec(width - p.y(), p.x()))) {
      moves.add(RingMove.QUARTER_TURN);
    }
    boolean upright = band.same(p -> new Vec(width - p.x(), p.y()));
    assertEquals(upright, band.same(p -> new Vec(p.x(), height - p.y())));
    if (upright) {
      moves.add(RingMove.MIDDLE_MIRRORS);
    }
    if (width == height && band.same(p -> new Vec(p.y(), p.x()))) {
      assertTrue(band.same(p -> new Vec(width - p.y(), width - p.x())));
      moves.add(RingMove.DIAGONAL_MIRRORS);
    }
    return moves;
  }
}
