// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Brings texts to a given width. */
public final class TextFit {
  private static final String CUT = "…";

  private final Lettering lettering;

  /** Fits texts set in {@code lettering}. */
  public TextFit(Lettering lettering) {
    this.lettering = lettering;
  }

  /** The text, or as much of its beginning as fits into {@code width} mm with an ellipsis. */
  public String shortened(String text, Type type, double width) throws IOException {
    if (lettering.width(text, type) <= width) {
      return text;
    }
    int[] signs = text.codePoints().toArray();
    int kept = signs.length;
    String shorter = text;
    while (kept > 0 && lettering.width(shorter, type) > width) {
      kept--;
      shorter = new String(signs, 0, kept).stripTrailing() + CUT;
    }
    return shorter;
  }

  /** The text in lines of at most {@code width} mm, broken at spaces; a word that is too long is shortened. */
  public List<String> wrapped(String text, Type type, double width) throws IOException {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + ' ' + word;
      if (!line.isEmpty() && lettering.width(longer, type) > width) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    for (int i = 0; i < lines.size(); i++) {
      lines.set(i, shortened(lines.get(i), type, width));
    }
    return lines;
  }
}
