// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The texts of one package, from the {@code messages.properties} beside the given class. Keys say what the text is
 * for; placeholders are named, as in {@code Panel {id} is {width} wide}, and a value is put in as its plain text.
 */
public final class Messages {
  private final ResourceBundle bundle;

  private Messages(ResourceBundle bundle) {
    this.bundle = bundle;
  }

  /** The texts beside {@code owner}, in the language of the default locale where there is a translation. */
  public static Messages of(Class<?> owner) {
    return new Messages(ResourceBundle.getBundle(owner.getPackageName() + ".messages", Locale.getDefault(),
        owner.getClassLoader()));
  }

  /**
   * The text for a key with its placeholders filled.
   *
   * @param key the key
   * @param namesAndValues name, value, name, value and so on
   * @return the text
   * @throws MissingResourceException if the key is unknown: our fault
   */
  public String text(String key, Object... namesAndValues) {
    String text = bundle.getString(key);
    if (namesAndValues.length == 0) {
      return text;
    }
    StringBuilder filled = new StringBuilder(text.length() + 32);
    int from = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', from)) {
      int close = text.indexOf('}', open);
      if (close < 0) {
        break;
      }
      filled.append(text, from, open).append(value(key, text.substring(open + 1, close), namesAndValues));
      from = close + 1;
    }
    return filled.append(text, from, text.length()).toString();
  }

  private static Object value(String key, String name, Object... namesAndValues) {
    for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
      if (name.equals(namesAndValues[i])) {
        return namesAndValues[i + 1];
      }
    }
    throw new IllegalArgumentException("message " + key + " needs a value for " + name);
  }
}
