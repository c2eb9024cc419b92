// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.List;
import java.util.Objects;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.model.Mural;
import muralbench.model.Panel;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Takes panels, openings or kinds of tile out of the mural; what other panels took from them, one of those has then.
 */
public final class DeleteCommand extends ModelCommand {
  private static final Messages TEXTS = Messages.of(DeleteCommand.class);

  private final List<EObject> things;

  /** A command for one or more things. */
  public DeleteCommand(Mural mural, List<? extends EObject> things) {
    super(TEXTS.text("delete", "what", things.size() == 1 ? Names.of(things.get(0))
        : TEXTS.text("name.several", "count", things.size())), mural);
    this.things = List.copyOf(things);
  }

  /** A kind of tile that a panel is made of stays. */
  @Override
  public boolean canExecute() {
    return mural().getPanels().stream().map(Panel::getTileKind).filter(Objects::nonNull).noneMatch(things::contains);
  }

  @Override
  protected void change() {
    new Heirs(mural(), things).settle();
    things.forEach(EcoreUtil::remove);
  }
}
