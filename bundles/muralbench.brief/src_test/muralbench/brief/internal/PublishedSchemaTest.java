// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.harrel.jsonschema.Error;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.JacksonNode;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.place.PlaceIds;
import muralbench.brief.BriefReader;
import muralbench.model.Mural;
import org.junit.jupiter.api.Test;

/** The schema and the page in docs, which people read, are held against what the program does. */
class PublishedSchemaTest {
  private static final Path DOCS = Path.of("..", "..", "docs");
  private final JsonNode schema = BriefSchema.load().schema();

  @Test
  void docsHoldTheSchemaOfTheProgram() throws Exception {
    try (var in = BriefReader.class.getResourceAsStream("brief.schema.json")) {
      assertArrayEquals(in.readAllBytes(), Files.readAllBytes(DOCS.resolve("brief.schema.json")),
          "copy bundles/muralbench.brief/src/muralbench/brief/brief.schema.json to docs");
    }
  }

  @Test
  void schemaFitsTheDraftItNames() {
    assertDoesNotThrow(() -> BriefSchema.load(true));
  }

  @Test
  void exampleOfThePageIsAGoodBrief() throws Exception {
    Matcher example = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(DOCS.resolve("brief.md")));
    assertTrue(example.find());
    Mural mural = BriefReader.readText(example.group(1));
    assertEquals(8, mural.getPanels().size());
  }

  @Test
  void exampleOfThePageShowsEveryField() throws Exception {
    String page = Files.readString(DOCS.resolve("brief.md"));
    for (JsonNode rule : rules()) {
      rule.path("properties").fieldNames()
          .forEachRemaining(name -> assertTrue(page.contains(name), () -> name + " is not on the page"));
    }
  }

  @Test
  void everyKeywordHasAMessageOfOurOwn() {
    Set<String> silent = Set.of("$schema", "$id", "$ref", "$defs", "title", "description", "default", "examples",
        "properties", "items", "prefixItems", "propertyNames", "dependentSchemas", "if", "else");
    Set<String> keywords = new TreeSet<>();
    rules().forEach(rule -> rule.fieldNames().forEachRemaining(keywords::add));
    keywords.removeAll(silent);
    assertTrue(keywords.size() > 10);
    keywords.forEach(keyword -> assertTrue(BriefProblem.text(keyword + ".problem").length() > 5, keyword));
  }

  @Test
  void everyPatternHasARemedyOfItsOwn() {
    schema.path("$defs").fields().forEachRemaining(rule -> {
      if (rule.getValue().has("pattern")) {
        assertTrue(BriefProblem.text("pattern." + rule.getKey() + ".remedy").length() > 5, rule.getKey());
      }
    });
  }

  /** Unicode properties are read by few validators; what is left is in ECMA-262 and in most others. */
  @Test
  void patternsAreReadByOtherValidators() {
    List<String> patterns = schema.findValuesAsText("pattern");
    assertTrue(patterns.size() >= 7, patterns.toString());
    String foreign = ".*\\\\([pPhHRQEAzZGbB]|x\\{).*|.*\\(\\?.*|.*[+*?}]\\+.*|.*&&.*";
    patterns.forEach(pattern -> assertFalse(pattern.matches(foreign), pattern));
  }

  /** Remedies quote the examples, so each has to be right itself. */
  @Test
  void everyExampleAndDefaultFitsItsRule() {
    Validator validator = new ValidatorFactory().withJsonNodeFactory(new JacksonNode.Factory()).createValidator();
    validator.registerSchema((Object) schema);
    int[] seen = {0};
    pointers(schema, "", (pointer, rule) -> {
      List<JsonNode> values = new ArrayList<>();
      rule.path("examples").forEach(values::add);
      if (rule.has("default")) {
        values.add(rule.get("default"));
      }
      for (JsonNode value : values) {
        seen[0]++;
        assertEquals(List.of(), errors(validator, pointer, value), pointer + " " + value);
      }
    });
    assertTrue(seen[0] > 40, "examples: " + seen[0]);
  }

  @Test
  void thePatternOfPanelIdsIsTheRuleOfTheModel() {
    assertEquals("^" + PlaceIds.PANEL + "$", schema.at("/$defs/panelId/pattern").textValue());
  }

  private static List<String> errors(Validator validator, String pointer, JsonNode value) {
    ObjectNode reference = new JsonMapper().createObjectNode().put("$ref", "urn:muralbench:brief:1#" + pointer);
    URI uri = validator.registerSchema((Object) reference);
    return validator.validate(uri, (Object) value).getErrors().stream().map(Error::getError).toList();
  }

  private List<JsonNode> rules() {
    List<JsonNode> rules = new ArrayList<>();
    pointers(schema, "", (pointer, rule) -> rules.add(rule));
    return rules;
  }

  private interface Visitor {
    void visit(String pointer, JsonNode rule);
  }

  /** Walks all rules of the schema, and not the examples in it. */
  private static void pointers(JsonNode rule, String pointer, Visitor visitor) {
    visitor.visit(pointer, rule);
    for (String group : List.of("properties", "$defs")) {
      rule.path(group).fields().forEachRemaining(
          field -> pointers(field.getValue(), pointer + "/" + group + "/" + field.getKey(), visitor));
    }
    for (String single : List.of("items", "additionalProperties", "propertyNames")) {
      if (rule.path(single).isObject()) {
        pointers(rule.path(single), pointer + "/" + single, visitor);
      }
    }
  }
}
