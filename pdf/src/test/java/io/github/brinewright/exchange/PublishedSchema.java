package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A JSON Schema, draft 2020-12, that is published with what is written. */
final class PublishedSchema {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

  private final JsonNode schema;
  private final Schema known;

  PublishedSchema(String text) {
    schema = json(text);
    known = registry().getSchema(schema);
  }

  static JsonNode json(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException notJson) {
      throw new AssertionError(notJson);
    }
  }

  private static SchemaRegistry registry() {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  }

  List<Error> errors(JsonNode json) {
    return known.validate(json);
  }

  /** The schema that allows no field beyond those that it names. */
  Schema strict() {
    JsonNode copy = schema.deepCopy();
    for (JsonNode owner : copy.findParents("description")) {
      if (owner.has("properties")) {
        ((ObjectNode) owner).put("additionalProperties", false);
      }
    }
    return registry().getSchema(copy);
  }

  JsonNode definition(String name) {
    return schema.get("$defs").get(name);
  }

  void assertOfItsDraft() {
    assertThat(schema.get("$schema").asText()).isEqualTo(DRAFT);
    assertThat(registry().getSchema(SchemaLocation.of(DRAFT)).validate(schema)).isEmpty();
  }

  /** Every field as a path through objects and the first of each array. */
  static Stream<String> fields(JsonNode json) {
    List<String> paths = new ArrayList<>();
    collect(json, "", paths);
    return paths.stream();
  }

  private static void collect(JsonNode node, String path, List<String> paths) {
    if (node.isArray() && !node.isEmpty()) {
      collect(node.get(0), path + "/0", paths);
    }
    for (var field : node.properties()) {
      paths.add(path + "/" + field.getKey());
      collect(field.getValue(), path + "/" + field.getKey(), paths);
    }
  }

  /** A field that is missing from what keeps the schema, or has another name, is refused. */
  void assertNeeded(JsonNode json, String path) {
    assertThat(errors(json)).isEmpty();
    int cut = path.lastIndexOf('/');
    ObjectNode owner = (ObjectNode) json.at(path.substring(0, cut));
    String name = path.substring(cut + 1);

    JsonNode value = owner.remove(name);
    assertThat(errors(json)).as("missing").isNotEmpty();
    owner.set(name + "2", value);
    assertThat(errors(json)).as("renamed").isNotEmpty();
  }

  /** The last field of a path says what it means. */
  void assertDescribed(String path) {
    assertThat(schema.findValues(path.replaceAll(".*/", "")))
        .as(path)
        .anyMatch(
            field ->
                Stream.of("description", "$ref", "enum", "oneOf")
                    .anyMatch(word -> field.has(word)));
  }
}
