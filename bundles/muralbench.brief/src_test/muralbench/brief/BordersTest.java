// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.InputException;
import muralbench.model.BandCorner;
import muralbench.model.BandSide;
import muralbench.model.BorderBand;
import muralbench.model.BorderStep;
import muralbench.model.MotifDrawing;
import muralbench.model.Mural;
import muralbench.model.PatternBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BordersTest {
  private static final String COLOURS =
      "\"colours\": [{\"id\": \"cream\", \"rgb\": \"#f4ecd8\"}, {\"id\": \"reed\", \"rgb\": \"#5b7f3a\"}]";
  private static final String MOTIFS = "\"motifs\": [{\"id\": \"reed\", \"tile\": [2, 1], \"ground\": \"cream\", \"regions\":"
      + " [{\"id\": \"leaf\", \"colour\": \"reed\", \"path\": \"M 0 0 L 1 0 L 0 1 Z\"}],"
      + " \"colourways\": {\"dusk\": {\"reed\": \"cream\"}}}]";
  private static final String ROW = "{\"tile\": \"T6\", \"motifs\": [\"reed\", \"reed/dusk\"]}";

  private static Mural read(String colours, String motifs, String border) throws InputException {
    return BriefReader.readText("{\"format\": \"muralbench-brief\", \"version\": 1, \"title\": \"B\", " + colours + ", "
        + motifs + ", \"tiles\": [{\"id\": \"T6\", \"width\": 6, \"height\": 6}], \"panels\": [{\"id\": \"A\","
        + " \"tile\": \"T6\", \"joint\": \"1/8\", \"outline\": {\"rectangle\": [0, 0, 72, 48]},"
        + " \"borders\": [" + border + "]}]}");
  }

  private static BorderBand border(String border) throws InputException {
    return (BorderBand) read(COLOURS, MOTIFS, border).getPanels().get(0).getWorks().get(0);
  }

  @Test
  void aMotifKeepsItsDrawingAndColourways() throws Exception {
    Mural mural = read(COLOURS, MOTIFS, "{\"rows\": [" + ROW + "]}");
    PatternBook book = (PatternBook) mural.getBooks().get(0);
    MotifDrawing reed = book.getMotifs().get(0);
    assertEquals(2, reed.getTileWidth());
    assertEquals("M 0 0 L 1 0 L 0 1 Z", reed.getRegions().get(0).getData());
    assertEquals("cream", reed.getColourways().get(0).getChanges().get(0).getTo());
    assertEquals(List.of("#f4ecd8", "#5b7f3a"), book.getColours().stream().map(each -> each.getRgb()).toList());
  }

  @Test
  void aSequenceNamesMotifsAndColourways() throws Exception {
    List<BorderStep> steps = border("{\"rows\": [" + ROW + "]}").getRows().get(0).getSteps();
    assertEquals("reed", steps.get(0).getMotif());
    assertNull(steps.get(0).getColourway());
    assertEquals("dusk", steps.get(1).getColourway());
  }

  @Test
  void whatIsPermittedIsInMillimetres() throws Exception {
    BorderBand band = border("{\"rows\": [" + ROW + "], \"sides\": [\"bottom\", \"top\"], \"corner\": {\"kind\": \"mitred\"},"
        + " \"joint\": [\"1/16\", \"3/16\"], \"allow\": {\"moveIn\": 1, \"centre\": [2, 4], \"ends\": 0.5}, \"choice\": 2}");
    assertEquals(List.of(BandSide.BOTTOM, BandSide.TOP), band.getSides());
    assertEquals(BandCorner.MITRED, band.getCorner());
    assertEquals(25.4 / 16, band.getJointLeast(), 1e-12);
    assertEquals(25.4, band.getMoveIn());
    assertEquals(101.6, band.getCentreMost(), 1e-9);
    assertEquals(0.5, band.getEndShare());
    assertEquals(2, band.getChoice());
  }

  @Test
  void withoutAJointTheBandHasThatOfThePanel() throws Exception {
    assertTrue(border("{\"rows\": [" + ROW + "]}").getJointLeast() < 0);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '^', value = {
      "{\"rows\": [{\"tile\": \"T9\", \"motifs\": [\"reed\"]}]} | /panels/0/borders/0/rows/0/tile",
      "{\"rows\": [{\"tile\": \"T6\", \"motifs\": [\"knot\"]}]} | /panels/0/borders/0/rows/0/motifs/0",
      "{\"rows\": [{\"tile\": \"T6\", \"motifs\": [\"reed/dawn\"]}]} | /panels/0/borders/0/rows/0/motifs/0",
      "{\"rows\": [{\"tile\": \"T6\"}]} | /panels/0/borders/0/rows/0",
      "{\"rows\": [{\"tile\": \"T6\", \"plain\": \"mud\"}]} | /panels/0/borders/0/rows/0/plain",
      "{\"rows\": [{\"tile\": \"T6\", \"motifs\": [\"reed\", \"reed\"], \"symmetry\": \"22i\"}]}"
          + " | /panels/0/borders/0/rows/0/symmetry",
      "{\"rows\": [{\"tile\": \"T6\", \"motifs\": [\"reed\"], \"symmetry\": \"p4\"}]}"
          + " | /panels/0/borders/0/rows/0/symmetry"})
  void whatIsNotKnownIsNamedByItsPlace(String border, String place) {
    assertEquals(place, assertThrows(InputException.class, () -> border(border)).place());
  }

  @Test
  void aRegionInAnUnknownColourAndAPathThatIsNoneAreRefused() {
    String wrong = MOTIFS.replace("\"colour\": \"reed\"", "\"colour\": \"rust\"");
    assertEquals("/motifs/0/regions/0/colour",
        assertThrows(InputException.class, () -> read(COLOURS, wrong, "{\"rows\": [" + ROW + "]}")).place());
    String path = MOTIFS.replace("M 0 0 L", "0 0 L");
    assertEquals("/motifs/0/regions/0/path",
        assertThrows(InputException.class, () -> read(COLOURS, path, "{\"rows\": [" + ROW + "]}")).place());
  }
}
