// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/**
 * An input that cannot be handled: what is wrong, where, and how to mend it, in plain words. The message of the
 * exception joins the three and is fit to be shown to a person as it is; all are one line each, see {@link PlainLine}.
 */
public class InputException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String place;
  private final String problem;
  private final String remedy;

  /**
   * An input error.
   *
   * @param place the field as a JSON pointer such as {@code /panels/0/joint}, the file name, or the id of a panel or
   *     opening; empty if there is no better place than the whole input
   * @param problem what is wrong, without a final full stop
   * @param remedy what to do, a sentence with its full stop
   */
  public InputException(String place, String problem, String remedy) {
    this(place, problem, remedy, null);
  }

  /** As the other constructor, with the failure that led here. */
  public InputException(String place, String problem, String remedy, Throwable cause) {
    super(PlainLine.of((place.isEmpty() ? "" : place + ": ") + problem + ". " + remedy), cause);
    this.place = PlainLine.of(place);
    this.problem = PlainLine.of(problem);
    this.remedy = PlainLine.of(remedy);
  }

  /** The field as a JSON pointer, the file, or the id; may be empty. */
  public String place() {
    return place;
  }

  /** What is wrong, without a final full stop. */
  public String problem() {
    return problem;
  }

  /** What to do about it. */
  public String remedy() {
    return remedy;
  }
}
