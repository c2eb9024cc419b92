// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.place.PlaceIds;

/**
 * Sees to it that ids are unique: those of the tiles among themselves, those of panels and openings together, since
 * either may be the place a finding names.
 */
final class Ids {
  private final Map<String, String> tiles = new HashMap<>();
  private final Map<String, String> places = new LinkedHashMap<>();

  String tile(Field field) throws InputException {
    String id = field.text("");
    String other = tiles.putIfAbsent(id, field.pointer());
    if (other != null) {
      throw BriefProblem.at(field.pointer(), "idTwice", "id", id, "other", other);
    }
    return id;
  }

  String opening(Field field) throws InputException {
    return place(field);
  }

  /** The id of a panel, whose form the schema has seen to. */
  String panel(Field field) throws InputException {
    return place(field);
  }

  private String place(Field field) throws InputException {
    String id = field.text("");
    Optional<String> other = PlaceIds.taken(id, places.keySet());
    if (other.isPresent()) {
      throw BriefProblem.at(field.pointer(), "placeTwice", "problem", PlaceIds.takenProblem(id, other.get()), "other",
          places.get(other.get()), "remedy", PlaceIds.takenRemedy());
    }
    places.put(id, field.pointer());
    return id;
  }
}
