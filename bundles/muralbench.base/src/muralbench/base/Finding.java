// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import java.util.Map;
import java.util.Objects;

/**
 * What a check found: a rule, where it bites, the values that led to it and what to do about it.
 *
 * @param code stable identifier of the rule in lower case with dots, such as {@code joint.narrow}; never translated
 * @param grade how much it weighs
 * @param place what it is about: the id of a panel or opening, the key of a piece, or empty for the whole mural
 * @param message what was found, in plain words and with its numbers in the mural's units
 * @param remedy what to do about it, in plain words
 * @param source where the rule comes from: a standard with its clause, a publication, or "common practice"
 * @param values the typed values behind the message, by name; lengths in millimetres, areas in square millimetres
 */
public record Finding(String code, Grade grade, String place, String message, String remedy, String source,
    Map<String, Object> values) {
  public Finding {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(remedy, "remedy");
    Objects.requireNonNull(source, "source");
    values = Map.copyOf(values);
  }
}
