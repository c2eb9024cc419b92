// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.List;
import muralbench.editor.internal.commands.DeleteCommand;
import muralbench.model.Mural;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

/** Lets a panel, an opening or a kind of tile be deleted. */
public final class DeletePolicy extends ComponentEditPolicy {
  private final Mural mural;

  /** A policy for a thing of a mural. */
  public DeletePolicy(Mural mural) {
    this.mural = mural;
  }

  @Override
  protected Command createDeleteCommand(GroupRequest request) {
    return new DeleteCommand(mural, List.of((EObject) getHost().getModel()));
  }
}
