package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.year.Outcome;
import io.github.brinewright.year.Study;
import io.github.brinewright.year.Undominated;
import io.github.brinewright.year.YearSimulation;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A comparison with the simulated years of each option that keeps every limit.
 *
 * @param comparison the options
 * @param years simulated; 0 for none
 * @param outcomes of the options simulated
 * @param undominated the options that no other one beats
 */
public record Simulated(
    Comparison comparison, int years, Map<Option, Outcome> outcomes, List<Option> undominated) {
  /** A comparison that was not simulated. */
  public static Simulated none(Comparison comparison) {
    return new Simulated(comparison, 0, Map.of(), List.of());
  }

  /**
   * Simulates the options of a comparison.
   *
   * @param years 0 for none, up to 100,000
   */
  public static Simulated of(Comparison comparison, int years) {
    if (years == 0) {
      return none(comparison);
    }
    Map<Option, Outcome> outcomes = Study.ofAll(comparison, years, YearSimulation.USUAL_SEED);
    return new Simulated(comparison, years, outcomes, Undominated.of(outcomes));
  }

  /** What was simulated of an option. */
  Optional<Outcome> outcome(Option option) {
    return Optional.ofNullable(outcomes.get(option));
  }
}
