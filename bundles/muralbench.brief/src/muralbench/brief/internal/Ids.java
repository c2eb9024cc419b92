// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import muralbench.base.InputException;

/**
 * Sees to it that ids are unique: those of the tiles among themselves, those of panels and openings together, since
 * either may be the place a finding names.
 */
final class Ids {
  private final Map<String, String> tiles = new HashMap<>();
  private final Map<String, String> places = new HashMap<>();
  private final Map<String, String> panels = new HashMap<>();

  String tile(Field field) throws InputException {
    return unique(field, tiles);
  }

  String opening(Field field) throws InputException {
    return unique(field, places);
  }

  String panel(Field field) throws InputException {
    String id = unique(field, places);
    String other = panels.putIfAbsent(id.toLowerCase(Locale.ROOT), id);
    if (other != null) {
      throw BriefProblem.at(field.pointer(), "panelIdCase", "id", id, "other", other);
    }
    return id;
  }

  private static String unique(Field field, Map<String, String> known) throws InputException {
    String id = field.text("");
    String other = known.putIfAbsent(id, field.pointer());
    if (other != null) {
      throw BriefProblem.at(field.pointer(), "idTwice", "id", id, "other", other);
    }
    return id;
  }
}
