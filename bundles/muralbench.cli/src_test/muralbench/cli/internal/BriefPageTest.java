// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import muralbench.cli.internal.CommandBed.Result;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.BondSetting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page about briefs is held against the laying patterns there are; its examples are set out. */
class BriefPageTest {
  private static final Path PAGE = Path.of("..", "..", "docs", "brief.md");
  private static final double JOINT = 3.175;

  private final List<Bond> bonds = BondRegistry.standard().all();

  @Test
  void everyPatternIsOnThePageAndNoOther() throws IOException {
    assertEquals(bonds.stream().map(Bond::kind).toList(), rows(3).stream().map(row -> code(row.get(0))).toList());
  }

  /** The examples of a field of the schema are what text editors propose. */
  @Test
  void theSchemaProposesEveryPatternAndNamesEverySetting() throws IOException {
    String schema = Files.readString(PAGE.resolveSibling("brief.schema.json"));
    String kinds = String.join("\", \"", bonds.stream().map(Bond::kind).toList());
    assertTrue(schema.contains("\"default\": \"grid\", \"examples\": [\"" + kinds + "\"]"), kinds);
    String settings = schema.lines().filter(line -> line.contains("\"settings\": {")).findFirst().orElseThrow();
    for (Bond bond : bonds) {
      bond.settingNames().forEach(name -> assertTrue(settings.matches(".*\\b" + bond.kind() + "\\b[^.]*\\b" + name
          + "\\b.*"), bond.kind() + " " + name));
    }
  }

  @Test
  void everySettingIsOnThePageWithWhatStandsForIt() throws IOException {
    List<String> known = new ArrayList<>();
    for (Bond bond : bonds) {
      for (BondSetting setting : bond.settings()) {
        known.add(bond.kind() + "." + setting.name() + "=" + setting.standard());
      }
    }
    assertEquals(known, rows(5).stream()
        .map(row -> code(row.get(0)) + "." + code(row.get(1)) + "=" + code(row.get(3))).toList());
  }

  @Test
  void everyExampleOfASettingIsUnderstood() throws IOException {
    Map<String, Map<String, String>> examples = new HashMap<>();
    for (List<String> row : rows(5)) {
      assertFalse(code(row.get(4)).isEmpty(), row.toString());
      examples.computeIfAbsent(code(row.get(0)), kind -> new HashMap<>()).put(code(row.get(1)), code(row.get(4)));
    }
    for (Bond bond : bonds) {
      Map<String, String> settings = examples.getOrDefault(bond.kind(), Map.of());
      BondRequest request = new BondRequest(tileFor(bond.kind()), JOINT, 0.5, settings);
      assertDoesNotThrow(() -> bond.lay(request), bond.kind());
    }
  }

  @Test
  void everyWholeBriefOnThePageIsSetOut(@TempDir Path folder) throws IOException {
    CommandBed bed = new CommandBed(folder);
    List<String> briefs = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(PAGE)).results()
        .map(found -> found.group(1)).toList();
    assertEquals(3, briefs.size());
    for (String brief : briefs) {
      Result result = bed.run("new", bed.file("page.json", brief), "--out", bed.path("page.mural"));
      assertEquals(new Result(ExitCode.DONE, "", ""), result);
    }
  }

  /** Tiles as the page asks for them: a basket of 6-1/8 by 3 in, hexagons by 150 and 173.2 mm. */
  private static TileSpec tileFor(String kind) {
    return switch (kind) {
      case "herringbone" -> new TileSpec("T", 152.4, 76.2, 0, 0, -1);
      case "basket" -> new TileSpec("T", 155.575, 76.2, 0, 0, -1);
      case "hexagon" -> new TileSpec("T", 150, 173.2, 0, 0, -1);
      default -> new TileSpec("T", 152.4, 152.4, 0, 0, -1);
    };
  }

  /** The rows of tables about laying patterns with a number of columns, without their heads. */
  private static List<List<String>> rows(int columns) throws IOException {
    String page = Files.readString(PAGE);
    return page.substring(page.indexOf("\n## Laying patterns\n")).lines().filter(line -> line.startsWith("| `"))
        .map(line -> Stream.of(line.split("\\|")).skip(1).map(String::strip).toList())
        .filter(row -> row.size() == columns).toList();
  }

  /** What a cell gives as code, if that is all of it. */
  private static String code(String cell) {
    return Pattern.compile("^`([^`]*)`$").matcher(cell).results().map((MatchResult found) -> found.group(1)).findFirst()
        .orElse("");
  }
}
