// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.Comparator;
import java.util.List;

/**
 * One axis of a pattern with some of its straight joints opened wider. What lies beyond an opened joint, seen from 0,
 * moves away from 0, so that the face the pattern starts from stays where it is.
 */
final class OpenedAxis {
  /** A joint and what it is opened by, mm; {@code at} is its middle before anything was opened. */
  record Opened(double at, double extra) {}

  private final List<Opened> joints;

  OpenedAxis(List<Opened> joints) {
    this.joints = joints.stream().sorted(Comparator.comparingDouble(Opened::at)).toList();
  }

  /** How far something at a place that is no opened joint moves. */
  double shift(double at) {
    double shift = 0;
    for (Opened joint : joints) {
      if (joint.at() > 0 && joint.at() < at) {
        shift += joint.extra();
      } else if (joint.at() <= 0 && joint.at() > at) {
        shift -= joint.extra();
      }
    }
    return shift;
  }

  /** Where the middle of an opened joint comes to be. */
  double middle(Opened joint) {
    return joint.at() + shift(joint.at()) + (joint.at() > 0 ? joint.extra() / 2 : -joint.extra() / 2);
  }

  /** What is added beyond 0. */
  double after() {
    return joints.stream().filter(joint -> joint.at() > 0).mapToDouble(Opened::extra).sum();
  }

  /** What is added before 0. */
  double before() {
    return joints.stream().filter(joint -> joint.at() <= 0).mapToDouble(Opened::extra).sum();
  }

  List<Opened> joints() {
    return joints;
  }
}
