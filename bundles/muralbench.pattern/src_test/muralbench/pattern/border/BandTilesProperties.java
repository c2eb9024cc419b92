// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Polygon;

/** What holds for the tiles of any band that closes: rectangles, an L and a U, every corner, one and three rows. */
class BandTilesProperties {
  private static final double NEAR = 1e-6;

  /** A band with its tiles. */
  record Laid(BandLayout layout, List<BorderTile> tiles) {}

  @Provide
  Arbitrary<Laid> bands() {
    return Combinators.combine(Arbitraries.integers().between(0, 2), Arbitraries.of(Corner.values()),
        Arbitraries.of(Through.values()), Arbitraries.doubles().between(900, 1600), Arbitraries.doubles().between(900, 1600),
        Arbitraries.doubles().between(50, 90), Arbitraries.doubles().between(30, 50), Arbitraries.integers().between(0, 15))
        .as(BandTilesProperties::laid).filter(Objects::nonNull);
  }

  /** A band that closes, or null: short mitred sides of an L may not. */
  private static Laid laid(int shape, Corner corner, Through through, double width, double height, double tile,
      double deep, int bits) {
    BandRow main = BandRow.of(tile, deep, 2);
    if (corner == Corner.TILE && bits >= 8) {
      main = main.corner(1.2 * deep);
    }
    BandRow listel = BandRow.plain(tile * 1.5, deep / 3);
    Permits permits = Permits.NONE.move(6, 6).ends(0.05).centre(deep, 2 * tile);
    boolean single = (bits & 1) == 0 || main.cornerSize() > deep;
    Border border = new Border(path(shape, width, height), single ? List.of(main) : List.of(listel, main, listel),
        corner, through, new JointRange(1.5, 3, 5), (bits & 2) == 0 ? permits : permits.scale(0.03));
    RowMotifs motifs = RowMotifs.of(Sequence.of(FriezeGroup.STEP, "reed"));
    try {
      List<BandLayout> layouts = ClosingSolver.solve(border, LengthUnit.MILLIMETRE).layouts();
      if (layouts.isEmpty()) {
        return null;
      }
      BandLayout layout = layouts.get((bits & 4) == 0 ? 0 : layouts.size() - 1);
      return new Laid(layout, BandTiles.lay(layout, single ? List.of(motifs)
          : List.of(RowMotifs.plain(), motifs, RowMotifs.plain())));
    } catch (InputException refused) {
      throw new AssertionError(refused);
    }
  }

  private static BandPath path(int shape, double width, double height) {
    List<Vec> corners = switch (shape) {
      case 0 -> List.of(new Vec(0, 0), new Vec(width, 0), new Vec(width, height), new Vec(0, height));
      case 1 -> List.of(new Vec(0, 0), new Vec(width, 0), new Vec(width, height / 2), new Vec(width / 2, height / 2),
          new Vec(width / 2, height), new Vec(0, height));
      default -> List.of(new Vec(0, 0), new Vec(2 * width, 0), new Vec(2 * width, height), new Vec(1.4 * width, height),
          new Vec(1.4 * width, height / 2), new Vec(0.6 * width, height / 2), new Vec(0.6 * width, height), new Vec(0, height));
    };
    try {
      return BandPath.polygon(corners);
    } catch (InputException refused) {
      throw new AssertionError(refused);
    }
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void tilesAreAJointApart(@ForAll("bands") Laid laid) {
    List<Polygon> faces = Faces.of(laid.tiles());
    for (int i = 0; i < faces.size(); i++) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k < faces.size(); k++) {
        nearest = k == i ? nearest : Math.min(nearest, faces.get(i).distance(faces.get(k)));
      }
      assertEquals(laid.layout().joint(), nearest, NEAR);
    }
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void neighboursInARowAreAJointApart(@ForAll("bands") Laid laid) {
    List<BorderTile> tiles = laid.tiles();
    for (int i = 0; i < tiles.size(); i++) {
      int row = tiles.get(i).row();
      List<BorderTile> ring = tiles.stream().filter(tile -> tile.row() == row).toList();
      BorderTile next = ring.get(tiles.get(i).number() % ring.size());
      assertEquals(laid.layout().joint(), Faces.of(tiles.get(i).face()).distance(Faces.of(next.face())), NEAR);
    }
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void everythingLiesBetweenTheMovedPathAndTheField(@ForAll("bands") Laid laid) {
    Polygon outer = Faces.of(laid.layout().border().path().movedIn(laid.layout().move()).contour());
    Polygon field = Faces.of(laid.layout().field().orElseThrow());
    for (Polygon face : Faces.of(laid.tiles())) {
      assertTrue(outer.buffer(NEAR).covers(face));
      assertTrue(field.distance(face) >= laid.layout().joint() - NEAR);
    }
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void facesAndJointsMakeUpTheBand(@ForAll("bands") Laid laid) {
    BandLayout layout = laid.layout();
    List<BandRow> rows = layout.border().rows();
    double area = 0;
    for (int row = 0; row < rows.size(); row++) {
      double width = rows.get(row).width();
      area += layout.rowPath(row).contour().area() - layout.rowPath(row).movedIn(width).contour().area();
      for (RunLayout run : layout.runs()) {
        area -= run.row() == row ? run.joints() * run.joint() * width : 0;
      }
      if (layout.border().corner() == Corner.TILE) {
        // A larger corner tile stands out of the row into the field; at an inner corner on all of its way.
        double size = rows.get(row).cornerSize();
        area += layout.border().path().corners().size() * (size * size - width * width);
        long convex = IntStream.range(0, layout.border().path().corners().size())
            .filter(i -> layout.border().path().turn(i) == BandEnd.CONVEX).count();
        area -= convex * 2 * (size - width) * width;
      }
    }
    assertEquals(area, Faces.area(laid.tiles()), 1e-9 * area);
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void tilesAreCountedClockwise(@ForAll("bands") Laid laid) {
    List<Vec> middles = new ArrayList<>();
    laid.tiles().stream().filter(tile -> tile.row() == 1).forEach(tile -> middles.add(tile.face().box().centre()));
    assertTrue(Contour.polygon(middles).signedArea() < 0);
    Vec first = middles.get(0);
    assertTrue(first.x() < 100 && first.y() < 100 + 95, first::toString);
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void theDrawingOfATileCoversItsFace(@ForAll("bands") Laid laid) {
    for (BorderTile tile : laid.tiles()) {
      boolean upright = tile.turn().quarters() % 2 == 1;
      double width = upright ? tile.cell().height() : tile.cell().width();
      double height = upright ? tile.cell().width() : tile.cell().height();
      Isometry placed = tile.turn().on(tile.cell());
      Box drawn = Box.of(placed.of(new Vec(0, 0)), placed.of(new Vec(width, height)));
      assertTrue(drawn.grown(NEAR).holds(tile.cell()) && tile.cell().grown(NEAR).holds(drawn));
      assertTrue(drawn.grown(NEAR).holds(tile.face().box()));
      assertEquals(tile.turn().mirrored(), placed.mirrors());
    }
  }
}
