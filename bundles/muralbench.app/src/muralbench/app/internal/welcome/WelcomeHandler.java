// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.welcome;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Help > Welcome. */
public final class WelcomeHandler extends AbstractHandler {
  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    WelcomePage.show(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
    return null;
  }
}
