// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.base.CancelledException;
import muralbench.base.Progress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

/** Shows the progress of a computation on one of the workbench's monitors and passes its cancel button on. */
public final class MonitorProgress implements Progress {
  private final SubMonitor monitor;

  /** Progress that takes the whole of a monitor. */
  public MonitorProgress(IProgressMonitor monitor) {
    this.monitor = SubMonitor.convert(monitor);
  }

  @Override
  public void begin(String task, int steps) {
    monitor.setTaskName(task);
    monitor.setWorkRemaining(steps);
    step(0);
  }

  @Override
  public void step(int steps) {
    if (monitor.isCanceled()) {
      throw new CancelledException();
    }
    monitor.worked(steps);
  }
}
