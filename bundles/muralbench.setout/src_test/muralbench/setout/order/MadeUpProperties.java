// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.BondSpec;
import muralbench.setout.FaceSide;
import muralbench.setout.MakingSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class MadeUpProperties {
  private static final double ROUNDING = 1e-5;

  /** Panels with an arch and a window in four bonds, painted after cutting. */
  @Provide
  Arbitrary<PanelSetOut> panels() {
    return Arbitraries.randomValue(MadeUpProperties::panel);
  }

  private static PanelSetOut panel(Random random) {
    double wide = 500 + random.nextInt(700);
    double high = 300 + random.nextInt(500);
    Contour outline = random.nextBoolean() ? Contour.rectangle(0, 0, wide, high)
        : Contour.polygon(List.of(Vec.ZERO, new Vec(wide, 0), new Vec(wide, high), new Vec(wide / 3, high * 1.4)));
    OpeningSpec window = new OpeningSpec("A1", "window",
        Contour.rectangle(wide / 3, high / 4, 20 + random.nextInt(150), 20 + random.nextInt(100)));
    BondSpec bond = List.of(BondSpec.grid(), new BondSpec("running", 1.0 / 3, 0, Map.of()),
        new BondSpec("diagonal", 0, 0, Map.of()), new BondSpec("herringbone", 0, 0, Map.of())).get(random.nextInt(4));
    Set<FaceSide> sides = EnumSet.noneOf(FaceSide.class);
    random.ints(random.nextInt(5), 0, 4).forEach(side -> sides.add(FaceSide.values()[side]));
    PanelSpec spec = new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", 148, 73, 0, 0, -1), 2, 0, outline,
        List.of(window), bond, new OriginSpec.At(new Vec(random.nextInt(100), random.nextInt(100))));
    try {
      return SetOut.panel(spec.withMaking(new MakingSpec(true, random.nextInt(4), sides)), BondRegistry.standard(),
          Progress.NONE);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  @Property(tries = 60)
  void everyPieceComesFromOneTile(@ForAll("panels") PanelSetOut panel) {
    List<String> made = MadeUp.of(panel).tiles().stream().flatMap(tile -> tile.pieces().stream()).map(MadePiece::key)
        .sorted().toList();
    assertEquals(panel.pieces().stream().map(Piece::key).sorted().toList(), made);
  }

  @Property(tries = 60)
  void theCountLiesBetweenTheLeastByAreaAndOneForEachCell(@ForAll("panels") PanelSetOut panel) {
    MadeUp made = MadeUp.of(panel);
    made.counts().forEach((tile, count) -> assertTrue(count >= made.least().get(tile), made.counts() + " " + made.least()));
    assertTrue(made.tiles().size() <= panel.pieces().stream().map(Piece::cell).distinct().count());
    assertEquals(made.tiles().size(), panel.tilesToOrder());
  }

  @Property(tries = 60)
  void piecesOfATileLieOnItAKerfApart(@ForAll("panels") PanelSetOut panel) {
    double kerf = panel.spec().making().kerf();
    for (MadeTile tile : MadeUp.of(panel).tiles()) {
      Box face = new Box(0, 0, tile.width(), tile.height()).grown(ROUNDING);
      assertTrue(tile.pieces().stream().allMatch(piece -> face.holds(piece.place())), tile::toString);
      assertTrue(tile.asLaid() || apart(tile.pieces(), kerf), tile::toString);
    }
  }

  /** The rectangle of a piece on the tile has the measures of the piece as it is drawn. */
  @Property(tries = 30)
  void piecesKeepTheirMeasures(@ForAll("panels") PanelSetOut panel) {
    Map<String, Piece> pieces = panel.pieces().stream().collect(Collectors.toMap(Piece::key, Function.identity()));
    for (MadeTile tile : MadeUp.of(panel).tiles()) {
      double areas = tile.pieces().stream().mapToDouble(piece -> pieces.get(piece.key()).area()).sum();
      assertTrue(areas <= tile.width() * tile.height() + ROUNDING, tile::toString);
      for (MadePiece made : tile.pieces()) {
        double area = pieces.get(made.key()).area();
        assertTrue(area <= made.place().width() * made.place().height() * (1 + ROUNDING), made::toString);
      }
    }
  }

  private static boolean apart(List<MadePiece> pieces, double kerf) {
    return pieces.stream().allMatch(one -> pieces.stream()
        .noneMatch(two -> one != two && two.place().meets(one.place().grown(kerf - ROUNDING))));
  }
}
