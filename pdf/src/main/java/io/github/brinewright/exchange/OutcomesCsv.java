package io.github.brinewright.exchange;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.finding.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What came of many homes as CSV: one row for each, with the codes of all that was found.
 *
 * <pre>{@code
 * String csv = OutcomesCsv.of(List.of(HomeOutcome.of(job.compare(home), "proposal-A1.pdf")));
 * }</pre>
 */
public final class OutcomesCsv {
  private OutcomesCsv() {}

  /**
   * {@return one row for each home, in their order, below a row of names}
   *
   * @param outcomes of the homes
   */
  public static String of(List<HomeOutcome> outcomes) {
    return CsvRows.csv(outcomes.stream().map(OutcomesCsv::fields).toList());
  }

  private static Map<String, @Nullable Object> fields(HomeOutcome home) {
    Map<String, @Nullable Object> fields = new LinkedHashMap<>();
    fields.put("siteId", home.home());
    fields.put("customer", home.customer());
    fields.put("siteVerdict", home.verdict().map(CandidateFields::name).orElse(""));
    fields.put("siteVerdictReasons", codes(home.reasons()));
    fields.put("recommended", home.softener().orElse(""));
    fields.put("control", home.control().map(CandidateFields::name).orElse(""));
    fields.put("priceTotal", home.price().map(Money::getAmount).orElse(null));
    fields.put("costPerYearTotal", home.yearlyCost().map(Money::getAmount).orElse(null));
    fields.put("cautions", codes(home.cautions()));
    fields.put("file", home.file());
    fields.put("notWritten", home.failure());
    return fields;
  }

  private static List<String> codes(List<Finding> findings) {
    return findings.stream().map(Finding::code).toList();
  }
}
