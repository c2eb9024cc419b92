// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartArgumentsTest {
  private static final Path FOLDER = Path.of("wall").toAbsolutePath();

  @Test
  void filesAreTakenRelativeToTheFolderInTheirOrder() {
    StartArguments arguments = StartArguments.of(new String[] {"b.mural", "../a.json"}, FOLDER);
    assertEquals(List.of(FOLDER.resolve("b.mural"), FOLDER.resolveSibling("a.json")), arguments.files());
    assertFalse(arguments.demo());
  }

  @Test
  void theDemoIsAskedForByItsWord() {
    StartArguments arguments = StartArguments.of(new String[] {"--demo"}, FOLDER);
    assertTrue(arguments.demo());
    assertEquals(List.of(), arguments.files());
  }

  @Test
  void otherWordsWithADashAreLeftToThePlatform() {
    assertTrue(StartArguments.of(new String[] {"-showlocation"}, FOLDER).isEmpty());
    assertTrue(StartArguments.of(new String[] {"-testproperties", "place.properties"}, FOLDER).isEmpty());
    assertTrue(StartArguments.of(null, FOLDER).isEmpty());
  }
}
