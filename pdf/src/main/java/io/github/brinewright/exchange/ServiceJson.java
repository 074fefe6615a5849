package io.github.brinewright.exchange;

import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.words.Wording;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The study of a softener that is already in a house as JSON: names as in {@link ComparisonJson},
 * with the same meanings, amounts in the currency of the comparison. Within a {@link #VERSION}
 * names keep their meaning and fields may be added; {@link #schema} says which there are.
 *
 * <pre>{@code
 * Wording words = Wording.of(Locale.US, UnitSystem.US);
 * String json = ServiceJson.one(job.service(home), words);
 * }</pre>
 */
public final class ServiceJson {
  /** Version of the form, the first field of each study. */
  public static final int VERSION = 1;

  private static final double TAIL = 0.05;

  private ServiceJson() {}

  /** {@return the JSON Schema (draft 2020-12) of what is written here} */
  public static String schema() {
    return JsonTexts.schema("service.schema.json");
  }

  /**
   * {@return a study as an object with version, site, currency, meanUse, present, asFound,
   * setRight, metered, replaced, faults, assumptions and advice}
   *
   * @param study of the present softener
   * @param words for faults, assumptions and advice
   */
  public static String one(ServiceStudy study, Wording words) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("version", VERSION);
    fields.put("site", SiteFields.of(study.comparison(), words));
    fields.put("currency", study.comparison().tariff().currency().getCode());
    fields.put("meanUse", meanUse(study.comparison().home().use()));
    fields.put("present", PresentFields.of(study.found()));
    for (Kind kind : Kind.values()) {
      fields.put(name(kind), option(study, kind));
    }
    fields.put("faults", study.faults().stream().map(fault -> fault(fault, words)).toList());
    fields.put(
        "assumptions",
        study.assumptions().stream().map(assumption -> assumption(assumption, words)).toList());
    fields.put("advice", CandidateFields.name(study.advice()));
    fields.put("adviceText", words.advice(study.advice()));
    return JsonTexts.write(fields);
  }

  /** The mean use of a day, with the range that nine of ten such homes keep to. */
  private static Map<String, Object> meanUse(DailyUse use) {
    UncertainMean likely = use.likely().uncertain();
    double gallons = use.expected().gallons();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("basis", CandidateFields.name(use.expectedBasis()));
    fields.put("galPerDay", Numbers.of(gallons));
    fields.put("galPerDayLow", Numbers.of(gallons * likely.quantile(TAIL)));
    fields.put("galPerDayHigh", Numbers.of(gallons * likely.quantile(1 - TAIL)));
    return fields;
  }

  private static String name(Kind kind) {
    return switch (kind) {
      case AS_FOUND -> "asFound";
      case SET_RIGHT -> "setRight";
      case METERED -> "metered";
      case REPLACED -> "replaced";
    };
  }

  private static @Nullable Object option(ServiceStudy study, Kind kind) {
    return study.option(kind).map(option -> new OptionFields(study, option).all()).orElse(null);
  }

  private static Map<String, Object> fault(Fault fault, Wording words) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", fault.code());
    fields.put("text", words.fault(fault));
    fields.put("figures", FaultFigures.about(fault));
    fields.put("consequence", FaultFigures.consequence(fault));
    fields.put("source", words.source(fault.kind().source()));
    return fields;
  }

  private static Map<String, Object> assumption(Assumption assumption, Wording words) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("code", assumption.kind().code());
    fields.put("text", words.assumption(assumption));
    fields.put("source", words.source(assumption.kind().source()));
    return fields;
  }
}
