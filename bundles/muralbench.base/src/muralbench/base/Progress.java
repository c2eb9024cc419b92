// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/**
 * Tells a person how far a computation has come, and tells the computation to stop. The computing side calls
 * {@link #begin} once and {@link #step} as work is done; {@code step} throws when the person has cancelled.
 * Implementations must bear calls from any one thread at a time.
 */
public interface Progress {
  /** Progress that nobody watches and nobody cancels. */
  Progress NONE = new Progress() {
    @Override
    public void begin(String task, int steps) {}

    @Override
    public void step(int steps) {}
  };

  /**
   * Starts a task.
   *
   * @param task what is being done, in plain words
   * @param steps how many steps the task will take, at least 0
   */
  void begin(String task, int steps);

  /**
   * Reports work done and gives the person's wish to stop its chance.
   *
   * @param steps how many steps were done since the last call, at least 0
   * @throws CancelledException if the person cancelled
   */
  void step(int steps);
}
