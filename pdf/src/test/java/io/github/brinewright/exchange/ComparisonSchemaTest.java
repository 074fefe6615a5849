package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.brinewright.job.Job;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON Schema, draft 2020-12: what is written keeps the schema that is published with it. */
class ComparisonSchemaTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Job TOWN = DemoTown.job();

  private static Wording words() {
    return Wording.of(Locale.US, UnitSystem.US);
  }

  private static SchemaRegistry registry() {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  }

  private static JsonNode schema() throws IOException {
    return MAPPER.readTree(ComparisonJson.schema());
  }

  /** The schema that allows no field beyond those that it names. */
  private static Schema strict() throws IOException {
    JsonNode schema = schema();
    for (JsonNode owner : schema.findParents("required")) {
      ((ObjectNode) owner).put("additionalProperties", false);
    }
    return registry().getSchema(schema);
  }

  private static List<Error> errors(JsonNode json) throws IOException {
    return registry().getSchema(schema()).validate(json);
  }

  private static JsonNode json(Job job, String id) throws IOException {
    var comparison = job.compare(job.home(id).orElseThrow());
    return MAPPER.readTree(ComparisonJson.one(comparison, words()));
  }

  private static void assertKept(Job job, int years) throws IOException {
    List<Simulated> all =
        job.homes().stream().map(job::compare).map(one -> Simulated.of(one, years)).toList();
    Schema strict = strict();
    for (Simulated one : all) {
      JsonNode json = MAPPER.readTree(ComparisonJson.one(one, words()));
      assertThat(strict.validate(json)).as(one.comparison().home().site().id()).isEmpty();
    }
    assertThat(strict.validate(MAPPER.readTree(ComparisonJson.many(all, words())))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 10})
  void everyHomeOfTheDemoTownKeepsIt(int years) throws IOException {
    assertKept(TOWN, years);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void homesDrawnByLotKeepIt(long seed) throws IOException {
    assertKept(DemoTown.withRandomHomes(seed, 40), 0);
  }

  @Test
  void theSchemaIsOneOfItsDraft() throws IOException {
    String draft = schema().get("$schema").asText();
    assertThat(draft).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    Schema meta = registry().getSchema(com.networknt.schema.SchemaLocation.of(draft));
    assertThat(meta.validate(schema())).isEmpty();
  }

  @Test
  void theVersionIsTheFirstFieldAndAnotherOneIsRefused() throws IOException {
    ObjectNode json = (ObjectNode) json(TOWN, "H01");
    assertThat(json.fieldNames().next()).isEqualTo("version");
    assertThat(json.get("version").asInt()).isEqualTo(ComparisonJson.VERSION);

    json.put("version", ComparisonJson.VERSION + 1);
    assertThat(errors(json)).isNotEmpty();
  }

  /** Every field that is always there, as a path through objects and the first of each array. */
  static Stream<String> fields() throws IOException {
    List<String> paths = new ArrayList<>();
    collect(json(TOWN, "H01"), "", paths);
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

  @ParameterizedTest
  @MethodSource("fields")
  void aFieldThatIsMissingOrRenamedIsRefused(String path) throws IOException {
    JsonNode json = json(TOWN, "H01");
    assertThat(errors(json)).isEmpty();
    int cut = path.lastIndexOf('/');
    ObjectNode owner = (ObjectNode) json.at(path.substring(0, cut));
    String name = path.substring(cut + 1);

    JsonNode value = owner.remove(name);
    assertThat(errors(json)).as("missing").isNotEmpty();
    owner.set(name + "2", value);
    assertThat(errors(json)).as("renamed").isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void everyFieldHasAMeaning(String path) throws IOException {
    assertThat(described(path.replaceAll(".*/", ""))).as(path).isTrue();
  }

  private static boolean described(String name) throws IOException {
    return schema().findValues(name).stream()
        .anyMatch(
            field ->
                field.has("description")
                    || field.has("$ref")
                    || field.has("enum")
                    || field.has("oneOf"));
  }

  @Test
  void aNumberWrittenAsTextIsRefused() throws IOException {
    ObjectNode json = (ObjectNode) json(TOWN, "H01");
    ((ObjectNode) json.get("site")).put("hardnessGpg", "18");
    assertThat(errors(json)).isNotEmpty();
  }
}
