// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import muralbench.base.CancelledException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;

class MonitorProgressTest {
  @Test
  void aCancelledMonitorStopsTheComputationAtItsNextStep() {
    NullProgressMonitor monitor = new NullProgressMonitor();
    MonitorProgress progress = new MonitorProgress(monitor);
    progress.begin("cutting", 10);
    assertDoesNotThrow(() -> progress.step(1));
    monitor.setCanceled(true);
    assertThrows(CancelledException.class, () -> progress.step(1));
  }

  @Test
  void stepsReachTheMonitorInProportion() {
    double[] worked = {0};
    int[] total = {0};
    MonitorProgress progress = new MonitorProgress(new NullProgressMonitor() {
      @Override
      public void beginTask(String name, int work) {
        total[0] = work;
      }

      @Override
      public void internalWorked(double work) {
        worked[0] += work;
      }

      @Override
      public void worked(int work) {
        worked[0] += work;
      }
    });
    progress.begin("cutting", 4);
    progress.step(3);
    assertEquals(0.75, worked[0] / total[0], 0.01);
  }
}
