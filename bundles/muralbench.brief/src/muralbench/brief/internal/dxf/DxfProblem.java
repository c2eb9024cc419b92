// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * Makes the errors about one drawing.
 *
 * @param place JSON pointer of the field that names the drawing
 * @param file its name
 */
record DxfProblem(String place, String file) {
  private static final Messages MESSAGES = Messages.of(DxfProblem.class);

  /** An error about the drawing as a whole. */
  InputException of(String key, Object... namesAndValues) {
    return new InputException(place, file + ": " + MESSAGES.text(key, namesAndValues),
        MESSAGES.text(key + ".remedy", namesAndValues));
  }

  /** An error at a line of the file. */
  InputException at(int line, String key, Object... namesAndValues) {
    return new InputException(place, MESSAGES.text("line", "file", file, "line", line) + ": "
        + MESSAGES.text(key, namesAndValues), MESSAGES.text(key + ".remedy", namesAndValues));
  }
}
