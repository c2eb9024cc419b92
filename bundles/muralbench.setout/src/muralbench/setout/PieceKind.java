// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/** How a piece was made from its tile: the first kind that fits of whole, pierced, curved, notched, trimmed. */
public enum PieceKind {
  /** The uncut face; a cut that would take off less than {@link SetOut#DUST_AREA} is not made. */
  WHOLE("whole"),
  /** A hole lies inside the piece. */
  PIERCED("pierced"),
  /** A cut edge is curved. */
  CURVED("curved"),
  /** A cut makes a corner that points inwards. */
  NOTCHED("notched"),
  /** Straight cuts only, all corners outwards: a rectangle made smaller, or cut across at an angle. */
  TRIMMED("trimmed");

  private final String word;

  PieceKind(String word) {
    this.word = word;
  }

  /** The kind as a word in lower case, as used in files. */
  public String word() {
    return word;
  }
}
