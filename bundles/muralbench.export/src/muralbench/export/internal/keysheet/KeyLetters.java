// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Type;

/** The letters of keys: how large they must and may be, and how much paper a text takes. */
final class KeyLetters {
  /** Least height of capitals and digits, mm: the house rule of 2.5 mm with a little for the rounding of printers. */
  static final double SMALLEST = 2.52;

  /** Greatest height, mm; larger keys would cover the work. */
  static final double LARGEST = 4;

  /** Kept free at both ends of a key beyond its air, so that keys of neighbouring tiles stand 0.8 mm apart. */
  private static final double ENDS = 0.15;

  /** Narrow letters let a tile of 6 in hold its key at 1 in = 1 ft. */
  private static final double NARROW = 0.87;

  private final Lettering lettering;
  private final Map<String, KeyRoom.Words> known = new HashMap<>();

  KeyLetters(Lettering lettering) {
    this.lettering = lettering;
  }

  /** The letters of a key that is {@code factor} times the smallest allowed. */
  static Type type(double factor) {
    return Type.plain(SMALLEST * factor).stretched(NARROW);
  }

  /** A text at the smallest allowed height with its air. */
  KeyRoom.Words words(String text) throws IOException {
    KeyRoom.Words words = known.get(text);
    if (words == null) {
      double width = lettering.width(text, type(1));
      words = new KeyRoom.Words(text, width + 2 * (Label.AIR + ENDS), SMALLEST + 2 * Label.AIR);
      known.put(text, words);
    }
    return words;
  }

  Lettering lettering() {
    return lettering;
  }
}
