// SPDX-License-Identifier: EPL-2.0
package muralbench.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** The rooms of the house as they were built: their classes, manifests and sources. */
final class House {
  /** What each room may see, lowest floor first; the same table stands in DEVELOPERS.md. */
  static final Map<String, Set<String>> MAY_SEE = new TreeMap<>(Map.ofEntries(
      Map.entry("base", Set.of()),
      Map.entry("model", Set.of("base")),
      Map.entry("brief", Set.of("base", "model")),
      Map.entry("setout", Set.of("base", "model")),
      Map.entry("pattern", Set.of("base", "model", "setout")),
      Map.entry("export", Set.of("base", "model", "setout")),
      Map.entry("extensions", Set.of("base", "setout", "export")),
      Map.entry("cli", Set.of("base", "model", "brief", "setout", "pattern", "export", "extensions")),
      Map.entry("editor", Set.of("base", "model", "setout", "pattern")),
      Map.entry("app", Set.of("base", "model", "brief", "setout", "pattern", "export", "extensions", "editor"))));

  private static final String OURS = "muralbench.";

  /** Rooms read already: the reading takes longer than all the checks. */
  private static final Map<String, JavaClasses> READ = new HashMap<>();

  private House() {}

  static Set<String> rooms() {
    return MAY_SEE.keySet();
  }

  /** The checkout. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.isRegularFile(folder.resolve("DEVELOPERS.md")) && !Files.isDirectory(folder.resolve("releng"))) {
      folder = folder.getParent();
    }
    return folder;
  }

  static Path folder(String room) {
    return root().resolve("bundles").resolve(OURS + room);
  }

  static JavaClasses classes(String room) {
    return READ.computeIfAbsent(room,
        name -> new ClassFileImporter().importPath(folder(name).resolve("target/classes")));
  }

  /** The room a class belongs to by its package, or an empty text for a class from elsewhere. */
  static String room(JavaClass type) {
    String name = type.getPackageName();
    if (!name.startsWith(OURS)) {
      return "";
    }
    String rest = name.substring(OURS.length());
    return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
  }

  /** Every dependency of a room on a class that is not right. */
  static Set<String> wrong(String room, Predicate<JavaClass> allowed) {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass type : classes(room)) {
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        if (!target.isPrimitive() && !allowed.test(target)) {
          wrong.add(type.getName() + " -> " + target.getName());
        }
      }
    }
    return wrong;
  }

  static Attributes manifest(String room) {
    try (InputStream in = Files.newInputStream(folder(room).resolve("META-INF/MANIFEST.MF"))) {
      return new Manifest(in).getMainAttributes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The entries of a manifest header, each with its directives. */
  static List<String> header(String room, String name) {
    String value = manifest(room).getValue(name);
    List<String> entries = new ArrayList<>();
    if (value != null) {
      // A comma inside quotes belongs to a version range.
      for (String entry : value.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
        entries.add(entry.strip());
      }
    }
    return entries;
  }

  /** All Java sources that people write. */
  static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(root().resolve("bundles"))) {
      return all.filter(path -> path.toString().endsWith(".java"))
          .filter(path -> Stream.of("/target/", "/src-gen/", "/bin/")
              .noneMatch(made -> path.toString().replace('\\', '/').contains(made)))
          .toList();
    }
  }
}
