// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Origin;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Sees to the panels that take something from panels which are taken out of the mural: one of them comes into the
 * place of the old one and the others take from it from now on, so that faces stay alike and a grid still runs on.
 */
final class Heirs {
  private final Mural mural;
  private final Collection<?> gone;

  Heirs(Mural mural, Collection<?> gone) {
    this.mural = mural;
    this.gone = gone;
  }

  /** Makes the changes; the old panels are still in the mural. */
  void settle() {
    // An heir may come to take from another panel that goes; every step ends at one that is nearer to the head of its
    // row.
    for (Optional<Panel> next = toSettle(); next.isPresent(); next = toSettle()) {
      settle(next.get());
    }
  }

  private Optional<Panel> toSettle() {
    return mural.getPanels().stream().filter(panel -> !gone.contains(panel)).map(PanelSource::of)
        .filter(source -> source != null && gone.contains(source)).findFirst();
  }

  private void settle(Panel old) {
    List<RepeatedOutline> repeats = new ArrayList<>();
    List<Panel> shares = new ArrayList<>();
    for (Panel panel : mural.getPanels()) {
      if (!gone.contains(panel) && PanelSource.of(panel) == old) {
        if (panel.getOutline() instanceof RepeatedOutline repeated) {
          repeats.add(repeated);
        } else {
          shares.add(panel);
        }
      }
    }
    if (!repeats.isEmpty()) {
      repeat(repeats, old);
    }
    if (!shares.isEmpty()) {
      share(shares, old);
    }
  }

  private void repeat(List<RepeatedOutline> repeats, Panel old) {
    if (old.getOutline() instanceof RepeatedOutline further) {
      repeats.forEach(each -> turn(each, further.getPanel(), further.isMirrored()));
      return;
    }
    RepeatedOutline first = repeats.stream().filter(each -> !each.isMirrored()).findFirst().orElse(repeats.get(0));
    Panel heir = (Panel) first.eContainer();
    boolean mirrored = first.isMirrored();
    OwnLayout.give(mural, heir);
    repeats.stream().filter(each -> each != first).forEach(each -> turn(each, heir, mirrored));
  }

  private static void turn(RepeatedOutline repeat, Panel to, boolean mirrored) {
    repeat.setPanel(to);
    repeat.setMirrored(repeat.isMirrored() ^ mirrored);
  }

  private static void share(List<Panel> shares, Panel old) {
    Panel heir = shares.stream().filter(panel -> line(panel) == SharedLine.GRID).findFirst().orElse(shares.get(0));
    boolean grid = line(heir) == SharedLine.GRID && old.getOrigin() != null;
    Origin origin = grid ? EcoreUtil.copy(old.getOrigin()) : MuralFactory.eINSTANCE.createBalancedOrigin();
    heir.setOrigin(origin);
    shares.stream().filter(panel -> panel != heir)
        .forEach(panel -> ((SharedOrigin) panel.getOrigin()).setPanel(heir));
  }

  private static SharedLine line(Panel panel) {
    return ((SharedOrigin) panel.getOrigin()).getLine();
  }
}
