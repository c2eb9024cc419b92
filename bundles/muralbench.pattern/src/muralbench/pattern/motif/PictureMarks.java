// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

/**
 * Numbers that all orientations of a picture share and that few different pictures have in common. The boundaries give
 * their middles weights by their colours; sums of the middles, as complex numbers about the centre of the picture, and
 * of their squares only turn with the picture, so their sizes stay.
 *
 * @param spread sum of the squared distances from the centre
 * @param first size of the sum of the middles
 * @param second size of the sum of their squares
 * @param shares sum of the shares of the colours
 */
record PictureMarks(double spread, double first, double second, double shares) {
  /** One number for a search in order. */
  double one() {
    return spread + first + second + shares;
  }

  /** Whether each number is within {@code slack} of the other's. */
  boolean near(PictureMarks other, double slack) {
    return Math.abs(spread - other.spread) <= slack && Math.abs(first - other.first) <= slack
        && Math.abs(second - other.second) <= slack && Math.abs(shares - other.shares) <= slack;
  }

  /** A weight from 0.25 to 1 for a name. */
  static double weight(String name) {
    return 0.25 + 0.75 * Math.abs(name.hashCode() * 0x9E3779B9 / (double) Integer.MIN_VALUE);
  }

  /** Adds up the numbers. */
  static final class Sum {
    private double spread;
    private double firstX;
    private double firstY;
    private double secondX;
    private double secondY;
    private double shares;

    void add(double weight, double x, double y) {
      spread += weight * (x * x + y * y);
      firstX += weight * x;
      firstY += weight * y;
      secondX += weight * (x * x - y * y);
      secondY += weight * 2 * x * y;
    }

    void addShare(double weight, double share) {
      shares += weight * share;
    }

    PictureMarks marks() {
      return new PictureMarks(spread, Math.hypot(firstX, firstY), Math.hypot(secondX, secondY), shares);
    }
  }
}
