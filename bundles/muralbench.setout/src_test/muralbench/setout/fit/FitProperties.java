// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.Walls;
import muralbench.setout.bond.BondRegistry;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds for the choices of any rectangle; sizes in sixteenths of an inch. */
class FitProperties {
  @Property(tries = 60)
  void whatClaimsNoCutsHasOnlyWholeFaces(@ForAll @IntRange(min = 200, max = 900) int width,
      @ForAll @IntRange(min = 200, max = 900) int height, @ForAll @IntRange(min = 1, max = 4) int joint)
      throws Exception {
    for (Alternative one : choices(width, height, joint)) {
      PanelSetOut again = SetOut.panel(one.spec(), BondRegistry.standard(), Progress.NONE);
      double face = one.spec().tile().width() * one.spec().tile().height();
      boolean whole = again.pieces().stream().allMatch(piece -> Math.abs(piece.area() - face) < 1e-6);
      assertEquals(whole, one.noCuts());
      assertEquals(whole, one.consequence().startsWith("Whole tiles only"), one.consequence());
      assertEquals(whole, one.smallestCut().isEmpty());
    }
  }

  @Property(tries = 60)
  void noChoiceComesBeforeOneWithLessHarm(@ForAll @IntRange(min = 200, max = 900) int width,
      @ForAll @IntRange(min = 200, max = 900) int height, @ForAll @IntRange(min = 1, max = 4) int joint)
      throws Exception {
    List<Alternative> all = choices(width, height, joint);
    for (int i = 1; i < all.size(); i++) {
      Alternative before = all.get(i - 1);
      Alternative after = all.get(i);
      assertTrue(before.smallCuts() <= after.smallCuts());
      assertTrue(before.smallCuts() < after.smallCuts() || width(before) >= width(after) - 1e-6);
    }
  }

  /** Joints from 1/16 in (ANSI A108.02 §4.3.8) to 1/2 in, the most that wall grouts are made for (common practice). */
  @Property(tries = 60)
  void jointsAndMarginsStayInTheirRange(@ForAll @IntRange(min = 200, max = 900) int width,
      @ForAll @IntRange(min = 200, max = 900) int height, @ForAll @IntRange(min = 1, max = 4) int joint)
      throws Exception {
    for (Alternative one : choices(width, height, joint)) {
      assertTrue(one.joint() > 1.5874 && one.joint() < 12.7001, () -> "joint " + one.joint());
      assertTrue(one.spec().edgeGap() <= 3 * 25.4 + 1e-6, () -> "margin " + one.spec().edgeGap());
      assertTrue(one.kind() != Alternative.Kind.EDGE || one.spec().edgeGap() >= one.joint() - 1e-6);
    }
  }

  private static double width(Alternative one) {
    return one.smallestCut().orElse(Double.POSITIVE_INFINITY);
  }

  private static List<Alternative> choices(int width, int height, int joint) throws Exception {
    Walls walls = Walls.rectangle(3, 7, width / 16.0, height / 16.0).tiles(6, 6, joint / 16.0);
    return FitAlternatives.of(walls.spec(), BondRegistry.standard(), LengthUnit.INCH, Progress.NONE);
  }
}
