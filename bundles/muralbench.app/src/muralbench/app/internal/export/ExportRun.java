// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import muralbench.app.internal.MonitorProgress;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.model.Mural;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.SetOutChecks;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.operation.IRunnableWithProgress;

/**
 * Sets a mural out and writes the chosen documents, all of them or none. Works on a copy of the mural, made when the
 * run is made, so that it may run beside the editor.
 */
public final class ExportRun implements IRunnableWithProgress {
  private static final Messages TEXTS = Messages.of(ExportRun.class);

  private final Mural mural;
  private final BondRegistry bonds;
  private final ExportOrder order;
  private List<Path> written = List.of();

  /** A run for a mural as it is now. */
  public ExportRun(Mural mural, BondRegistry bonds, ExportOrder order) {
    this.mural = EcoreUtil.copy(mural);
    this.bonds = bonds;
    this.order = order;
  }

  /** The files that were written; none before the run has ended well. */
  public List<Path> written() {
    return written;
  }

  @Override
  public void run(IProgressMonitor monitor) throws InvocationTargetException, InterruptedException {
    SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("run.task"), order.exporters().size() + 1);
    try (OutputFolder output = OutputFolder.open(order.folder())) {
      ExportContext context = context(progress.split(1));
      for (Exporter exporter : order.exporters()) {
        progress.setTaskName(TEXTS.text("run.document", "document", exporter.label()));
        exporter.export(context, output, new MonitorProgress(progress.split(1)));
      }
      new MonitorProgress(progress.split(0)).step(0);
      written = output.commit();
    } catch (CancelledException | OperationCanceledException e) {
      throw new InterruptedException(e.getMessage());
    } catch (InputException | IOException | RuntimeException e) {
      throw new InvocationTargetException(e);
    }
  }

  private ExportContext context(IProgressMonitor monitor) throws InputException {
    MuralSetOut setOut = SetOut.mural(PatternReader.mural(mural), bonds, new MonitorProgress(monitor));
    return new ExportContext(setOut, SetOutChecks.findings(setOut), order.paper(), LocalDate.now());
  }
}
