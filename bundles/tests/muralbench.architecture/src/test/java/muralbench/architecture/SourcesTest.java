// SPDX-License-Identifier: EPL-2.0
package muralbench.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Rules for the text of every Java file. */
class SourcesTest {
  private static final int LONG = 400;
  private static final int WIDE = 132;
  private static final Pattern IMPORT = Pattern.compile("^import (?:static )?[\\w.]+\\.(\\w+|\\*);", Pattern.MULTILINE);

  /** In two parts, so that this file passes its own check. */
  private static final Pattern DEBT = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");

  @Test
  void everyFileNamesItsLicenceFirst() throws IOException {
    assertTrue(House.sources().size() > 100, "sources not found");
    none(text -> text.startsWith("// SPDX-License-Identifier: EPL-2.0\n"));
  }

  @Test
  void aLongClassSaysWhyItIsLong() throws IOException {
    none(text -> text.lines().count() <= LONG || text.contains("Long because"));
  }

  @Test
  void linesFitThePage() throws IOException {
    none(text -> text.lines().allMatch(line -> line.length() <= WIDE && line.indexOf('\t') < 0));
  }

  @Test
  void nothingIsLeftToDo() throws IOException {
    none(text -> !DEBT.matcher(text).find());
  }

  @Test
  void everyImportIsNamedAndUsed() throws IOException {
    none(text -> unused(text).isEmpty());
  }

  @Test
  void everyPackageOfARoomIsExplained() throws IOException {
    Set<Path> unexplained = new TreeSet<>();
    for (Path source : House.sources()) {
      boolean ofARoom = House.rooms().stream().anyMatch(room -> source.startsWith(House.folder(room).resolve("src")));
      if (ofARoom && !Files.exists(source.resolveSibling("package-info.java"))) {
        unexplained.add(House.root().relativize(source.getParent()));
      }
    }
    assertEquals(Set.of(), unexplained);
  }

  private static List<String> unused(String text) {
    List<String> unused = new ArrayList<>();
    Matcher imports = IMPORT.matcher(text);
    String body = imports.replaceAll("");
    imports.reset();
    while (imports.find()) {
      String name = imports.group(1);
      if (name.equals("*") || !Pattern.compile("\\b" + name + "\\b").matcher(body).find()) {
        unused.add(name);
      }
    }
    return unused;
  }

  private static void none(Predicate<String> right) throws IOException {
    Set<Path> wrong = new TreeSet<>();
    for (Path source : House.sources()) {
      if (!right.test(Files.readString(source))) {
        wrong.add(House.root().relativize(source));
      }
    }
    assertEquals(Set.of(), wrong);
  }
}
