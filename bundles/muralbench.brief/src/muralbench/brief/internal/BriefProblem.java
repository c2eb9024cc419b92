// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import muralbench.base.InputException;
import muralbench.base.Messages;

/** Makes the errors about a brief from the messages of this package. */
public final class BriefProblem {
  private static final Messages MESSAGES = Messages.of(BriefProblem.class);

  private BriefProblem() {}

  /**
   * An error.
   *
   * @param place JSON pointer of the field, or the file
   * @param key what is wrong: a key of the messages without {@code .problem}
   * @param namesAndValues values for the message
   */
  public static InputException at(String place, String key, Object... namesAndValues) {
    return withRemedy(place, key, key, namesAndValues);
  }

  /** As the other, where several problems of one kind have remedies of their own. */
  static InputException withRemedy(String place, String problemKey, String remedyKey, Object... namesAndValues) {
    return new InputException(place, MESSAGES.text(problemKey + ".problem", namesAndValues),
        MESSAGES.text(remedyKey + ".remedy", namesAndValues));
  }

  static String text(String key, Object... namesAndValues) {
    return MESSAGES.text(key, namesAndValues);
  }
}
