// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import muralbench.app.internal.Pictures;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

/** The files opened or saved lately, latest first, kept from one start to the next. */
public final class RecentFiles {
  /** How many files are remembered. */
  public static final int MOST = 10;

  private static final String NODE = "recent";

  private final Preferences preferences;

  RecentFiles(Preferences preferences) {
    this.preferences = Objects.requireNonNull(preferences, "preferences");
  }

  /** The list kept in the workspace. */
  public static RecentFiles ofWorkbench() {
    return new RecentFiles(InstanceScope.INSTANCE.getNode(Pictures.BUNDLE).node(NODE));
  }

  /** The files that are still there. */
  public List<Path> files() {
    return stored().stream().filter(Files::isRegularFile).toList();
  }

  /** Puts a file first. */
  public void add(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    List<Path> files = stored();
    files.remove(absolute);
    files.add(0, absolute);
    store(files.subList(0, Math.min(MOST, files.size())));
  }

  /** Forgets a file. */
  public void remove(Path file) {
    List<Path> files = stored();
    if (files.remove(file.toAbsolutePath().normalize())) {
      store(files);
    }
  }

  /** Forgets all files. */
  public void clear() {
    store(List.of());
  }

  private List<Path> stored() {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST; i++) {
      String text = preferences.get(String.valueOf(i), "");
      try {
        if (!text.isEmpty()) {
          files.add(Path.of(text));
        }
      } catch (InvalidPathException e) {
        ILog.of(RecentFiles.class).warn("A recent file has an unusable name: " + text, e);
      }
    }
    return files;
  }

  private void store(List<Path> files) {
    try {
      preferences.clear();
      for (int i = 0; i < files.size(); i++) {
        preferences.put(String.valueOf(i), files.get(i).toString());
      }
      preferences.flush();
    } catch (BackingStoreException e) {
      ILog.of(RecentFiles.class).warn("The list of recent files could not be kept.", e);
    }
  }
}
