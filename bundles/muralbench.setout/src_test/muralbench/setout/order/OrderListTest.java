// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.SetOutChecks;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Percentages are common practice; the products are worked out by hand. */
class OrderListTest {
  private static final Allowances COMMON = Allowances.commonPractice();

  private static PanelSpec panel(String id, int across, int up, BondSpec bond) {
    return new PanelSpec(id, "", "wall", "fixed", new TileSpec("T", 100, 100, 0, 0, -1), 0, 0,
        Contour.rectangle(0, 0, across * 100, up * 100), List.of(), bond, new OriginSpec.At(Vec.ZERO));
  }

  private static MuralSetOut mural(PanelSpec... panels) throws InputException {
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.MILLIMETRE, "interior-dry", List.of(panels));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE);
  }

  private static OrderLine grid(int across, int up, Allowances allowances) throws InputException {
    return OrderList.of(mural(panel("A", across, up, BondSpec.grid())), allowances).get(0);
  }

  /** A ring of 80 mm in a face of 160 mm: a disc of 160 - 2 x 80 mm and what a tile of 100 mm yields. */
  @Test
  void wedgesAreOrderedAsTheTileTheyAreCutFromAndALargeDiscForItself() throws InputException {
    BondSpec rings = new BondSpec("rings", 0, 0, Map.of("radius", "160 mm", "rings", "80 mm"));
    PanelSpec face = new PanelSpec("R", "", "wall", "fixed", new TileSpec("T", 100, 100, 0, 0, -1), 2, 0,
        Contour.circle(Vec.ZERO, 160), List.of(), rings, new OriginSpec.Balanced());
    MuralSetOut mural = mural(face);
    List<OrderLine> lines = OrderList.of(mural, COMMON);
    assertEquals(List.of("T", "T disc"), lines.stream().map(OrderLine::tile).toList());
    assertEquals(mural.pieces() - 1, lines.get(0).laid());
    assertEquals(List.of("ring.disc"), ringFindings(mural));
  }

  /** Eight wedges of 80 mm in a face of 160 mm span chords of some 120 mm. */
  @Test
  void wedgesThatTheTileDoesNotYieldAreFound() throws InputException {
    BondSpec rings = new BondSpec("rings", 0, 0, Map.of("radius", "160 mm", "rings", "80 mm", "pieces", "8"));
    PanelSpec face = new PanelSpec("R", "", "wall", "fixed", new TileSpec("T", 100, 100, 0, 0, -1), 2, 0,
        Contour.circle(Vec.ZERO, 160), List.of(), rings, new OriginSpec.Balanced());
    assertEquals(List.of("ring.blank", "ring.disc"), ringFindings(mural(face)).stream().sorted().toList());
  }

  private static List<String> ringFindings(MuralSetOut mural) {
    return SetOutChecks.findings(mural).stream().map(Finding::code).filter(code -> code.startsWith("ring")).toList();
  }

  /** 100 x 1.10 is 110.00000000000001 in binary arithmetic, which would be rounded up to 111. */
  @ParameterizedTest
  @CsvSource({"12, 8, 10, 106", "12, 8, 15, 111", "11, 8, 10, 97", "10, 10, 10, 110", "10, 10, 0, 100",
      "10, 10, 2.5, 103"})
  void addsSparesAndRoundsUpOnce(int across, int up, BigDecimal percent, int ordered) throws InputException {
    OrderLine line = grid(across, up, COMMON.withPercent("grid", percent));
    assertEquals(across * up, line.laid());
    assertEquals(ordered, line.ordered());
    assertEquals(ordered - across * up, line.spares());
  }

  @ParameterizedTest
  @CsvSource({"grid, 0, 10", "grid, 90, 10", "running, 0, 10", "grid, 45, 15", "diagonal, 0, 15", "herringbone, 0, 20",
      "herringbone, 45, 20", "hexagon, 0, 15"})
  void takesThePercentageOfTheBondAsItIsLaid(String kind, double rotation, int percent) {
    BondSpec bond = new BondSpec(kind, 0, rotation, Map.of());
    assertEquals(0, COMMON.percent(bond).compareTo(BigDecimal.valueOf(percent)));
  }

  @Test
  void fillsBoxes() throws InputException {
    OrderLine line = grid(12, 8, COMMON.withBox("T", 25));
    assertEquals(List.of(125, 5), List.of(line.ordered(), line.boxes()));
    assertEquals(0, grid(12, 8, COMMON.withBox("U", 25)).boxes());
    assertEquals(110, grid(10, 10, COMMON.withBox("T", 11)).ordered());
  }

  @Test
  void addsThePanelsBeforeItRounds() throws InputException {
    List<PanelSpec> panels = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      panels.add(panel("P" + i, 2, 1, BondSpec.grid()));
    }
    assertEquals(11, OrderList.of(mural(panels.toArray(PanelSpec[]::new)), COMMON).get(0).ordered());
  }

  @Test
  void ordersPartsOfABondApart() throws InputException {
    BondSpec octagon = new BondSpec("octagon", 0, 0, Map.of());
    List<OrderLine> lines = OrderList.of(mural(panel("A", 4, 4, octagon)), COMMON);
    assertEquals(List.of("T", "T dot"), lines.stream().map(OrderLine::tile).toList());
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> COMMON.withPercent("grid", BigDecimal.valueOf(-1)));
    assertThrows(IllegalArgumentException.class, () -> COMMON.withBox("T", 0));
  }
}
