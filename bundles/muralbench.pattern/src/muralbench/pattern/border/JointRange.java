// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * The joints a band may have; all joints of a band are equally wide.
 *
 * @param min narrowest, mm, 0 or more
 * @param preferred the joint that does no harm, mm, within the range
 * @param max widest, mm, at least {@code min}
 */
public record JointRange(double min, double preferred, double max) {
  /** A range whose preferred joint is its middle. */
  public static JointRange of(double min, double max) {
    return new JointRange(min, (min + max) / 2, max);
  }

  /** One width only. */
  public static JointRange fixed(double joint) {
    return new JointRange(joint, joint, joint);
  }
}
