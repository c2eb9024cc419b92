// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import dev.harrel.jsonschema.Error;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.place.PlaceIds;

/** Puts what the schema finds into words of our own; what is known and what would do is taken from the schema. */
final class SchemaProblem {
  private final JsonNode schema;
  private final String keyword;
  private final String schemaPointer;
  private final String pointer;
  private final JsonNode value;

  SchemaProblem(JsonNode schema, JsonNode brief, Error error) {
    this.schema = schema;
    String location = error.getSchemaLocation().substring(error.getSchemaLocation().indexOf('#') + 1);
    // A field that is not known fails the schema "false" that stands at additionalProperties.
    boolean unknown = error.getKeyword() == null;
    this.keyword = unknown ? location.substring(location.lastIndexOf('/') + 1) : error.getKeyword();
    this.schemaPointer = unknown ? location.substring(0, location.lastIndexOf('/')) : location;
    this.pointer = error.getInstanceLocation();
    this.value = brief.at(pointer);
  }

  InputException exception() {
    JsonNode rule = schema.at(schemaPointer);
    JsonNode limit = rule.path(keyword);
    return switch (keyword) {
      case "required" -> required(rule);
      case "type" -> BriefProblem.withRemedy(pointer, keyword, pointer.isEmpty() ? "type.brief" : keyword,
          "found", kind(value), "expected", kinds(limit), "example", example(rule));
      case "minItems", "maxItems" -> items(rule, limit);
      case "enum" -> at("value", value, "known", list(limit));
      case "const" -> isNewer() ? BriefProblem.at(pointer, "version", "value", value, "known", limit)
          : at("value", value, "known", limit);
      case "pattern" -> pattern(rule);
      case "additionalProperties" -> unknown(names(rule.path("properties")));
      case "minimum", "exclusiveMinimum", "maximum" -> at("name", BriefProblem.nameOf(pointer), "value", value, "limit",
          limit, "example", example(rule));
      default -> at("value", value, "limit", limit, "count", value.size(), "known", String.join(", ", forms()),
          "example", example(rule));
    };
  }

  private InputException at(Object... namesAndValues) {
    return BriefProblem.at(pointer, keyword, namesAndValues);
  }

  /** A newer program may have given the fields another meaning, so its briefs are not guessed at. */
  private boolean isNewer() {
    return pointer.equals(BriefSchema.VERSION) && value.isNumber()
        && value.decimalValue().compareTo(BigDecimal.ONE) > 0;
  }

  private InputException required(JsonNode rule) {
    List<String> strange = names(value);
    strange.removeAll(names(owner().path("properties")));
    for (JsonNode missing : rule.path("required")) {
      String name = missing.textValue();
      if (!value.has(name)) {
        Optional<String> similar = NearName.of(name, strange);
        return similar.isPresent()
            ? BriefProblem.at(new Field(value, pointer).at(similar.get()).pointer(), "misspelt", "name", name,
                "similar", similar.get())
            : BriefProblem.at(pointer + "/" + name, keyword, "name", name, "example",
                example(owner().path("properties").path(name)));
      }
    }
    throw new IllegalStateException("nothing is missing at " + pointer);
  }

  private InputException unknown(List<String> known) {
    String name = name(pointer);
    if (schemaPointer.endsWith("/dependentSchemas/repeats") && owner().path("properties").has(name)) {
      return BriefProblem.at(pointer, "repeated", "name", name, "known", String.join(", ", known));
    }
    Optional<String> similar = NearName.of(name, known);
    return BriefProblem.withRemedy(pointer, keyword, similar.isPresent() ? keyword + ".similar" : keyword, "name", name,
        "similar", similar.orElse(""), "known", String.join(", ", known));
  }

  /** An origin that is a text has an example that does not help where a list is wrong. */
  private InputException items(JsonNode rule, JsonNode limit) {
    String remedy = rule.has("pattern") ? "pattern." + name(schemaPointer) : keyword;
    return BriefProblem.withRemedy(pointer, keyword, remedy, "limit", limit, "count", value.size(),
        "example", example(rule));
  }

  private InputException pattern(JsonNode rule) {
    String shown = value.toString();
    return BriefProblem.withRemedy(pointer, keyword, keyword + "." + name(schemaPointer),
        "value", shown.length() <= 60 ? shown : shown.substring(0, 60) + "…", "example", example(rule),
        "panelId", PlaceIds.panelRemedy());
  }

  /** The first example of a rule, or of the rule it refers to. */
  private String example(JsonNode rule) {
    JsonNode examples = rule.path("examples");
    if (examples.isMissingNode() && rule.has("$ref")) {
      return example(schema.at(rule.get("$ref").textValue().substring(1)));
    }
    return examples.path(0).toString();
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** The rule that says which fields there are; for one that depends on a field, the rule it is part of. */
  private JsonNode owner() {
    return schema.at(schemaPointer.replaceFirst("/(dependentSchemas/[^/]+|else)$", ""));
  }

  /** The fields of the owner without those that only go with another. */
  private List<String> forms() {
    List<String> forms = names(owner().path("properties"));
    forms.removeIf(field -> owner().path("dependentSchemas").path(field).has("required"));
    return forms;
  }

  private static String list(JsonNode values) {
    List<String> texts = new ArrayList<>();
    values.forEach(value -> texts.add(value.toString()));
    return String.join(", ", texts);
  }

  private static String kinds(JsonNode types) {
    if (types.isTextual()) {
      return BriefProblem.text("kind." + types.textValue());
    }
    return BriefProblem.text("kind.or", "first", kinds(types.get(0)), "second", kinds(types.get(1)));
  }

  private static String kind(JsonNode value) {
    return BriefProblem.text("kind." + value.getNodeType().name().toLowerCase(Locale.ROOT));
  }

  private static String name(String pointer) {
    return pointer.substring(pointer.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
  }
}
