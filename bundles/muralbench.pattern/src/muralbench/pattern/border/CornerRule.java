// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.base.Messages;
import muralbench.pattern.border.CornerVerdict.Course;
import muralbench.pattern.symmetry.FriezeGroup;

/**
 * Which corners keep the motif of a band going, by the symmetry of its run.
 *
 * <p>Walked clockwise, every side looks the same from within: the way goes from left to right, the outer edge is
 * above. Be f(x, y) the drawing of the run, x from the start of a repeat and y from the outer edge. With whole
 * repeats each side shows f from 0 at its start to a whole number of repeats at its end.
 * <ul>
 * <li>{@link Corner#TURNED}, {@link Corner#TILE}: the run ends with the edge f(0, y), and the next begins with the
 * same edge, read from the outer side both times. A corner tile on which every line swings round the inner corner
 * meets both. If the ends are cut by e, the edges are f(e, y) and f(-e, y): equal only if the run has a mirror across
 * it.
 * <li>{@link Corner#MITRED}: on the diagonal the depth y lies y before the end and y after the start, so f(-y, y) has
 * to equal f(y, y): a mirror across the run, at the start of the repeat.
 * <li>{@link Corner#BUTTED}: the end f(0, y) of one side stands against the inner edge f(y, width) of the other; no
 * symmetry of a band makes an end equal to an edge.
 * <li>{@link Corner#MIRRORED}: the next side is f backwards, so that the corner tile meets the same edge twice,
 * whatever f is. Without a mirror across the run, a direction turns round at each corner: the motif meets head to
 * head at one corner and parts at the next. A motif without direction changes its hand instead, as S to Z.
 * </ul>
 * Half turns and glides of the run, and its mirror along the run, swap the inner and the outer edge; none of
 * them can be a symmetry of the whole ring. All of this follows from the geometry; there is no published rule.
 */
public final class CornerRule {
  private static final Messages TEXTS = Messages.of(CornerRule.class);

  private CornerRule() {}

  /** Whether the run of a group has mirrors across it. */
  public static boolean mirrorsAcross(FriezeGroup group) {
    return group == FriezeGroup.SIDLE || group == FriezeGroup.SPINNING_SIDLE || group == FriezeGroup.SPINNING_JUMP;
  }

  /** Whether the run of a group has a direction: it looks different walked the other way. */
  public static boolean hasDirection(FriezeGroup group) {
    return group == FriezeGroup.HOP || group == FriezeGroup.STEP || group == FriezeGroup.JUMP;
  }

  /**
   * What a corner does to a motif.
   *
   * @param group the symmetry of the run; the repeat starts at a mirror across the run if there is one, as in {@link
   *     Sequence#of}
   * @param cutEnds whether the sides end with cut tiles
   */
  public static CornerVerdict judge(FriezeGroup group, Corner corner, boolean cutEnds) {
    boolean mirror = mirrorsAcross(group);
    return switch (corner) {
      case TILE -> cutEnds && !mirror ? verdict(Course.BROKEN, "tile.cut")
          : verdict(Course.BY_DRAWING, "tile");
      case TURNED -> cutEnds && !mirror ? verdict(Course.BROKEN, "turned.cut")
          : verdict(Course.CONTINUOUS, hasDirection(group) ? "turned.direction" : "turned");
      case MITRED -> mirror ? verdict(Course.CONTINUOUS, "mitred.mirror") : verdict(Course.BROKEN, "mitred");
      case BUTTED -> verdict(Course.BROKEN, "butted");
      case MIRRORED -> mirrored(group);
    };
  }

  /** The corners at which a motif goes on, those first that need no drawing of their own and no other hand. */
  public static List<Corner> working(FriezeGroup group, boolean cutEnds) {
    return Stream.of(Corner.values()).filter(corner -> judge(group, corner, cutEnds).course() != Course.BROKEN)
        .sorted(Comparator.comparing((Corner corner) -> judge(group, corner, cutEnds).course())
            .thenComparing(corner -> judge(group, corner, cutEnds).otherHand())
            .thenComparing(corner -> !judge(group, corner, cutEnds).keepsDirection())).toList();
  }

  private static CornerVerdict mirrored(FriezeGroup group) {
    // A mirror image of a run with a glide is laid with the tiles it has, turned half round; so is one whose tiles
    // are their own mirror images.
    boolean otherHand = group == FriezeGroup.HOP || group == FriezeGroup.SPINNING_HOP;
    String key = mirrorsAcross(group) ? "same" : group.name().toLowerCase(Locale.ROOT);
    return new CornerVerdict(Course.CONTINUOUS, !hasDirection(group), otherHand, TEXTS.text("corner.mirrored." + key));
  }

  private static CornerVerdict verdict(Course course, String key) {
    return new CornerVerdict(course, true, false, TEXTS.text("corner." + key));
  }

  /**
   * What leaves a whole band round a rectangle as it is; of a corner tile with its own motif it is taken that this is
   * the same seen in its diagonal.
   *
   * @param through which sides run through; of no account save at butted corners
   * @param square whether all four sides are equal
   */
  public static Set<RingMove> ring(FriezeGroup group, Corner corner, Through through, boolean square) {
    boolean round = corner == Corner.BUTTED && through == Through.ROUND;
    boolean mirrors = mirrorsAcross(group) && !round;
    boolean level = corner == Corner.BUTTED && !round;
    boolean flips = corner == Corner.MIRRORED && !mirrors;
    Set<RingMove> moves = EnumSet.of(RingMove.HALF_TURN);
    if (mirrors) {
      moves.add(RingMove.MIDDLE_MIRRORS);
    }
    if (square && !level && !flips) {
      moves.add(RingMove.QUARTER_TURN);
    }
    if (square && !level && (flips || mirrors)) {
      moves.add(RingMove.DIAGONAL_MIRRORS);
    }
    return moves;
  }
}
