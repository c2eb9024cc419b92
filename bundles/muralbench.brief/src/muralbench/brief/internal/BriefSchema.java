// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.harrel.jsonschema.Error;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.JacksonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.brief.BriefReader;

/** The published schema of the brief: holds a brief against it and reports the first place that does not fit. */
public final class BriefSchema {
  /** Where the version stands. */
  static final String VERSION = "/version";

  private static final Set<String> DEPENDING = Set.of("dependentSchemas", "if", "else");

  private final JsonNode schema;
  private final Validator validator;
  private final URI uri;

  private BriefSchema(JsonNode schema, boolean checkSchema) {
    this.schema = schema;
    this.validator = new ValidatorFactory().withJsonNodeFactory(new JacksonNode.Factory())
        .withDisabledSchemaValidation(!checkSchema).createValidator();
    this.uri = validator.registerSchema((Object) schema);
  }

  /** The schema that comes with this room. */
  public static BriefSchema load() {
    return load(false);
  }

  /** As the other, holding the schema itself against its own schema first. */
  static BriefSchema load(boolean checkSchema) {
    try (InputStream in = BriefReader.class.getResourceAsStream("brief.schema.json")) {
      return new BriefSchema(new JsonMapper().readTree(in), checkSchema);
    } catch (IOException e) {
      throw new UncheckedIOException("the schema is part of the program", e);
    }
  }

  JsonNode schema() {
    return schema;
  }

  /**
   * Checks a brief.
   *
   * @throws InputException for the first thing in the brief, in reading order, that does not fit
   */
  public void check(JsonNode brief) throws InputException {
    List<Error> errors = validator.validate(uri, (Object) brief).getErrors();
    if (errors.isEmpty()) {
      return;
    }
    Map<String, Integer> order = new HashMap<>();
    number(brief, "", order);
    // What format and version say comes first: in another one, the rest may be right as it is.
    order.replace("/format", -2);
    order.replace(VERSION, -1);
    // What a schema that depends on a field finds is told by itself.
    Error first = errors.stream().filter(error -> !DEPENDING.contains(String.valueOf(error.getKeyword()))).min(Comparator
        .comparing((Error error) -> order.getOrDefault(error.getInstanceLocation(), Integer.MAX_VALUE))
        .thenComparing(Error::getSchemaLocation)).orElseThrow();
    throw new SchemaProblem(schema, brief, first).exception();
  }

  private static void number(JsonNode node, String pointer, Map<String, Integer> order) {
    order.put(pointer, order.size());
    Field field = new Field(node, pointer);
    node.fieldNames().forEachRemaining(name -> number(node.get(name), field.at(name).pointer(), order));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      number(node.get(i), field.at(i).pointer(), order);
    }
  }
}
