// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * What a class of runs is made of.
 *
 * @param run the class
 * @param whole number of whole tiles
 * @param centre whether there is a piece in the middle
 * @param ends whether both ends are cut
 */
record Choice(RunClass run, int whole, boolean centre, boolean ends) {
  /** How many whole tiles the repeats come in: one repeat, or one on each side of the centre piece. */
  private int unit() {
    return run.repeat() * (centre ? 2 : 1);
  }

  /**
   * How many whole tiles of the neighbouring repeat stand at each end: none, or beside a cut tile less than one repeat.
   * -1 if the whole tiles cannot be shared out so.
   */
  int outside() {
    for (int outside = 0; outside < (ends ? run.repeat() : 1); outside++) {
      int inside = whole - 2 * outside;
      if (inside >= unit() && inside % unit() == 0) {
        return outside;
      }
    }
    return -1;
  }

  /** Whether two tiles more would make whole repeats. */
  boolean nearlyWhole() {
    return (whole + 2) % unit() == 0;
  }

  int pieces() {
    return whole + (centre ? 1 : 0) + (ends ? 2 : 0);
  }

  boolean free() {
    return centre || ends;
  }

  /** Coefficient of the joint in the equation of the run. */
  double joints() {
    return run.jointsOf(pieces());
  }

  /** What is left for the centre piece and the two ends, mm. */
  double rest(double joint, double tile, double move) {
    return run.room(move) - whole * tile - joints() * joint;
  }
}
