// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.InputException;
import muralbench.model.BackingBoard;
import muralbench.model.BoardMaterial;
import muralbench.model.EdgeProtection;
import muralbench.model.Making;
import muralbench.model.Mural;
import muralbench.model.Painting;
import muralbench.model.TileClass;
import muralbench.model.TileKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a brief says of tiles, boards, making-up and spares. */
class StudioBriefTest {
  private static final String BRIEF = """
      { "format": "muralbench-brief", "version": 1, "title": "Harbour wall",
        "site": { "exposure": "exterior", "temperatureSwing": "115 °F" },
        "tiles": [ { "id": "T6", "width": 6, "height": 6, "class": "rectified", "warpage": "1/32", "box": 44,
          "expansion": 7 } ],
        "panels": [ { "id": "A", "tile": "T6", "joint": 0.125, "outline": { "rectangle": [0, 36, 72, 48] },
          "mounting": "removable", "board": { "material": "plywood", "thickness": "3/4", "density": 580,
            "reveal": "-1/8", "edge": "frame", "hangerCapacity": "50 lb" } } ],
        "making": { "painted": "after-cutting", "kerf": "3/32", "factoryEdges": ["left", "top"] },
        "spares": { "grid": 7.5, "other": 12 } }
      """;

  private static Mural read(String brief) throws InputException {
    return BriefReader.readText(brief);
  }

  @Test
  void tile() throws Exception {
    TileKind tile = read(BRIEF).getTileKinds().get(0);
    assertEquals(TileClass.RECTIFIED, tile.getTileClass());
    assertEquals(25.4 / 32, tile.getWarpage());
    assertEquals(44, tile.getBox());
    assertEquals(7, tile.getExpansion());
  }

  @Test
  void whatIsNotSaidOfATileIsNotKnown() throws Exception {
    TileKind tile = read(Briefs.SHORT).getTileKinds().get(0);
    assertEquals(TileClass.NOT_KNOWN, tile.getTileClass());
    assertEquals(List.of(-1.0, 0.0, 0.0), List.of(tile.getWarpage(), (double) tile.getBox(), tile.getExpansion()));
  }

  @Test
  void board() throws Exception {
    BackingBoard board = read(BRIEF).getPanels().get(0).getBoard();
    assertEquals(BoardMaterial.PLYWOOD, board.getMaterial());
    assertEquals(List.of(19.05, 580.0, -3.175),
        List.of(board.getThickness(), board.getDensity(), board.getReveal()));
    assertEquals(EdgeProtection.FRAME, board.getEdge());
    // 1 lb = 0.45359237 kg exactly.
    assertEquals(22.6796185, board.getHangerCapacity(), 1e-9);
  }

  @Test
  void making() throws Exception {
    Making making = read(BRIEF).getMaking();
    assertEquals(Painting.AFTER_CUTTING, making.getPainted());
    assertEquals(25.4 * 3 / 32, making.getKerf(), 1e-12);
    assertEquals(List.of(true, false, true, false), List.of(making.isFactoryLeft(), making.isFactoryRight(),
        making.isFactoryTop(), making.isFactoryBottom()));
  }

  @Test
  void aMuralIsPaintedBeforeCuttingUnlessTheBriefSaysOtherwise() throws Exception {
    assertNull(read(Briefs.SHORT).getMaking());
    Making making = read(BRIEF.replace("\"painted\": \"after-cutting\", \"kerf\": \"3/32\", ", "")
        .replace("[\"left\", \"top\"]", "[]")).getMaking();
    assertEquals(Painting.BEFORE_CUTTING, making.getPainted());
    assertEquals(1.5875, making.getKerf());
    assertEquals(false, making.isFactoryLeft() || making.isFactoryTop());
  }

  @Test
  void spares() throws Exception {
    Mural mural = read(BRIEF);
    assertEquals(List.of("grid 7.5", "other 12.0"),
        mural.getSpares().stream().map(spare -> spare.getBond() + " " + spare.getPercent()).toList());
  }

  @ParameterizedTest
  @CsvSource({"115 °F, 63.8888889", "115F, 63.8888889", "60 °C, 60", "60.5C, 60.5"})
  void swingOfTemperature(String text, double celsius) throws Exception {
    assertEquals(celsius, read(BRIEF.replace("115 °F", text)).getSite().getTemperatureSwing(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "\"rectified\"|\"ground\"|/tiles/0/class|Use one of \"natural\", \"calibrated\", \"rectified\"",
    "44|0|/tiles/0/box|below 1",
    "44|4.5|/tiles/0/box|a number instead of a whole number",
    "\"expansion\": 7|\"expansion\": 0|/tiles/0/expansion|below 0.1",
    "115 °F|115|/site/temperatureSwing|with its unit, such as \"115 °F\"",
    "\"50 lb\"|\"50 kN\"|/panels/0/board/hangerCapacity|Use a number of kilograms",
    "\"removable\"|\"fixed\"|/panels/0/board|only a removable panel has a board",
    "\"plywood\", \"thickness\": \"3/4\",|\"other\",|/panels/0/board|needs a thickness and a density",
    "[\"left\", \"top\"]|[\"west\"]|/making/factoryEdges/0|Use one of \"left\", \"right\"",
    "\"3/32\"|\"-1/8\"|/making/kerf|below 0",
    "7.5|-1|/spares/grid|below 0",
    "\"grid\": 7.5|\"the grid\": 7.5|/spares|name of a laying pattern"})
  void badValuesAreRefusedWithTheirField(String what, String by, String pointer, String message) {
    InputException problem = assertThrows(InputException.class, () -> read(BRIEF.replace(what, by)));
    assertEquals(pointer, problem.place());
    assertTrue(problem.getMessage().contains(message), problem.getMessage());
  }
}
