// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import muralbench.base.Progress;

/** Progress of a part of a task: what it counts is its own business, but it stops when the task is cancelled. */
final class Steps {
  private Steps() {}

  static Progress onlyCancel(Progress whole) {
    return new Progress() {
      @Override
      public void begin(String task, int steps) {
        whole.step(0);
      }

      @Override
      public void step(int steps) {
        whole.step(0);
      }
    };
  }
}
