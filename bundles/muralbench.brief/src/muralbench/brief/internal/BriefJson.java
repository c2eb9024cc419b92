// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Map;
import muralbench.base.InputException;

/**
 * Reads JSON strictly (RFC 8259): nothing twice, no NaN, nothing after the end, nesting and lengths limited. Numbers
 * are kept as exact decimals.
 */
public final class BriefJson {
  /** Largest brief, bytes. */
  public static final int LARGEST = 16 << 20;

  private static final int DEEPEST = 32;
  private static final int LONGEST_NUMBER = 100;
  private static final int LONGEST_NAME = 1000;

  /** Numbers from 1e-30 to 1e15 are looked at further; nothing about a wall is beyond. */
  private static final int SMALLEST_EXPONENT = -30;
  private static final int LARGEST_EXPONENT = 15;

  /** Path data may run over several lines. */
  private static final String PATH = "/path";

  private static final JsonMapper MAPPER = mapper();

  private BriefJson() {}

  /** Reads a brief's text as a tree. */
  public static JsonNode parse(String json) throws InputException {
    if (json.length() > LARGEST) {
      throw BriefProblem.at("", "huge", "limit", LARGEST >> 20);
    }
    try {
      JsonNode root = MAPPER.readTree(json);
      if (root.isMissingNode()) {
        throw BriefProblem.at("", "empty");
      }
      refuseUnfit(root, "");
      return root;
    } catch (JsonProcessingException e) {
      throw problem(e);
    } catch (NumberFormatException e) {
      throw unheardOf(json, e);
    }
  }

  /** The exponent of a decimal has 32 bits; a number with a larger one cannot even be held. */
  private static InputException unheardOf(String json, NumberFormatException thrown) {
    try (JsonParser parser = MAPPER.createParser(json)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token.isNumeric() && !isDecimal(parser.getText())) {
          String pointer = parser.getParsingContext().pathAsPointer().toString();
          return BriefProblem.at(pointer, "magnitude", "value", parser.getText());
        }
      }
    } catch (JsonProcessingException e) {
      return problem(e);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can always be read", e);
    }
    throw thrown;
  }

  private static boolean isDecimal(String number) {
    try {
      return new BigDecimal(number).precision() > 0;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static JsonMapper mapper() {
    JsonFactory factory = JsonFactory.builder()
        .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxStringLength(LARGEST)
            .maxNumberLength(LONGEST_NUMBER).maxNameLength(LONGEST_NAME).build())
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .build();
    return JsonMapper.builder(factory)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS, DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS,
            DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
        .build();
  }

  private static InputException problem(JsonProcessingException e) {
    JsonLocation location = e.getLocation();
    int line = location == null ? 1 : location.getLineNr();
    int column = location == null ? 1 : location.getColumnNr();
    String message = String.valueOf(e.getOriginalMessage());
    if (e instanceof StreamConstraintsException) {
      return message.contains("nesting depth") ? BriefProblem.at("", "nested", "limit", DEEPEST)
          : BriefProblem.at("", "limits", "line", line);
    }
    if (e instanceof JsonEOFException) {
      return BriefProblem.at("", "truncated", "line", line);
    }
    if (e instanceof MismatchedInputException) {
      return BriefProblem.at("", "trailing");
    }
    if (message.startsWith("Duplicate field") && e.getProcessor() instanceof JsonParser parser) {
      String name = message.substring(message.indexOf('\'') + 1, message.lastIndexOf('\''));
      String owner = parser.getParsingContext().pathAsPointer().toString();
      return BriefProblem.at(owner, "twice", "name", name);
    }
    return BriefProblem.at("", "syntax", "line", line, "column", column);
  }

  /**
   * Refuses what no schema can say in every validator's dialect: half a surrogate pair, a line break at the end, which
   * many take for the end itself, and numbers by the exponent alone, as to work out 1e999999999 would take all memory.
   */
  private static void refuseUnfit(JsonNode node, String pointer) throws InputException {
    if (node.isTextual() && isUnfit(node.textValue()) && !pointer.endsWith(PATH)) {
      throw BriefProblem.withRemedy(pointer, "pattern", "pattern.text", "value", node);
    }
    if (node.isNumber()) {
      BigDecimal value = node.decimalValue();
      long exponent = (long) value.precision() - value.scale();
      if (value.signum() != 0 && (exponent > LARGEST_EXPONENT || exponent < SMALLEST_EXPONENT)) {
        throw BriefProblem.at(pointer, "magnitude", "value", value);
      }
    }
    int index = 0;
    for (JsonNode item : node.isArray() ? node : JsonNodeFactory.instance.arrayNode()) {
      refuseUnfit(item, pointer + "/" + index++);
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      refuseUnfit(field.getValue(), pointer + "/" + Field.escaped(field.getKey()));
    }
  }

  private static boolean isUnfit(String text) {
    return text.endsWith("\n") || text.endsWith("\r") || text.endsWith("\u0085") || text.endsWith("\u2028")
        || text.endsWith("\u2029") || text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE);
  }
}
