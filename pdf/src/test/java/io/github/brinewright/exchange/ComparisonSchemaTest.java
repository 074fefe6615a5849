package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import io.github.brinewright.job.Job;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON Schema, draft 2020-12: what is written keeps the schema that is published with it. */
class ComparisonSchemaTest {
  private static final PublishedSchema SCHEMA = new PublishedSchema(ComparisonJson.schema());
  private static final Job TOWN = DemoTown.job();

  private static Wording words() {
    return Wording.of(Locale.US, UnitSystem.US);
  }

  private static JsonNode json(Job job, String id) {
    var comparison = job.compare(job.home(id).orElseThrow());
    return PublishedSchema.json(ComparisonJson.one(comparison, words()));
  }

  private static void assertKept(Job job, int years) {
    List<Simulated> all =
        job.homes().stream().map(job::compare).map(one -> Simulated.of(one, years)).toList();
    Schema strict = SCHEMA.strict();
    for (Simulated one : all) {
      JsonNode json = PublishedSchema.json(ComparisonJson.one(one, words()));
      assertThat(strict.validate(json)).as(one.comparison().home().site().id()).isEmpty();
    }
    assertThat(strict.validate(PublishedSchema.json(ComparisonJson.many(all, words())))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 10})
  void everyHomeOfTheDemoTownKeepsIt(int years) {
    assertKept(TOWN, years);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void homesDrawnByLotKeepIt(long seed) {
    assertKept(DemoTown.withRandomHomes(seed, 40), 0);
  }

  @Test
  void theSchemaIsOneOfItsDraft() {
    SCHEMA.assertOfItsDraft();
  }

  @Test
  void theVersionIsTheFirstFieldAndAnotherOneIsRefused() {
    ObjectNode json = (ObjectNode) json(TOWN, "H01");
    assertThat(json.fieldNames().next()).isEqualTo("version");
    assertThat(json.get("version").asInt()).isEqualTo(ComparisonJson.VERSION);

    json.put("version", ComparisonJson.VERSION + 1);
    assertThat(SCHEMA.errors(json)).isNotEmpty();
  }

  static Stream<String> fields() {
    return PublishedSchema.fields(json(TOWN, "H01"));
  }

  @ParameterizedTest
  @MethodSource("fields")
  void aFieldThatIsMissingOrRenamedIsRefused(String path) {
    SCHEMA.assertNeeded(json(TOWN, "H01"), path);
  }

  @ParameterizedTest
  @MethodSource("fields")
  void everyFieldHasAMeaning(String path) {
    SCHEMA.assertDescribed(path);
  }

  @Test
  void aNumberWrittenAsTextIsRefused() {
    ObjectNode json = (ObjectNode) json(TOWN, "H01");
    ((ObjectNode) json.get("site")).put("hardnessGpg", "18");
    assertThat(SCHEMA.errors(json)).isNotEmpty();
  }
}
