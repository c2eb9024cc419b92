// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.util.Optional;

/** Sheet sizes; ISO 216 and the letter and ledger formats of ANSI Y14.1. Upright measures in millimetres. */
public enum Paper {
  /** 8.5 x 11 in. */
  LETTER("letter", 215.9, 279.4),
  /** 11 x 17 in. */
  TABLOID("tabloid", 279.4, 431.8),
  /** ISO 216 A4. */
  A4("a4", 210, 297),
  /** ISO 216 A3. */
  A3("a3", 297, 420);

  private final String word;
  private final double width;
  private final double height;

  Paper(String word, double width, double height) {
    this.word = word;
    this.width = width;
    this.height = height;
  }

  /** The name in lower case, as typed on the command line. */
  public String word() {
    return word;
  }

  /** Shorter side, mm. */
  public double width() {
    return width;
  }

  /** Longer side, mm. */
  public double height() {
    return height;
  }

  /** The paper of a name, whatever its case. */
  public static Optional<Paper> find(String word) {
    for (Paper paper : values()) {
      if (paper.word.equalsIgnoreCase(word)) {
        return Optional.of(paper);
      }
    }
    return Optional.empty();
  }
}
