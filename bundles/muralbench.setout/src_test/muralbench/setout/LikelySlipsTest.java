// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.Finding;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** Findings about what is mostly a slip of the hand; all common practice, no source. */
class LikelySlipsTest {
  private static final double IN = 25.4;
  private static final TileSpec TILE = new TileSpec("T", 6 * IN, 6 * IN, 9.5, 0, -1);

  @Test
  void aJointGivenInTheWrongUnitIsVeryWide() throws Exception {
    assertEquals("A", only("joint.wide", panel("A", "wall", 3, rectangle(0, 36, 72, 48))).place());
    assertEquals(List.of(), of("joint.wide", panel("A", "wall", 0.5, rectangle(0, 36, 72, 48))));
  }

  @Test
  void openingsInOnePlaceAreTold() throws Exception {
    PanelSpec twice = panel("A", "wall", 0.125, rectangle(0, 36, 72, 48), opening("A1", 20, 42, 3, 5),
        opening("A2", 22, 44, 3, 5));
    PanelSpec apart = panel("A", "wall", 0.125, rectangle(0, 36, 72, 48), opening("A1", 20, 42, 3, 5),
        opening("A2", 23, 42, 3, 5));

    assertEquals("A2", only("openings.overlap", twice).place());
    assertEquals(List.of(), of("openings.overlap", apart));
  }

  @Test
  void aWallPanelBelowTheFloorIsTold() throws Exception {
    assertTrue(only("panel.below", panel("A", "wall", 0.125, rectangle(0, -24, 72, 48))).message().contains("24 in"));
    assertEquals(List.of(), of("panel.below", panel("A", "floor", 0.125, rectangle(0, -24, 72, 48))));
    assertEquals(List.of(), of("panel.below", panel("A", "wall", 0.125, rectangle(0, 0, 72, 48))));
  }

  @Test
  void aFloorAndAWallDoNotOverlap() throws Exception {
    PanelSpec floor = panel("F", "floor", 0.125, rectangle(0, 0, 72, 48));
    PanelSpec wall = panel("W", "wall", 0.125, rectangle(0, 0, 72, 48));
    PanelSpec second = panel("V", "wall", 0.125, rectangle(0, 0, 72, 48));

    assertEquals(List.of(), of("panels.overlap", floor, wall));
    assertEquals(1, of("panels.overlap", wall, second).size());
  }

  @Test
  void aThinWebUnderAnOutletIsTold() throws Exception {
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", TILE, IN / 8, 0, rectangle(0, 0, 24.375, 24.375),
        List.of(opening("A1", 8, 6.4375, 2.25, 3.5)), BondSpec.grid(),
        new OriginSpec.At(Vec.ZERO));

    Finding finding = only("cut.web", panel);
    assertTrue(finding.message().contains("5/16 in: A-02-02"), finding.message());
    assertEquals(List.of("A-02-02"), finding.values().get("keys"));
  }

  @Test
  void aWebOfHalfAnInchWillDo() throws Exception {
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", TILE, IN / 8, 0, rectangle(0, 0, 24.375, 24.375),
        List.of(opening("A1", 8, 6.625, 2.25, 3.5)), BondSpec.grid(),
        new OriginSpec.At(Vec.ZERO));

    assertEquals(List.of(), of("cut.web", panel));
  }

  private static PanelSpec panel(String id, String surface, double joint, Contour outline, OpeningSpec... openings) {
    return new PanelSpec(id, "", surface, "fixed", TILE, joint * IN, 0, outline, List.of(openings), BondSpec.grid(),
        new OriginSpec.Balanced());
  }

  private static OpeningSpec opening(String id, double x, double y, double width, double height) {
    return new OpeningSpec(id, "outlet", rectangle(x, y, width, height));
  }

  private static Contour rectangle(double x, double y, double width, double height) {
    return Contour.rectangle(x * IN, y * IN, width * IN, height * IN);
  }

  private static List<Finding> of(String code, PanelSpec... panels) throws Exception {
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panels));
    return SetOutChecks.findings(SetOut.mural(mural, BondRegistry.standard(), Progress.NONE)).stream()
        .filter(finding -> finding.code().equals(code)).toList();
  }

  private static Finding only(String code, PanelSpec... panels) throws Exception {
    List<Finding> findings = of(code, panels);
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0);
  }
}
