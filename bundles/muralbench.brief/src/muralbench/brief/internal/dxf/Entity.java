// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;

/**
 * An entity of a drawing, or a vertex of a polyline.
 *
 * @param type such as {@code LINE}
 * @param tags its groups, without the one that names it
 * @param line where it begins
 * @param vertices of a POLYLINE
 */
record Entity(String type, List<Tag> tags, int line, List<Entity> vertices) {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");
  /** How files before the release of 2007 write what their code page lacks. */
  private static final Pattern ESCAPED = Pattern.compile("\\\\U\\+([0-9A-Fa-f]{4})");

  Entity {
    tags = List.copyOf(tags);
    vertices = List.copyOf(vertices);
  }

  /** The layer; 0 where none is named. */
  String layer() {
    return ESCAPED.matcher(text(8, "0")).replaceAll(found -> Matcher.quoteReplacement(
        String.valueOf((char) Integer.parseInt(found.group(1), 16))));
  }

  boolean onPaper() {
    return text(67, "0").equals("1");
  }

  String text(int code, String otherwise) {
    return tags.stream().filter(tag -> tag.code() == code).map(Tag::value).findFirst().orElse(otherwise);
  }

  /** A number that has to be there. */
  double number(int code, DxfProblem problem) throws InputException {
    for (Tag tag : tags) {
      if (tag.code() == code) {
        return number(tag, problem);
      }
    }
    throw problem.at(line, "missing", "type", type, "code", code);
  }

  double number(int code, double otherwise, DxfProblem problem) throws InputException {
    return text(code, null) == null ? otherwise : number(code, problem);
  }

  /** Bits. */
  int flags(DxfProblem problem) throws InputException {
    return (int) number(70, 0, problem);
  }

  static double number(Tag tag, DxfProblem problem) throws InputException {
    if (tag.value().length() <= 100 && NUMBER.matcher(tag.value()).matches()) {
      double value = Double.parseDouble(tag.value());
      if (Double.isFinite(value)) {
        return value;
      }
    }
    String shown = tag.value().length() <= 30 ? tag.value() : tag.value().substring(0, 30) + "…";
    throw problem.at(tag.line(), "number", "value", shown);
  }
}
