// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/** What a border tile is in its band. */
public enum BorderPiece {
  /** A whole tile of the run. */
  WHOLE,
  /** A corner tile. */
  CORNER,
  /** The piece in the middle of a side. */
  CENTRE,
  /** A tile cut at an end of a side. */
  CUT,
  /** A tile cut on the diagonal of a corner. */
  MITRE,
  /** A piece of a curved band. */
  WEDGE
}
