// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.MotifText;
import org.junit.jupiter.api.Test;

/** The examples of docs/motifs-and-blocks.md are read as they stand there. */
class DocumentedFormatsTest {
  @Test
  void theMotifIsRead() throws IOException, InputException {
    Motif motif = MotifText.parse("docs", examples("motif").get(0));
    assertEquals(2, motif.tiles());
    assertEquals(3200 * Math.PI / 2 / (300 * 150), motif.shares().get("blue"), 1e-9);
  }

  @Test
  void theBlocksAreRead() throws IOException, InputException {
    List<Block> blocks = new ArrayList<>();
    for (String example : examples("block")) {
      blocks.addAll(BlockText.parse("docs", example));
    }
    assertEquals(List.of("Shoofly", "Example of shapes"), blocks.stream().map(Block::name).toList());
  }

  @Test
  void theNumberOfBlocksIsTheOneTold() throws IOException {
    assertEquals(61, BlockLibrary.load().blocks().size());
    assertTrue(page().contains("sixty-one traditional blocks"));
  }

  private static List<String> examples(String kind) throws IOException {
    List<String> examples = new ArrayList<>();
    Matcher fences = Pattern.compile("```" + kind + "\\n(.*?)```", Pattern.DOTALL).matcher(page());
    while (fences.find()) {
      examples.add(fences.group(1));
    }
    return examples;
  }

  private static String page() throws IOException {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.isRegularFile(folder.resolve("docs/motifs-and-blocks.md"))) {
      folder = folder.getParent();
    }
    return Files.readString(folder.resolve("docs/motifs-and-blocks.md"));
  }
}
