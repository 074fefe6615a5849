package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON Schema, draft 2020-12: studies of present softeners keep the schema that is published. */
class ServiceSchemaTest {
  private static final PublishedSchema SCHEMA = new PublishedSchema(ServiceJson.schema());
  private static final Job HOMES = PresentHomes.job();

  /** The most that a study says: read meters, a fault, and every way to go on. */
  private static final String FULL = PresentHomes.json(HOMES, "read");

  private static JsonNode full() {
    return PublishedSchema.json(FULL);
  }

  @Test
  void everyStudyKeepsItInEveryLanguage() {
    Schema strict = SCHEMA.strict();
    for (QuotedHome home : HOMES.homes()) {
      ServiceStudy study = HOMES.service(home);
      for (Locale locale : List.of(Locale.US, Locale.CANADA_FRENCH, Locale.forLanguageTag("es"))) {
        Wording words = Wording.of(locale, UnitSystem.METRIC);
        JsonNode json = PublishedSchema.json(ServiceJson.one(study, words));
        assertThat(strict.validate(json)).as(home.site().id()).isEmpty();
      }
    }
  }

  @Test
  void theSchemaIsOneOfItsDraft() {
    SCHEMA.assertOfItsDraft();
  }

  @Test
  void theVersionIsTheFirstFieldAndAnotherOneIsRefused() {
    ObjectNode json = (ObjectNode) full();
    assertThat(json.fieldNames().next()).isEqualTo("version");
    assertThat(json.get("version").asInt()).isEqualTo(ServiceJson.VERSION);

    json.put("version", ServiceJson.VERSION + 1);
    assertThat(SCHEMA.errors(json)).isNotEmpty();
  }

  static Stream<String> fields() {
    return PublishedSchema.fields(full());
  }

  /** Which figures a fault has depends on what it is. */
  static Stream<String> fieldsThatAreAlwaysThere() {
    return fields().filter(path -> !path.matches("/faults/0/(figures|consequence)/.*"));
  }

  @ParameterizedTest
  @MethodSource("fieldsThatAreAlwaysThere")
  void aFieldThatIsMissingOrRenamedIsRefused(String path) {
    SCHEMA.assertNeeded(full(), path);
  }

  @ParameterizedTest
  @MethodSource("fields")
  void everyFieldHasAMeaning(String path) {
    SCHEMA.assertDescribed(path);
  }

  @ParameterizedTest
  @ValueSource(strings = {"site", "option", "price", "findings", "control"})
  void whatAComparisonHasTooIsTheSame(String definition) {
    PublishedSchema comparison = new PublishedSchema(ComparisonJson.schema());
    assertThat(SCHEMA.definition(definition)).isEqualTo(comparison.definition(definition));
  }

  @Test
  void theSoftenerAsFoundIsAlwaysThere() {
    ObjectNode json = (ObjectNode) full();
    for (String other : List.of("setRight", "metered", "replaced")) {
      json.putNull(other);
      assertThat(SCHEMA.errors(json)).as(other).isEmpty();
    }
    json.putNull("asFound");
    assertThat(SCHEMA.errors(json)).isNotEmpty();
  }
}
