// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

/** The way a movement joint runs in the wall plane. */
public enum MovementAxis {
  /** Plumb; its place is an x. */
  VERTICAL("vertical"),
  /** Level; its place is a y. */
  HORIZONTAL("horizontal");

  private final String word;

  MovementAxis(String word) {
    this.word = word;
  }

  /** The way as a word in lower case, as used in files. */
  public String word() {
    return word;
  }
}
