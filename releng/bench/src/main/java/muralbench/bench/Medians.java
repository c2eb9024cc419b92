// SPDX-License-Identifier: EPL-2.0
package muralbench.bench;

import java.util.Arrays;
import java.util.concurrent.Callable;

/** Times work several times over and takes the median. */
final class Medians {
  private static final int WARM_UP = 3;
  private static final int RUNS = 7;

  private Medians() {}

  /** The median wall-clock time of the work, milliseconds. */
  static double time(Callable<?> work) throws Exception {
    for (int i = 0; i < WARM_UP; i++) {
      work.call();
    }
    double[] times = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long start = System.nanoTime();
      work.call();
      times[i] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(times);
    return times[RUNS / 2];
  }
}
