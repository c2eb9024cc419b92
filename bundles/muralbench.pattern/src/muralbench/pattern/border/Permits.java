// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * What may be done, besides the joint, so that a band closes. Immutable; start from {@link #NONE}.
 *
 * @param moveIn how far the whole band may move in, mm, 0 or more
 * @param moveOut how far it may move out, mm, 0 or more
 * @param scale by what share a painted tile may be made longer or shorter, 0 to below 1: 0.02 for two per cent
 * @param centreMin narrowest piece in the middle of a side, mm; a motif of its own has min = max
 * @param centreMax widest such piece, mm; 0 if there may be none
 * @param endShare smallest share of a tile that may be left at the ends of a side, above 0 to 1; 0 if none may be cut
 */
public record Permits(double moveIn, double moveOut, double scale, double centreMin, double centreMax,
    double endShare) {
  /** Nothing but the joint. */
  public static final Permits NONE = new Permits(0, 0, 0, 0, 0, 0);

  /** And the band may move in or out by this much, mm. */
  public Permits move(double in, double out) {
    return new Permits(in, out, scale, centreMin, centreMax, endShare);
  }

  /** And painted tiles may be longer or shorter by this share, such as 0.02. */
  public Permits scale(double share) {
    return new Permits(moveIn, moveOut, share, centreMin, centreMax, endShare);
  }

  /** And a side may have a plain piece of such a width in its middle, mm. */
  public Permits centre(double min, double max) {
    return new Permits(moveIn, moveOut, scale, min, max, endShare);
  }

  /** And a side may have a motif of this length of its own in its middle, mm. */
  public Permits centre(double length) {
    return centre(length, length);
  }

  /** And both ends of a side may be cut alike, to this share of a tile or more. */
  public Permits ends(double share) {
    return new Permits(moveIn, moveOut, scale, centreMin, centreMax, share);
  }
}
