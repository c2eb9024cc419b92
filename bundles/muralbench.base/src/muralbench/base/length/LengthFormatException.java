// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

/** A text that is no length. The message is plain words and ends with an example that would do. */
public class LengthFormatException extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is wrong with the text. */
  public enum Problem {
    /** Nothing there. */
    EMPTY,
    /** Not a finite number, or words in the wrong order. */
    UNREADABLE,
    /** A unit that is not known. */
    UNKNOWN_UNIT,
    /** Over {@link LengthText#LIMIT}. */
    OUT_OF_RANGE
  }

  private final Problem problem;
  private final String text;
  private final String example;

  LengthFormatException(Problem problem, String text, String message, String example) {
    super(message);
    this.problem = problem;
    this.text = text;
    this.example = example;
  }

  /** What is wrong. */
  public Problem problem() {
    return problem;
  }

  /** The text that was read. */
  public String text() {
    return text;
  }

  /** A text that would be read. */
  public String example() {
    return example;
  }
}
