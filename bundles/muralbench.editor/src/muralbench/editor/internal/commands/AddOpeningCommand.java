// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;

/** Adds an opening to a panel. */
public final class AddOpeningCommand extends ModelCommand {
  private static final Messages TEXTS = Messages.of(AddOpeningCommand.class);

  private final Panel panel;
  private final String kind;
  private final Outline outline;
  private final Opening opening = MuralFactory.eINSTANCE.createOpening();

  /**
   * A command.
   *
   * @param kind what the opening is for, such as {@code outlet}
   * @param outline its edge, owned by nobody yet
   */
  public AddOpeningCommand(Mural mural, Panel panel, String kind, Outline outline) {
    super(TEXTS.text("add.opening", "id", Names.freeOpeningId(mural, panel)), mural);
    this.panel = panel;
    this.kind = kind;
    this.outline = outline;
  }

  /** The opening that is added. */
  public Opening opening() {
    return opening;
  }

  @Override
  protected void change() {
    opening.setId(Names.freeOpeningId(mural(), panel));
    opening.setKind(kind);
    opening.setOutline(outline);
    panel.getOpenings().add(opening);
  }
}
