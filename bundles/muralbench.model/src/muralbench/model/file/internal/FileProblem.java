// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import muralbench.base.InputException;
import muralbench.base.Messages;

/** Makes the errors about one file: which file, what is wrong, what to do. */
public final class FileProblem {
  private static final Messages MESSAGES = Messages.of(FileProblem.class);

  private final Path file;

  /** Problems of the given file. */
  public FileProblem(Path file) {
    this.file = file;
  }

  /**
   * An error.
   *
   * @param key what is wrong: a key of the messages without {@code .problem}
   * @param namesAndValues values for the message
   */
  public InputException of(String key, Object... namesAndValues) {
    return of(null, key, namesAndValues);
  }

  /** As the other, with the failure that led here. */
  public InputException of(Throwable cause, String key, Object... namesAndValues) {
    Object[] values = Arrays.copyOf(namesAndValues, namesAndValues.length + 2);
    values[namesAndValues.length] = "backup";
    values[namesAndValues.length + 1] = backup();
    return new InputException(file.toString(), MESSAGES.text(key + ".problem", values),
        MESSAGES.text(key + ".remedy", values), cause);
  }

  private String backup() {
    Path backup = file.resolveSibling(file.getFileName() + ".bak");
    return Files.isRegularFile(backup) ? MESSAGES.text("backup.there", "name", backup.getFileName())
        : MESSAGES.text("backup.none");
  }
}
