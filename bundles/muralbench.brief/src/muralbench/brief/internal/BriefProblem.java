// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.Locale;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Messages;

/** Makes the errors about a brief from the messages of this package. */
public final class BriefProblem {
  private static final Messages MESSAGES = Messages.of(BriefProblem.class);

  /** The entries of lists that are lengths and have names of their own. */
  private static final Set<String> ITEMS = Set.of("item.rectangle.2", "item.rectangle.3", "item.circle.2");

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

  /** What a number at a place is, in words: {@code height}, {@code edge gap}. */
  static String nameOf(String pointer) {
    String last = pointer.substring(pointer.lastIndexOf('/') + 1);
    if (!last.matches("\\d+")) {
      return last.replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
    String list = pointer.substring(0, pointer.lastIndexOf('/'));
    String key = "item." + list.substring(list.lastIndexOf('/') + 1) + "." + last;
    return MESSAGES.text(ITEMS.contains(key) ? key : "item");
  }

  static String text(String key, Object... namesAndValues) {
    return MESSAGES.text(key, namesAndValues);
  }
}
