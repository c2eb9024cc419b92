// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.List;
import muralbench.editor.internal.commands.DeleteCommand;
import muralbench.editor.internal.parts.ScenePart;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

/** Lets a panel or opening be deleted. */
public final class DeletePolicy extends ComponentEditPolicy {
  @Override
  protected Command createDeleteCommand(GroupRequest request) {
    ScenePart part = (ScenePart) getHost();
    return new DeleteCommand(part.scene().mural().mural(), List.of(part.thing()));
  }
}
