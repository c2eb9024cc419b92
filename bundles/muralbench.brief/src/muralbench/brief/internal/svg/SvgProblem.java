// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.svg;

import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * Makes the errors about one drawing.
 *
 * @param place JSON pointer of the field that names the drawing
 * @param file its name
 */
record SvgProblem(String place, String file) {
  private static final Messages MESSAGES = Messages.of(SvgProblem.class);

  InputException of(String key, Object... namesAndValues) {
    return new InputException(place, file + ": " + MESSAGES.text(key, namesAndValues),
        MESSAGES.text(key + ".remedy", namesAndValues));
  }
}
