package io.github.brinewright.exchange;

import com.fasterxml.jackson.jr.ob.JSON;
import com.fasterxml.jackson.jr.ob.JSON.Feature;
import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Site;
import io.github.brinewright.study.HowSure;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * Comparisons as JSON: camelCase names with the unit in the name, amounts in the currency of the
 * comparison. Within a {@link #VERSION} names keep their meaning and fields may be added; {@link
 * #schema} says which there are.
 *
 * <pre>{@code
 * Wording words = Wording.of(Locale.US, UnitSystem.US);
 * String json = ComparisonJson.one(job.compare(home), words);
 * }</pre>
 */
public final class ComparisonJson {
  /** Version of the form, the first field of each comparison. */
  public static final int VERSION = 1;

  private static final String SCHEMA = "comparison.schema.json";
  private static final JSON WRITER =
      JSON.std.with(Feature.PRETTY_PRINT_OUTPUT, Feature.WRITE_NULL_PROPERTIES);

  private ComparisonJson() {}

  /**
   * {@return the JSON Schema (draft 2020-12) of what is written here: of one comparison, or of an
   * array of them}
   */
  public static String schema() {
    try (InputStream in =
        Objects.requireNonNull(ComparisonJson.class.getResourceAsStream(SCHEMA), SCHEMA)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /**
   * {@return one comparison as an object with version, site, currency, candidates, recommended and
   * grid}
   *
   * @param simulated the comparison with its simulated years
   * @param words for findings and reasons
   */
  public static String one(Simulated simulated, Wording words) {
    return write(fields(simulated, words));
  }

  /**
   * {@return one comparison, not simulated}
   *
   * @param comparison the candidates of a home
   * @param words for findings and reasons
   */
  public static String one(Comparison comparison, Wording words) {
    return one(Simulated.none(comparison), words);
  }

  /**
   * {@return several comparisons as an array of objects}
   *
   * @param comparisons in the order of the array
   * @param words for findings and reasons
   */
  public static String many(List<Simulated> comparisons, Wording words) {
    return write(comparisons.stream().map(comparison -> fields(comparison, words)).toList());
  }

  private static String write(Object value) {
    try {
      return WRITER.asString(value);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static Map<String, @Nullable Object> fields(Simulated simulated, Wording words) {
    Comparison comparison = simulated.comparison();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("version", VERSION);
    fields.put("site", site(comparison, words));
    fields.put("currency", comparison.tariff().currency().getCode());
    Optional<HowSure> sure = HowSure.of(comparison);
    fields.put(
        "candidates",
        comparison.candidates().stream()
            .map(each -> candidate(each, simulated, percent(each, sure), words))
            .toList());
    fields.put(
        "recommended",
        comparison
            .recommended()
            .map(candidate -> chosen(candidate, comparison, why(comparison, words)))
            .orElse(null));
    fields.put(
        "cheapestThatFits",
        comparison
            .cheapestThatFits()
            .map(candidate -> chosen(candidate, comparison, against(candidate, comparison, words)))
            .orElse(null));
    fields.put("grid", new GridFields(comparison).cells());
    return fields;
  }

  private static OptionalInt percent(Candidate candidate, Optional<HowSure> sure) {
    return sure.map(each -> each.bestInPercentOfDraws(candidate)).orElse(OptionalInt.empty());
  }

  private static Map<String, @Nullable Object> candidate(
      Candidate candidate, Simulated simulated, OptionalInt percent, Wording words) {
    Map<String, @Nullable Object> fields = new CandidateFields(candidate).all(words, percent);
    simulated.outcome(candidate).ifPresent(o -> fields.put("year", YearFields.of(o)));
    if (simulated.years() > 0) {
      fields.put("undominated", simulated.undominated().contains(candidate));
    }
    return fields;
  }

  private static String why(Comparison comparison, Wording words) {
    return comparison.whyRecommended().map(words::reason).orElse("");
  }

  /** What it would save and gives up; of the recommended one, why that is recommended. */
  private static String against(Candidate candidate, Comparison comparison, Wording words) {
    return comparison.against(candidate).map(words::reason).orElseGet(() -> why(comparison, words));
  }

  private static Map<String, @Nullable Object> chosen(
      Candidate candidate, Comparison comparison, String reason) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("candidate", comparison.candidates().indexOf(candidate));
    fields.put("unitId", candidate.softener().id());
    fields.put("control", CandidateFields.name(candidate.setup().control()));
    fields.put("reason", reason);
    return fields;
  }

  private static Map<String, Object> site(Comparison comparison, Wording words) {
    HomeLoad home = comparison.home();
    Site site = home.site();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("id", site.id());
    VerdictFields.add(fields, comparison.verdict(), words);
    fields.put("customer", site.contact().name());
    fields.put("people", site.household().people());
    fields.put("hardnessGpg", Numbers.of(site.water().hardness().grainsPerGallon()));
    fields.put("compensatedHardnessGpg", Numbers.of(home.compensatedHardness().grainsPerGallon()));
    fields.put("designUseGalPerDay", Numbers.of(home.use().design().gallons()));
    fields.put("expectedUseGalPerDay", Numbers.of(home.use().expected().gallons()));
    fields.put("dailyLoadGrains", Numbers.of(home.dailyLoad().grains()));
    fields.put("peakFlowGpm", Numbers.of(home.peakFlow().gallonsPerMinute()));
    fields.put("findings", CandidateFields.findings(comparison.homeFindings(), words));
    return fields;
  }
}
