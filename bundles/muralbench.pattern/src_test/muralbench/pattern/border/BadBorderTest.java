// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static muralbench.pattern.border.Bands.INCH;
import static muralbench.pattern.border.Bands.joints;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is no band is refused, with the place and the remedy. */
class BadBorderTest {
  private static final JointRange RANGE = joints(0.0625, 0.125, 0.1875);
  private static final BandRow SIX = BandRow.of(6 * INCH, 6 * INCH, 1);

  static Stream<Arguments> bad() {
    return Stream.of(bad("/sides/0", "corners alone take", panel(48, 12, SIX, Corner.TILE)),
        bad("/sides/1", "one repeat takes", panel(30, 48, BandRow.of(6 * INCH, 6 * INCH, 4), Corner.TURNED)),
        bad("/joint", "wider than the widest", panel(48, 48, SIX, Corner.TILE).joint(joints(0.2, 0.2, 0.1))),
        bad("/joint/preferred", "not between", panel(48, 48, SIX, Corner.TILE).joint(joints(0.1, 0.3, 0.2))),
        bad("/joint/min", "not be below 0", panel(48, 48, SIX, Corner.TILE).joint(joints(-0.1, 0.1, 0.2))),
        bad("/joint/max", "as long as a border tile", panel(48, 48, SIX, Corner.TILE).joint(joints(1, 2, 6))),
        bad("/rows/0/length", "above 0", panel(48, 48, BandRow.of(-6, 6, 1), Corner.TILE)),
        bad("/rows/0/width", "above 0", panel(48, 48, BandRow.of(6, 0, 1), Corner.TILE)),
        bad("/rows/0/length", "not a number", panel(48, 48, BandRow.of(Double.NaN, 6, 1), Corner.TILE)),
        bad("/rows/0/repeat", "not possible", panel(48, 48, BandRow.of(6, 6, 0), Corner.TILE)),
        bad("/rows/0/cornerSize", "does not fill", panel(48, 48, SIX.corner(5 * INCH), Corner.TILE)),
        bad("/rows/0/cornerSize", "larger than its row", panel(48, 48, SIX.corner(7 * INCH), Corner.TURNED)),
        bad("/rows/0/length", "too short to be mitred", panel(48, 48, BandRow.of(50, 60, 1), Corner.MITRED)),
        bad("/permits/moveIn", "not be below 0", panel(48, 48, SIX, Corner.TILE).permits(Permits.NONE.move(-1, 0))),
        bad("/permits/scale", "no share", panel(48, 48, SIX, Corner.TILE).permits(Permits.NONE.scale(1))),
        bad("/permits/endShare", "no share", panel(48, 48, SIX, Corner.TILE).permits(Permits.NONE.ends(1.5))),
        bad("/permits/centreMin", "no centre piece", panel(48, 48, SIX, Corner.TILE).permits(Permits.NONE.centre(9, 8))),
        bad("/rows", "no row", new Border(Bands.panel(48, 48), List.of(), Corner.TILE, Through.LEVEL, RANGE, Permits.NONE)));
  }

  private static Arguments bad(String place, String problem, Border border) {
    return Arguments.of(place, problem, border);
  }

  private static Border panel(double width, double height, BandRow row, Corner corner) {
    return Border.of(Bands.panel(width, height), row, corner, RANGE, Permits.NONE);
  }

  @ParameterizedTest
  @MethodSource("bad")
  void isRefusedWithItsPlace(String place, String problem, Border border) {
    InputException refused = assertThrows(InputException.class, () -> ClosingSolver.solve(border, LengthUnit.INCH));
    assertEquals(place, refused.place());
    assertTrue(refused.problem().contains(problem), refused.getMessage());
    assertTrue(refused.remedy().endsWith("."), refused.getMessage());
  }

  @Test
  void theSideThatIsTooShortIsNamed() {
    InputException refused = assertThrows(InputException.class,
        () -> ClosingSolver.solve(panel(11, 48, SIX, Corner.TILE), LengthUnit.INCH));
    assertTrue(refused.problem().startsWith("the top side is 11 in long, but its corners alone take 12-1/8 in"),
        refused.getMessage());
  }

  @Test
  void aSlantingOutlineIsRefused() {
    List<Vec> corners = List.of(new Vec(0, 0), new Vec(900, 1), new Vec(900, 700), new Vec(0, 700));
    assertEquals("/corners/0", assertThrows(InputException.class, () -> BandPath.polygon(corners)).place());
  }

  @Test
  void aRunThatIsAslantIsRefused() {
    Border border = Border.of(BandPath.straight(Vec.ZERO, new Vec(900, 30)), SIX, Corner.TILE, RANGE, Permits.NONE);
    InputException refused = assertThrows(InputException.class, () -> ClosingSolver.solve(border, LengthUnit.INCH));
    assertEquals("/sides/0", refused.place());
  }

  @Test
  void anOutlineThatCrossesItselfIsRefused() {
    List<Vec> corners = List.of(new Vec(0, 0), new Vec(900, 0), new Vec(900, 700), new Vec(300, 700), new Vec(300, -200),
        new Vec(0, -200));
    assertEquals("/corners", assertThrows(InputException.class, () -> BandPath.polygon(corners)).place());
  }
}
