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
