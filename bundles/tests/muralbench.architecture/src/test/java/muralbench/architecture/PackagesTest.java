// SPDX-License-Identifier: EPL-2.0
package muralbench.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a room shows is its API; everything else is marked internal or not exported at all. */
class PackagesTest {
  static Set<String> rooms() {
    return House.rooms();
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void innerPackagesAreMarkedInternal(String room) {
    List<String> open = House.header(room, "Export-Package").stream()
        .filter(entry -> (entry.replaceFirst(";.*", "") + ".").matches(".*\\.(internal|impl)\\..*"))
        .filter(entry -> !entry.replace(" ", "").contains("x-internal:=true")).toList();
    assertEquals(List.of(), open);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void packagesMarkedInternalAreNamedSo(String room) {
    List<String> disguised = House.header(room, "Export-Package").stream().filter(entry -> entry.contains("x-internal"))
        .filter(entry -> !(entry.replaceFirst(";.*", "") + ".").matches(".*\\.(internal|impl)\\..*")).toList();
    assertEquals(List.of(), disguised);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void everyPackageThatIsNotInnerIsExported(String room) {
    Set<String> hidden = new TreeSet<>();
    House.classes(room).forEach(type -> hidden.add(type.getPackageName()));
    House.header(room, "Export-Package").forEach(entry -> hidden.remove(entry.replaceFirst(";.*", "")));
    hidden.removeIf(name -> (name + ".").contains(".internal."));
    assertEquals(Set.of(), hidden);
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aManifestOfPluginsStaysReadable(String room) throws IOException {
    var plugin = House.folder(room).resolve("plugin.xml");
    long lines = Files.exists(plugin) ? Files.readAllLines(plugin).size() : 0;
    assertTrue(lines <= 300, plugin + " has " + lines + " lines: let another room contribute its own part");
  }
}
