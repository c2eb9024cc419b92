// SPDX-License-Identifier: EPL-2.0
package muralbench.base.place;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Pattern;
import muralbench.base.Messages;

/**
 * The rule for the ids of panels and openings, which findings name as places. The id of a panel starts the keys of its
 * pieces and the names of its files, so that it is short and plain; and since some file systems take no notice of
 * capital letters, ids that differ only in those are taken for one. Common practice.
 */
public final class PlaceIds {
  /** What the id of a panel looks like, as a regular expression for the whole id. */
  public static final String PANEL = "[A-Za-z0-9_]{1,16}";

  private static final Pattern PANEL_PATTERN = Pattern.compile(PANEL);
  private static final Messages TEXTS = Messages.of(PlaceIds.class);

  private PlaceIds() {}

  /** Whether a text can be the id of a panel. */
  public static boolean isPanelId(String id) {
    return id != null && PANEL_PATTERN.matcher(id).matches();
  }

  /** What is wrong with the id of a panel, without a full stop, for one that {@link #isPanelId} refuses. */
  public static String panelProblem(String id) {
    return TEXTS.text("panelId.problem", "id", id);
  }

  /** What the id of a panel has to look like, a sentence. */
  public static String panelRemedy() {
    return TEXTS.text("panelId.remedy");
  }

  /** The id among those taken that a new id cannot be told from; none if it is free. */
  public static Optional<String> taken(String id, Collection<String> others) {
    return others.stream().filter(id::equalsIgnoreCase).findFirst();
  }

  /** That an id is taken, without a full stop; {@code other} is the one that is there already. */
  public static String takenProblem(String id, String other) {
    return TEXTS.text(id.equals(other) ? "taken.problem" : "takenCase.problem", "id", id, "other", other);
  }

  /** What to do about an id that is taken, a sentence. */
  public static String takenRemedy() {
    return TEXTS.text("taken.remedy");
  }
}
