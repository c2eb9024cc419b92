// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The guide to extending shows what the sample plug-in really holds. */
class GuideSnippetsTest {
  private static final Pattern SNIPPET = Pattern.compile("```\\w*\\n(.*?)```", Pattern.DOTALL);
  private static final List<String> SOURCES = List.of("META-INF/MANIFEST.MF", "plugin.xml",
      "src/muralbench/sample/plugin/HalfDropBond.java", "src/muralbench/sample/plugin/KeyIndexExporter.java");

  @TestFactory
  Stream<DynamicTest> everySnippetStandsInTheSamplePlugin() throws IOException {
    String sample = squeezed(sources());
    List<String> snippets = SNIPPET.matcher(Files.readString(root().resolve("docs/extending.md"))).results()
        .map(found -> squeezed(found.group(1))).toList();
    assertTrue(snippets.size() >= 8, "snippets found: " + snippets.size());
    return snippets.stream().map(snippet -> dynamicTest(snippet, () -> assertTrue(sample.contains(snippet))));
  }

  private static String sources() throws IOException {
    Path plugin = root().resolve("bundles/tests/muralbench.sample.plugin");
    StringBuilder sources = new StringBuilder();
    for (String source : SOURCES) {
      sources.append(Files.readString(plugin.resolve(source)));
    }
    return sources.toString();
  }

  private static String squeezed(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  /** The folder of the whole project, found upwards from where the build runs this test. */
  private static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("docs/extending.md"))) {
      folder = folder.getParent();
    }
    return folder;
  }
}
