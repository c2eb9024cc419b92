// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.util.List;
import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.commands.DeleteCommand;
import muralbench.editor.internal.commands.OutlineKind;
import muralbench.editor.internal.commands.PlaceCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Mural;
import muralbench.model.Panel;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.commands.CommandStack;
import org.junit.jupiter.api.Assertions;

/** Many edits in any order, undone one by one, give back the mural they started from. */
class EditingProperties {
  /** One edit: what, to which panel, by how much. */
  record Edit(int what, int panel, double amount) {
    ModelCommand command(Mural mural) {
      if (mural.getPanels().isEmpty()) {
        return new AddPanelCommand(mural, new Frame(amount, amount, 500, 500));
      }
      Panel panel = mural.getPanels().get(panel() % mural.getPanels().size());
      Frame from = Placement.frame(panel).orElseThrow();
      return switch (what) {
        case 0 -> place(mural, panel, from, from.moved(amount, -amount));
        case 1 -> place(mural, panel, from, new Frame(from.x(), from.y(), from.width() + amount, from.height() + 1));
        case 2 -> new DeleteCommand(mural, List.of(panel));
        case 3 -> new AddPanelCommand(mural, new Frame(amount, amount, 500, 500));
        case 4 -> ModelCommand.of("joint", mural, () -> panel.setJoint(amount));
        default -> ModelCommand.of("kind", mural, () -> become(panel, (int) amount % 4));
      };
    }

    private static ModelCommand place(Mural mural, Panel panel, Frame from, Frame to) {
      return new PlaceCommand(mural, List.of(new PlaceCommand.Place(panel, from, to)));
    }

    private static void become(Panel panel, int kind) {
      panel.setOutline(OutlineKind.values()[kind].from(panel.getOutline()).orElseThrow());
    }
  }

  @Provide
  Arbitrary<Edit> edits() {
    return net.jqwik.api.Combinators.combine(Arbitraries.integers().between(0, 5), Arbitraries.integers().between(0, 9),
        Arbitraries.doubles().between(0.1, 400)).as(Edit::new);
  }

  @Property(tries = 200)
  void allEditsUndoneGiveTheFirstMural(@ForAll @Size(max = 12) List<@net.jqwik.api.From("edits") Edit> edits) {
    Mural mural = SampleMural.create();
    Mural before = EcoreUtil.copy(mural);
    CommandStack stack = new CommandStack();
    edits.forEach(edit -> stack.execute(edit.command(mural)));
    Mural after = EcoreUtil.copy(mural);
    while (stack.canUndo()) {
      stack.undo();
    }
    Assertions.assertTrue(EcoreUtil.equals(before, mural), "undone");
    while (stack.canRedo()) {
      stack.redo();
    }
    Assertions.assertTrue(EcoreUtil.equals(after, mural), "redone");
  }
}
