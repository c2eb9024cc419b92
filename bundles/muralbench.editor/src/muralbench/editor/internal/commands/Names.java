// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.HashSet;
import java.util.Set;
import muralbench.base.Messages;
import muralbench.base.place.PlaceIds;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.EObject;

/** How things of the mural are called in commands, and which ids are free. */
public final class Names {
  private static final Messages TEXTS = Messages.of(Names.class);

  private Names() {}

  /** For example {@code panel A}, {@code opening A2}. */
  public static String of(EObject thing) {
    if (thing instanceof Panel panel) {
      return TEXTS.text("name.panel", "id", panel.getId());
    }
    if (thing instanceof Opening opening) {
      return TEXTS.text("name.opening", "id", opening.getId());
    }
    return thing instanceof TileKind tile ? TEXTS.text("name.tile", "id", tile.getId()) : TEXTS.text("name.mural");
  }

  /** All ids of panels and openings. */
  public static Set<String> ids(Mural mural) {
    Set<String> ids = new HashSet<>();
    for (Panel panel : mural.getPanels()) {
      ids.add(panel.getId());
      panel.getOpenings().forEach(opening -> ids.add(opening.getId()));
    }
    return ids;
  }

  /** A free id for a panel: the first of A to Z, then AA, AB and so on. */
  public static String freePanelId(Mural mural) {
    Set<String> taken = ids(mural);
    for (int i = 0;; i++) {
      String id = letters(i);
      if (PlaceIds.taken(id, taken).isEmpty()) {
        return id;
      }
    }
  }

  private static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letters(index / 26 - 1) + last;
  }

  /** A free id for an opening of a panel: the panel's id with the first free number. */
  public static String freeOpeningId(Mural mural, Panel panel) {
    Set<String> taken = ids(mural);
    for (int number = 1;; number++) {
      if (PlaceIds.taken(panel.getId() + number, taken).isEmpty()) {
        return panel.getId() + number;
      }
    }
  }

  /** A free id for a kind of tile: T1, T2 and so on. */
  public static String freeTileId(Mural mural) {
    Set<String> taken = new HashSet<>();
    mural.getTileKinds().forEach(tile -> taken.add(tile.getId()));
    for (int number = 1;; number++) {
      if (!taken.contains("T" + number)) {
        return "T" + number;
      }
    }
  }
}
