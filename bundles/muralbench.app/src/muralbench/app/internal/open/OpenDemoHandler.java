// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Help > Open the Demo. */
public final class OpenDemoHandler extends AbstractHandler {
  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    new MuralOpener(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()).openDemo();
    return null;
  }
}
