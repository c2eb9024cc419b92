// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.welcome;

import muralbench.app.internal.Pictures;
import muralbench.base.Messages;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** Stands for the welcome page, of which there is one. */
final class WelcomeInput implements IEditorInput {
  private static final String NAME = Messages.of(WelcomeInput.class).text("welcome.tab");

  @Override
  public boolean exists() {
    return false;
  }

  @Override
  public ImageDescriptor getImageDescriptor() {
    return Pictures.descriptor("welcome");
  }

  @Override
  public String getName() {
    return NAME;
  }

  @Override
  public IPersistableElement getPersistable() {
    return null;
  }

  @Override
  public String getToolTipText() {
    return NAME;
  }

  @Override
  public <T> T getAdapter(Class<T> adapter) {
    return null;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WelcomeInput;
  }

  @Override
  public int hashCode() {
    return WelcomeInput.class.hashCode();
  }
}
