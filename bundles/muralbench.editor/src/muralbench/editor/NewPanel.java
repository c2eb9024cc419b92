// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.Mural;
import muralbench.model.Outline;
import muralbench.model.Panel;

/** A panel to be added to a mural, with tile, joint and bond of its nearest neighbour. */
public final class NewPanel {
  private final AddPanelCommand command;

  private NewPanel(AddPanelCommand command) {
    this.command = command;
  }

  /**
   * A panel with an outline.
   *
   * @param outline owned by nobody yet
   * @throws IllegalArgumentException if it cannot be read
   */
  public static NewPanel of(Mural mural, Outline outline) {
    Frame frame = Outlines.frame(outline).orElseThrow(() -> new IllegalArgumentException("unreadable outline"));
    return new NewPanel(new AddPanelCommand(mural, outline, frame));
  }

  /** Adds it; one step of undo. */
  public ModelCommand command() {
    return command;
  }

  /** The panel, complete once the command has run. */
  public Panel panel() {
    return command.panel();
  }
}
