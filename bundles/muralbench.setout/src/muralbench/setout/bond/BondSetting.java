// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;

/**
 * A parameter of a bond, given as text. Lengths carry their unit; a bare number is in millimetres.
 *
 * @param name as in briefs and files, one lower-case word
 * @param label name for people
 * @param standard the text that stands for a setting left out; empty if the bond works it out from the tile
 * @param hint what it does and which values will do, one sentence
 * @param form what the text is made of, so that a dialog can offer the proper controls
 * @param words the choices of a {@link Form#CHOICE}, the names of the columns of {@link Form#ROWS}; else empty
 */
public record BondSetting(String name, String label, String standard, String hint, Form form, List<String> words) {
  /** What the text of a setting is made of. */
  public enum Form {
    /** Anything. */
    TEXT,
    /** One of some words. */
    CHOICE,
    /** A length. */
    LENGTH,
    /** Lengths separated by commas. */
    LENGTHS,
    /** Whole numbers separated by commas; beside {@link #LENGTHS} one for each of them. */
    COUNTS,
    /** Rows of whole numbers: blanks between the numbers of a row, semicolons between the rows. */
    ROWS
  }

  public BondSetting {
    words = List.copyOf(words);
  }

  /** A setting of any text. */
  public BondSetting(String name, String label, String standard, String hint) {
    this(name, label, standard, hint, Form.TEXT, List.of());
  }

  /** This setting with its text made of something else. */
  public BondSetting of(Form other, String... others) {
    return new BondSetting(name, label, standard, hint, other, List.of(others));
  }
}
