// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import muralbench.base.CancelledException;
import muralbench.base.Progress;

/**
 * Progress that nobody watches but that the interrupt key cancels: the work ends at its next step, and the program
 * waits for it, so that half-written files are cleared away.
 */
final class Interruption implements Progress, AutoCloseable {
  private static final int PATIENCE_SECONDS = 5;

  private final CountDownLatch ended = new CountDownLatch(1);
  private final Thread hook = new Thread(this::cancelAndWait, "interrupted");
  private volatile boolean cancelled;

  Interruption() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  @Override
  public void begin(String task, int steps) {
    step(0);
  }

  @Override
  public void step(int steps) {
    if (cancelled) {
      throw new CancelledException();
    }
  }

  /** The work has ended, one way or the other. */
  @Override
  public void close() {
    ended.countDown();
    if (!cancelled) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException goingDown) {
        // The interrupt key was pressed just now; the hook sees that the work has ended.
      }
    }
  }

  /** What happens when the program is told to end: the work stops, and this returns when it has. */
  void cancelAndWait() {
    cancelled = true;
    try {
      ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException hurry) {
      Thread.currentThread().interrupt();
    }
  }
}
