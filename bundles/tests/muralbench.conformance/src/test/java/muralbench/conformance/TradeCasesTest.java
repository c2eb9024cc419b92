// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import muralbench.base.Progress;
import muralbench.setout.BondSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Jobs from the trade. The round faces are common practice without a source: their counts were made by exact
 * integration of each tile against the circle and confirmed by sampling the tiles' edges. A face is laid out from a
 * joint or from the middle of a tile on either axis.
 */
class TradeCasesTest {
  private static final double IN = 25.4;

  @ParameterizedTest
  @CsvSource({"joint, joint, 0.125, 52, 36, 12, 8", "tile, tile, 0.125, 57, 40, 28, 8",
      "joint, tile, 0.125, 56, 38, 20, 12", "joint, joint, 0, 60, 28, 8, 0", "tile, tile, 0, 61, 40, 32, 12",
      "joint, tile, 0, 60, 38, 20, 12"})
  void roundFaceOfSixtyInchesInSixInchTile(String onX, String onY, double joint, int whole, int cut, int underHalf,
      int underQuarter) throws Exception {
    PanelSetOut face = round(60 * IN, 6 * IN, joint * IN, onX, onY);

    assertEquals(whole + " + " + cut, face.whole() + " + " + face.cut());
    assertEquals(underHalf, smaller(face, 0.5));
    assertEquals(underQuarter, smaller(face, 0.25));
  }

  @ParameterizedTest
  @CsvSource({"joint, 52, 36", "tile, 57, 40"})
  void roundFaceOfFifteenHundredMillimetres(String on, int whole, int cut) throws Exception {
    PanelSetOut face = round(1500, 150, 3, on, on);

    assertEquals(whole + " + " + cut, face.whole() + " + " + face.cut());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {"joint; 0+6 4+4 6+4 8+2 8+2 8+2 8+2 6+4 4+4 0+6",
      "tile; 0+5 3+4 5+4 7+4 9+2 9+2 9+2 7+4 5+4 3+4 0+5"})
  void coursesOfARoundFaceAreCountedFromTheBottom(String on, String courses) throws Exception {
    PanelSetOut face = round(60 * IN, 6 * IN, IN / 8, on, on);

    assertEquals(courses, IntStream.rangeClosed(1, face.courses()).mapToObj(course -> wholeAndCut(face, course))
        .collect(Collectors.joining(" ")));
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
      "joint; 0.2046x8 0.4109x4 0.6563x8 0.8717x8 0.9916x8; 2715.73",
      "tile; 0.0324x8 0.2816x8 0.3548x8 0.3875x4 0.9284x8 0.9985x4; 2711.59"})
  void cutPiecesOfARoundFaceHaveTheIntegratedAreas(String on, String shares, double squareInches) throws Exception {
    PanelSetOut face = round(60 * IN, 6 * IN, IN / 8, on, on);
    List<Double> expected = new ArrayList<>();
    for (String share : shares.split(" ")) {
      String[] timesHowOften = share.split("x");
      for (int i = 0; i < Integer.parseInt(timesHowOften[1]); i++) {
        expected.add(Double.parseDouble(timesHowOften[0]));
      }
    }

    List<Double> found = face.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE)
        .map(piece -> piece.area() / (36 * IN * IN)).sorted().toList();
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), found.get(i), 0.00006);
    }
    assertEquals(squareInches, face.pieces().stream().mapToDouble(Piece::area).sum() / (IN * IN), 0.006);
  }

  /** A wall panel of 6 by 8 ft in 6 in tile (common practice, no source); each axis by the half-tile rule. */
  @Test
  void panelOfSixByEightFeet() throws Exception {
    PanelSetOut panel = setOut(Contour.rectangle(0, 0, 72 * IN, 96 * IN), 6 * IN, IN / 8, new OriginSpec.Balanced());

    // c(n) = (S - n a - (n + 1) j) / 2: 10 whole and 5-5/16 in at the sides; 14 whole and 5-1/16 in top and bottom.
    assertEquals(12 * 16, panel.pieces().size());
    assertEquals(10 * 14, panel.whole());
    Piece corner = panel.pieces().get(0);
    assertEquals(5.3125 * IN, corner.box().width(), 0.001);
    assertEquals(5.0625 * IN, corner.box().height(), 0.001);
    assertEquals(12 * 16, panel.tilesToOrder());
  }

  /**
   * The half-tile rule: ANSI A108.02 4.3.1 and 4.3.2 as quoted by the Ceramic Tile Education Foundation; with joints
   * c(n) = (S - n a - (n + 1) j) / 2. The last line is the Foundation's own example.
   */
  @ParameterizedTest
  @CsvSource({"100, 6, 0.125, 15, 4.0", "96, 6, 0.125, 14, 5.0625", "72, 6, 0.125, 10, 5.3125",
      "120, 6, 0.125, 18, 4.8125", "49, 6, 0.125, 7, 3.0", "25.5, 24, 0, 0, 12.75"})
  void theHalfTileRuleHoldsUpwardsToo(double span, double tile, double joint, int whole, double cut) throws Exception {
    PanelSetOut panel = setOut(Contour.rectangle(0, 10 * IN, tile * IN, span * IN), tile * IN, joint * IN,
        new OriginSpec.Balanced());

    assertEquals(whole, panel.whole());
    assertEquals(whole + 2, panel.courses());
    assertEquals(cut * IN, panel.pieces().get(0).box().height(), 0.001);
    assertEquals(cut * IN, panel.pieces().get(whole + 1).box().height(), 0.001);
  }

  @Test
  void noEdgeCutIsUnderHalfATileWhereSomeStartAvoidsIt() throws Exception {
    for (double span = 24.5; span < 31; span += 0.17) {
      PanelSetOut panel = setOut(Contour.rectangle(0, 0, span * IN, 6 * IN), 6 * IN, IN / 8, new OriginSpec.Balanced());
      double narrowest = panel.pieces().stream().mapToDouble(piece -> piece.box().width()).min().orElse(0);
      // One of two neighbouring choices is at least (a + j) / 2; shorter only where the joint eats into it.
      assertTrue(narrowest >= 3 * IN - IN / 16 - 0.001, span + " in leaves " + narrowest / IN + " in");
    }
  }

  private static PanelSetOut round(double across, double tile, double joint, String onX, String onY) throws Exception {
    Vec start = new Vec(onX.equals("tile") ? -tile / 2 : joint / 2, onY.equals("tile") ? -tile / 2 : joint / 2);
    return setOut(Contour.circle(Vec.ZERO, across / 2), tile, joint, new OriginSpec.At(start));
  }

  private static PanelSetOut setOut(Contour outline, double tile, double joint, OriginSpec origin) throws Exception {
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", tile, tile, 0, 0, -1), joint, 0,
        outline, List.of(), BondSpec.grid(), origin);
    return SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
  }

  private static long smaller(PanelSetOut face, double share) {
    double tile = face.spec().tile().width() * face.spec().tile().height();
    return face.pieces().stream().filter(piece -> piece.area() < share * tile).count();
  }

  private static String wholeAndCut(PanelSetOut face, int course) {
    List<Piece> pieces = face.pieces().stream().filter(piece -> piece.course() == course).toList();
    long whole = pieces.stream().filter(piece -> piece.kind() == PieceKind.WHOLE).count();
    return whole + "+" + (pieces.size() - whole);
  }
}
