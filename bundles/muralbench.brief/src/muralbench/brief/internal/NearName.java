// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was most likely meant by a misspelt one. */
final class NearName {
  private static final int MOST_CHANGES = 2;
  private static final int LONGEST = 40;

  private NearName() {}

  /**
   * The known name nearest to a misspelt one: at most two letters are wrong, missing or over, and more than half are
   * right; else the two begin alike for two thirds of the shorter one.
   */
  static Optional<String> of(String misspelt, Collection<String> known) {
    if (misspelt.length() > LONGEST) {
      return Optional.empty();
    }
    String name = misspelt.toLowerCase(Locale.ROOT);
    return known.stream().filter(one -> near(name, one.toLowerCase(Locale.ROOT)))
        .min(Comparator.comparingInt((String one) -> changes(name, one.toLowerCase(Locale.ROOT))));
  }

  private static boolean near(String a, String b) {
    int shorter = Math.min(a.length(), b.length());
    int alike = 0;
    while (alike < shorter && a.charAt(alike) == b.charAt(alike)) {
      alike++;
    }
    int changes = changes(a, b);
    return changes <= MOST_CHANGES && 2 * changes < Math.max(a.length(), b.length())
        || alike >= 3 && 3 * alike >= 2 * shorter;
  }

  /** Single letters to put in, take out or exchange to make one word of the other (Levenshtein distance). */
  private static int changes(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(exchanged, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
