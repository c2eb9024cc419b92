// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * How far the three common unknowns of a band may go with the means of one mask: the joint beyond the preferred one,
 * the stretch of the first painted row's tile, and the move, all in mm and 0 where nothing is changed.
 *
 * @param border the band
 * @param mask the means, by their weights
 * @param tile the length of the tile that the stretch is told for, mm
 * @param near an unknown that has to be nearer to 0 than permitted; -1 for none
 * @param reach how near, mm
 */
record Scope(Border border, int mask, double tile, int near, double reach) {
  static final int JOINT = 0;
  static final int STRETCH = 1;
  static final int MOVE = 2;

  /** The means that the band permits, by their weights. */
  static int permitted(Border border) {
    Permits permits = border.permits();
    JointRange joint = border.joint();
    int mask = joint.max() > joint.min() ? Means.JOINT.weight() : 0;
    mask |= permits.moveIn() > 0 || permits.moveOut() > 0 ? Means.MOVE.weight() : 0;
    mask |= permits.scale() > 0 ? Means.SCALE.weight() : 0;
    mask |= permits.centreMax() > 0 ? Means.CENTRE.weight() : 0;
    return mask | (permits.endShare() > 0 ? Means.ENDS.weight() : 0);
  }

  /** The same scope with one unknown kept near 0. */
  Scope within(int unknown, double limit) {
    return new Scope(border, mask, tile, unknown, limit);
  }

  boolean uses(int unknown) {
    return switch (unknown) {
      case JOINT -> Means.JOINT.in(mask);
      case STRETCH -> Means.SCALE.in(mask);
      default -> Means.MOVE.in(mask);
    };
  }

  double low(int unknown) {
    if (!uses(unknown)) {
      return 0;
    }
    return unknown == near ? Math.max(-reach, permittedLow(unknown)) : permittedLow(unknown);
  }

  private double permittedLow(int unknown) {
    return switch (unknown) {
      case JOINT -> border.joint().min() - border.joint().preferred();
      case STRETCH -> -tile * border.permits().scale();
      default -> -border.permits().moveOut();
    };
  }

  double high(int unknown) {
    if (!uses(unknown)) {
      return 0;
    }
    return unknown == near ? Math.min(reach, permittedHigh(unknown)) : permittedHigh(unknown);
  }

  private double permittedHigh(int unknown) {
    return switch (unknown) {
      case JOINT -> border.joint().max() - border.joint().preferred();
      case STRETCH -> tile * border.permits().scale();
      default -> border.permits().moveIn();
    };
  }

  double lowJoint() {
    return border.joint().preferred() + low(JOINT);
  }

  double highJoint() {
    return border.joint().preferred() + high(JOINT);
  }

  double lowTile(RunClass run) {
    return run.tile() * (1 + low(STRETCH) / tile);
  }

  double highTile(RunClass run) {
    return run.tile() * (1 + high(STRETCH) / tile);
  }
}
