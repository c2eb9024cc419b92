// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import muralbench.base.InputException;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/**
 * Reads the lengths of a brief: a number in its units, or a text with a unit of its own.
 *
 * @param unit the unit of a number that has none
 */
record Lengths(LengthUnit unit) {
  /** A coordinate, mm. */
  double position(Field field) throws InputException {
    double length = millimetres(field);
    if (Math.abs(length) > LengthText.LIMIT) {
      throw BriefProblem.at(field.pointer(), "length.large", "value", field.node());
    }
    return length;
  }

  /** A length above 0, mm. */
  double size(Field field) throws InputException {
    double length = position(field);
    if (!(length > 0)) {
      throw BriefProblem.at(field.pointer(), "length.positive", "name", BriefProblem.nameOf(field.pointer()),
          "value", field.node(), "example", unit == LengthUnit.INCH ? "\"5 ft 3-1/2 in\"" : "\"1.6 m\"");
    }
    return length;
  }

  /** A length of 0 or more, mm; 0 if it is not given. */
  double gap(Field field) throws InputException {
    double length = field.isGiven() ? position(field) : 0;
    if (length < 0) {
      throw BriefProblem.at(field.pointer(), "length.notNegative", "name",
          BriefProblem.nameOf(field.pointer()), "value", field.node());
    }
    return length;
  }

  private double millimetres(Field field) throws InputException {
    JsonNode node = field.node();
    if (node.isNumber()) {
      return node.decimalValue().multiply(BigDecimal.valueOf(unit.millimetres())).doubleValue();
    }
    try {
      return LengthText.parse(node.textValue(), unit);
    } catch (LengthFormatException e) {
      throw BriefProblem.at(field.pointer(), "length", "what", e.getMessage(), "unit",
          BriefProblem.text("unit." + unit.symbol()));
    }
  }
}
