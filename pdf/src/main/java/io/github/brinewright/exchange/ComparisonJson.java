package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HowSure;
import io.github.brinewright.words.Wording;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  private ComparisonJson() {}

  /**
   * {@return the JSON Schema (draft 2020-12) of what is written here: of one comparison, or of an
   * array of them}
   */
  public static String schema() {
    return JsonTexts.schema("comparison.schema.json");
  }

  /**
   * {@return one comparison as an object with version, site, currency, candidates, recommended,
   * grid and, where a softener is in the house, present: what that does as it was found, as {@link
   * ServiceJson} writes it}
   *
   * @param simulated the comparison with its simulated years
   * @param words for findings and reasons
   */
  public static String one(Simulated simulated, Wording words) {
    return JsonTexts.write(fields(simulated, words));
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
    return JsonTexts.write(
        comparisons.stream().map(comparison -> fields(comparison, words)).toList());
  }

  /**
   * {@return the same as {@link #many}, written home by home; nothing where there is none}
   *
   * @param out where to; stays open
   * @param words for findings and reasons
   */
  public static ComparisonWriter to(Writer out, Wording words) {
    JsonArray array = new JsonArray(out);
    return new ComparisonWriter() {
      @Override
      public void add(Simulated comparison) {
        array.add(fields(comparison, words));
      }

      @Override
      public void close() {
        array.close();
      }
    };
  }

  private static Map<String, @Nullable Object> fields(Simulated simulated, Wording words) {
    Comparison comparison = simulated.comparison();
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("version", VERSION);
    fields.put("site", SiteFields.of(comparison, words));
    fields.put("treatment", TreatmentFields.of(comparison));
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
    ServiceStudy.of(comparison)
        .map(ComparisonJson::present)
        .ifPresent(p -> fields.put("present", p));
    return fields;
  }

  /** The softener that is in the house, as it was found. */
  private static Map<String, @Nullable Object> present(ServiceStudy study) {
    return new OptionFields(study, study.asFound()).all();
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
}
