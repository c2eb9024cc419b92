// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names of files made from ids that people chose. Letters, digits, hyphen and underline stay, anything else becomes an
 * underline, so that a name is good on every system; names that fall together, also in a file system that does not tell
 * capitals apart, get a number.
 */
public final class FileNames {
  private static final int LONGEST = 60;

  private final Set<String> taken = new HashSet<>();

  /**
   * The next name.
   *
   * @param prefix goes before the id, itself fit for a file name
   * @param id what the file is about
   * @param extension with its dot
   * @return a name not given out before by this object
   */
  public String name(String prefix, String id, String extension) {
    String stem = prefix + clean(id);
    String name = stem + extension;
    for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
      name = stem + '-' + n + extension;
    }
    return name;
  }

  private static String clean(String id) {
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(id, Normalizer.Form.NFC).codePoints().limit(LONGEST)
        .map(c -> Character.isLetterOrDigit(c) || c == '-' ? c : '_').forEach(clean::appendCodePoint);
    return clean.toString();
  }
}
