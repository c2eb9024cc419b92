// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNameTest {
  private static final List<String> KNOWN = List.of("id", "title", "tile", "joint", "edgeGap", "outline", "openings",
      "bond", "origin", "rotation");

  @ParameterizedTest
  @CsvSource({"joints,joint", "jiont,joint", "JOINT,joint", "edge_gap,edgeGap", "edgegap,edgeGap", "opening,openings",
      "titel,title", "tiles,tile", "rotate,rotation", "orig,origin", "outlines,outline"})
  void findsWhatWasMeant(String misspelt, String meant) {
    assertEquals(meant, NearName.of(misspelt, KNOWN).orElse("nothing"));
  }

  @ParameterizedTest
  @CsvSource({"at", "colour", "x", "grout", "size", "''"})
  void guessesNothingFarFetched(String name) {
    assertEquals("nothing", NearName.of(name, KNOWN).orElse("nothing"));
  }
}
