package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Comparisons as CSV: one row for each candidate, the same names as in JSON. Text that a
 * spreadsheet would take for a formula gets an apostrophe in front.
 *
 * <pre>{@code
 * String csv = ComparisonCsv.of(List.of(Simulated.none(job.compare(home))));
 * }</pre>
 */
public final class ComparisonCsv {
  private ComparisonCsv() {}

  /**
   * {@return all candidates of the comparisons, best first within each home, below a row of names}
   *
   * @param comparisons all simulated or none
   */
  public static String of(List<Simulated> comparisons) {
    return CsvRows.csv(comparisons.stream().flatMap(ComparisonCsv::rows).toList());
  }

  /**
   * {@return the same, written home by home}
   *
   * @param out where to; stays open
   */
  public static ComparisonWriter to(Writer out) {
    return new Rows(new CsvRows(out), ComparisonCsv::rows);
  }

  /**
   * {@return the same as {@link #grid}, written home by home}
   *
   * @param out where to; stays open
   */
  public static ComparisonWriter gridTo(Writer out) {
    return new Rows(new CsvRows(out), one -> cells(one.comparison()));
  }

  private record Rows(
      CsvRows csv, Function<Simulated, Stream<Map<String, @Nullable Object>>> rowsOf)
      implements ComparisonWriter {
    @Override
    public void add(Simulated comparison) {
      rowsOf.apply(comparison).forEach(csv::add);
    }

    @Override
    public void close() {
      // Rows need no end.
    }
  }

  /**
   * {@return sizes and dosages side by side: a row for each cell of the grid of each control, with
   * the names of JSON}
   *
   * @param comparisons of the homes, in their order
   */
  public static String grid(List<Comparison> comparisons) {
    return CsvRows.csv(comparisons.stream().flatMap(ComparisonCsv::cells).toList());
  }

  private static Stream<Map<String, @Nullable Object>> rows(Simulated simulated) {
    return simulated.comparison().candidates().stream().map(candidate -> row(simulated, candidate));
  }

  private static Stream<Map<String, @Nullable Object>> cells(Comparison comparison) {
    return new GridFields(comparison)
        .cells().stream()
            .map(
                cell -> {
                  Map<String, @Nullable Object> row = home(comparison);
                  row.putAll(cell);
                  return row;
                });
  }

  private static Map<String, @Nullable Object> home(Comparison comparison) {
    Map<String, @Nullable Object> row = new LinkedHashMap<>();
    row.put("siteId", comparison.home().site().id());
    row.put("siteVerdict", CandidateFields.name(comparison.verdict().kind()));
    return row;
  }

  private static Map<String, @Nullable Object> row(Simulated simulated, Candidate candidate) {
    Comparison comparison = simulated.comparison();
    Map<String, @Nullable Object> row = home(comparison);
    row.put(
        "siteVerdictReasons", comparison.verdict().reasons().stream().map(Finding::code).toList());
    row.put("recommended", comparison.recommends(candidate));
    row.putAll(new CandidateFields(candidate).flat());
    row.put("priceTotal", candidate.quote().total().getAmount());
    row.put("costPerYearTotal", CandidateFields.served(candidate, candidate.yearly().total()));
    row.put("lifeCostTotal", CandidateFields.served(candidate, candidate.life().total()));
    CandidateFields.judged(row, candidate);
    row.put("marks", comparison.marks(candidate).stream().map(CandidateFields::name).toList());
    row.put("findings", candidate.findings().stream().map(Finding::code).toList());
    if (simulated.years() > 0) {
      addYear(row, simulated.outcome(candidate).orElse(null));
    }
    return row;
  }

  /** Means of the simulated years; empty cells for a candidate that breaks a limit. */
  private static void addYear(Map<String, @Nullable Object> row, @Nullable SimulatedYears outcome) {
    row.put("simulatedRegenerations", mean(outcome, SimulatedYears::regenerations));
    row.put("simulatedSaltLb", mean(outcome, SimulatedYears::saltPounds));
    row.put("simulatedWaterGal", mean(outcome, SimulatedYears::waterGallons));
    row.put("simulatedHardWaterDays", mean(outcome, SimulatedYears::hardDays));
  }

  private static @Nullable Object mean(
      @Nullable SimulatedYears outcome, Function<SimulatedYears, Spread> figure) {
    return outcome == null ? null : Numbers.of(figure.apply(outcome).mean());
  }
}
