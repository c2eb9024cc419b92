// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Panels of any bond, laid from anywhere, repeated anywhere: every piece is there again, or its mirror image. */
class RepeatedPanelProperties {
  private static final List<String[]> BONDS = List.of(new String[] {"grid", "6", "4", ""},
      new String[] {"diagonal", "6", "6", "angle=30"}, new String[] {"herringbone", "8", "4", ""},
      new String[] {"herringbone", "8", "4", "angle=45"}, new String[] {"basket", "8.125", "4", ""},
      new String[] {"hexagon", "6", "6", "point=side"}, new String[] {"octagon", "6", "6", ""},
      new String[] {"two-size", "4", "4", ""}, new String[] {"three-size", "4", "4", ""},
      new String[] {"table", "3", "3", "cells=0 0 3 1/0 1 1 1/1 1 2 1;repeat=3 0/0 2"},
      new String[] {"rings", "6", "6", "radius=30 in;rings=5 in, 5 in, 5 in, 5 in"});

  private static PanelSpec panel(int bond, int turn, int x, int y, int width, int height) {
    String[] kind = BONDS.get(bond);
    return Walls.outline(Contour.polygon(List.of(new Vec(0, 800), new Vec(width, 800), new Vec(width, 700.0 + height),
        new Vec(width * 0.4, 800.0 + height), new Vec(0, 600.0 + height))))
        .tiles(Double.parseDouble(kind[1]), Double.parseDouble(kind[2]), 0.125).bond(kind[0], 0, turn).setting(kind[3])
        .opening(Contour.rectangle(width * 0.2, 950, 83, 59)).opening(Contour.circle(new Vec(width * 0.6, 1000), 41))
        .from(x / Walls.IN, y / Walls.IN).spec();
  }

  private static List<PanelSetOut> both(PanelSpec panel, Transfer to) throws InputException {
    List<OpeningSpec> openings = panel.openings().stream()
        .map(opening -> new OpeningSpec("B-" + opening.id(), opening.kind(), to.of(opening.outline()))).toList();
    PanelSpec repeat = new PanelSpec("B", "", "wall", "fixed", panel.tile(), panel.joint(), panel.edgeGap(),
        to.of(panel.outline()), openings, panel.bond(), new OriginSpec.Repeated(panel, to));
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panel, repeat));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE).panels();
  }

  /** Kind, holes, area and box of every piece, as often as they are there. */
  private static Map<String, Integer> pieces(PanelSetOut panel, Transfer back) {
    Map<String, Integer> pieces = new TreeMap<>();
    for (Piece piece : panel.pieces()) {
      Box box = piece.box();
      Vec one = back.of(new Vec(box.minX(), box.minY()));
      Vec other = back.of(new Vec(box.maxX(), box.maxY()));
      String text = piece.kind() + " " + piece.holes().size() + " " + hundredths(piece.area()) + " "
          + hundredths(Math.min(one.x(), other.x())) + " " + hundredths(one.y()) + " " + hundredths(box.width()) + " "
          + hundredths(box.height());
      pieces.merge(text, 1, Integer::sum);
    }
    return pieces;
  }

  private static long hundredths(double value) {
    return Math.round(value * 100 + 0.0123);
  }

  @Property(tries = 60)
  void everyPieceIsThereAgain(@ForAll @IntRange(min = 0, max = 10) int bond, @ForAll @IntRange(min = 0, max = 359) int turn,
      @ForAll @IntRange(min = -200, max = 900) int x, @ForAll @IntRange(min = 700, max = 1300) int y,
      @ForAll @IntRange(min = 500, max = 1100) int width, @ForAll boolean mirrored) throws Exception {
    PanelSpec panel = panel(bond, turn, x, y, width, 640);
    Transfer to = Transfer.of(panel.outline().box(), new Vec(2000, 300), mirrored);
    Transfer back = Transfer.of(to.of(panel.outline()).box(), new Vec(0, 800), mirrored);
    List<PanelSetOut> both = laid(panel, to);
    assertEquals(pieces(both.get(0), new Transfer(false, Vec.ZERO)), pieces(both.get(1), back));
    assertEquals(both.get(0).tilesToOrder(), both.get(1).tilesToOrder());
    List<String> keys = new ArrayList<>();
    both.get(1).pieces().forEach(piece -> keys.add(piece.key()));
    assertEquals(keys.size(), keys.stream().distinct().count());
    assertTrue(keys.stream().allMatch(key -> key.startsWith("B-")));
  }

  /** Rings may leave nothing on a panel they are laid beside; then there is nothing to compare. */
  private static List<PanelSetOut> laid(PanelSpec panel, Transfer to) {
    try {
      return both(panel, to);
    } catch (InputException e) {
      Assume.that(!e.getMessage().contains("nothing is left"));
      throw new AssertionError(e);
    }
  }
}
