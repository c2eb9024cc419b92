// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the desktop is asked to show when it starts.
 *
 * @param demo whether to open the demonstration mural
 * @param files murals and briefs to open, in order
 */
record StartArguments(boolean demo, List<Path> files) {
  /** Nothing asked for. */
  static final StartArguments NONE = new StartArguments(false, List.of());

  private static final String DEMO = "--demo";

  StartArguments {
    files = List.copyOf(files);
  }

  /** Reads the program arguments; other words with a dash, and what belongs to them, are meant for the platform. */
  static StartArguments of(String[] words, Path folder) {
    boolean demo = false;
    List<Path> files = new ArrayList<>();
    String before = "";
    for (String word : words == null ? new String[0] : words) {
      if (word.equals(DEMO)) {
        demo = true;
      } else if (isFile(word, before)) {
        files.add(folder.resolve(word).toAbsolutePath().normalize());
      }
      before = word;
    }
    return new StartArguments(demo, files);
  }

  private static boolean isFile(String word, String before) {
    boolean ownWord = !before.startsWith("-") || before.equals(DEMO);
    return !word.isBlank() && !word.startsWith("-") && (ownWord || isOurs(word));
  }

  private static boolean isOurs(String word) {
    String name = word.toLowerCase(Locale.ROOT);
    return name.endsWith(".mural") || name.endsWith(".json");
  }

  boolean isEmpty() {
    return !demo && files.isEmpty();
  }
}
