// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels of 6 in tile with joints of 1/8 in. */
class PanelGapTest {
  private static final double IN = Walls.IN;

  private static PanelSpec panel(String id, double x, double y, double width, double height, OriginSpec origin) {
    return new PanelSpec(id, "", "wall", "fixed", Walls.tile(6, 6), IN / 8, 0,
        Contour.rectangle(x * IN, y * IN, width * IN, height * IN), List.of(), BondSpec.grid(), origin);
  }

  private static PanelSpec panel(String id, double x, double y, double width, double height) {
    return panel(id, x, y, width, height, new OriginSpec.At(new Vec(x * IN, y * IN)));
  }

  private static MuralSetOut setOut(PanelSpec... panels) throws InputException {
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panels));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE);
  }

  private static List<String> gaps(PanelSpec... panels) throws InputException {
    return PanelGap.of(setOut(panels).panels()).stream().map(gap -> gap.left().spec().id() + gap.right().spec().id() + " "
        + Math.round(gap.across() / IN * 100) + " " + Math.round(gap.rise() / IN * 100)).toList();
  }

  private static OptionalDouble step(PanelSpec left, PanelSpec right) throws InputException {
    return PanelGap.of(setOut(left, right).panels()).get(0).step();
  }

  private static List<String> findings(PanelSpec... panels) throws InputException {
    return SetOutChecks.findings(setOut(panels)).stream().filter(finding -> finding.code().equals("panels.level"))
        .map(Finding::message).toList();
  }

  @Test
  void gapsLieBetweenNeighboursWhateverTheStory() throws InputException {
    assertEquals(List.of("BC 150 -200", "AB 500 400"),
        gaps(panel("C", 71.5, 38, 20, 40), panel("B", 45, 40, 25, 40), panel("A", 0, 36, 40, 40)));
  }

  @Test
  void panelsAboveEachOtherAreNoNeighbours() throws InputException {
    assertEquals(List.of(), gaps(panel("A", 0, 0, 40, 40), panel("B", 10, 40, 40, 40), panel("C", 60, 80, 40, 40)));
  }

  @Test
  void panelsThatTouchHaveNoGap() throws InputException {
    assertEquals(List.of("AB 0 0"), gaps(panel("A", 0, 0, 40, 40), panel("B", 40, 0, 40, 40)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "2, 2", "6.125, 0", "5, -1.125", "-4, 2.125"})
  void coursesAreOutOfLineByWhatIsLeftOfWholeCourses(double rise, double step) throws InputException {
    PanelSpec left = panel("A", 0, 36, 40, 40);
    assertEquals(step * IN, step(left, panel("B", 50, 36 + rise, 40, 40)).getAsDouble(), 1e-6);
  }

  @Test
  void coursesOfAnotherHeightAreNotCompared() throws InputException {
    PanelSpec right = panel("B", 50, 36, 40, 40);
    PanelSpec high = new PanelSpec("B", "", "wall", "fixed", Walls.tile(6, 4), IN / 8, 0, right.outline(), List.of(),
        BondSpec.grid(), right.origin());
    assertTrue(step(panel("A", 0, 36, 40, 40), high).isEmpty());
    PanelSpec askew = new PanelSpec("B", "", "wall", "fixed", Walls.tile(6, 6), IN / 8, 0, right.outline(), List.of(),
        new BondSpec("diagonal", 0, 0, Map.of()), new OriginSpec.Balanced());
    assertTrue(step(panel("A", 0, 36, 40, 40), askew).isEmpty());
  }

  /** 24-1/2 in are four modules of 6-1/8 in. */
  @Test
  void gapsInAGridAreMeasuredInModules() throws InputException {
    OriginSpec start = new OriginSpec.Balanced();
    List<PanelSpec> both = List.of(panel("A", 0, 36, 40, 40, start), panel("B", 64.5, 36, 40, 40, start));
    OriginSpec shared = new OriginSpec.Shared(start, both);
    PanelGap gap = PanelGap.of(setOut(both.get(0).withOrigin(shared), both.get(1).withOrigin(shared)).panels()).get(0);
    assertEquals(4, gap.modules().getAsDouble(), 1e-9);
    assertEquals(0, gap.step().getAsDouble(), 1e-9);
    assertTrue(PanelGap.of(setOut(both.get(0), both.get(1)).panels()).get(0).modules().isEmpty());
  }

  /** The lowest courses are cut to (47 - 36 - 7/8) / 2 = 5-1/16 and (40 - 30 - 6/8) / 2 = 4-5/8 in. */
  @Test
  void neighboursOfOneTileKeepTheirCoursesInLine() throws InputException {
    PanelSpec left = panel("A", 0, 36, 40, 47, new OriginSpec.Balanced());
    PanelSpec right = panel("B", 50, 36, 40, 40, new OriginSpec.Balanced());
    assertEquals(List.of("The courses of panels A and B, which stand side by side in one tile, are out of line by 7/16 in."),
        findings(left, right));
    assertEquals(List.of(), findings(left, right.withOrigin(new OriginSpec.Level(left))));
  }

  @ParameterizedTest
  @CsvSource({"50, 38, 40, 6, 0.125", "90, 36, 40, 6, 0.125", "50, 36, 40, 5, 0.125", "50, 36, 40, 6, 0.25"})
  void panelsThatDoNotAdjoinNeedNoLevelLine(double x, double y, double height, double tile, double joint)
      throws InputException {
    PanelSpec right = new PanelSpec("B", "", "wall", "fixed", Walls.tile(tile, tile), joint * IN, 0,
        Contour.rectangle(x * IN, y * IN, 40 * IN, height * IN), List.of(), BondSpec.grid(), new OriginSpec.Balanced());
    assertEquals(List.of(), findings(panel("A", 0, 36, 40, 47, new OriginSpec.Balanced()), right));
  }
}
