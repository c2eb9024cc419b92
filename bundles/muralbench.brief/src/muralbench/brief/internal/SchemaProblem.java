// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.harrel.jsonschema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import muralbench.base.InputException;

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
      case "type" -> at("found", kind(value), "expected", kinds(limit), "example", example(rule));
      case "enum" -> at("value", value, "known", list(limit));
      case "const" -> at("value", value, "known", limit);
      case "pattern" -> pattern(rule);
      case "additionalProperties" -> at("name", name(pointer), "known", fields(rule.path("properties")));
      default -> at("value", value, "limit", limit, "count", value.size(), "known", fields(forms()),
          "example", example(rule));
    };
  }

  private InputException at(Object... namesAndValues) {
    return BriefProblem.at(pointer, keyword, namesAndValues);
  }

  private InputException required(JsonNode rule) {
    for (JsonNode name : rule.path("required")) {
      if (!value.has(name.textValue())) {
        JsonNode field = owner().path("properties").path(name.textValue());
        return BriefProblem.at(pointer + "/" + name.textValue(), keyword, "name", name.textValue(),
            "example", example(field));
      }
    }
    throw new IllegalStateException("nothing is missing at " + pointer);
  }

  private InputException pattern(JsonNode rule) {
    String shown = value.toString();
    return BriefProblem.withRemedy(pointer, keyword, keyword + "." + name(schemaPointer),
        "value", shown.length() <= 60 ? shown : shown.substring(0, 60) + "…", "example", example(rule));
  }

  /** The first example of a rule, or of the rule it refers to. */
  private String example(JsonNode rule) {
    JsonNode examples = rule.path("examples");
    if (examples.isMissingNode() && rule.has("$ref")) {
      return example(schema.at(rule.get("$ref").textValue().substring(1)));
    }
    return examples.path(0).toString();
  }

  private static String fields(JsonNode properties) {
    List<String> names = new ArrayList<>();
    properties.fieldNames().forEachRemaining(names::add);
    return String.join(", ", names);
  }

  /** The rule that says which fields there are; for one that depends on a field, the rule it is part of. */
  private JsonNode owner() {
    int depends = schemaPointer.indexOf("/dependentSchemas/");
    return schema.at(depends < 0 ? schemaPointer : schemaPointer.substring(0, depends));
  }

  /** The fields of the owner without those that only go with another. */
  private JsonNode forms() {
    ObjectNode forms = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> field : owner().path("properties").properties()) {
      if (!owner().path("dependentSchemas").path(field.getKey()).has("required")) {
        forms.set(field.getKey(), field.getValue());
      }
    }
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
