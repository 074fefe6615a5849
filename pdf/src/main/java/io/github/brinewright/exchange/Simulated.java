package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.Undominated;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A comparison with the simulated years of each candidate that keeps every limit.
 *
 * @param comparison the candidates
 * @param years simulated; 0 for none
 * @param outcomes of the candidates simulated
 * @param undominated the candidates that no other one beats
 */
public record Simulated(
    Comparison comparison,
    int years,
    Map<Candidate, SimulatedYears> outcomes,
    List<Candidate> undominated) {
  /** A comparison that was not simulated. */
  public static Simulated none(Comparison comparison) {
    return new Simulated(comparison, 0, Map.of(), List.of());
  }

  /**
   * Simulates the candidates of a comparison.
   *
   * @param years 0 for none, up to 100,000
   */
  public static Simulated of(Comparison comparison, int years) {
    if (years == 0) {
      return none(comparison);
    }
    Map<Candidate, SimulatedYears> outcomes =
        HomeStudy.ofAll(comparison, years, YearSimulation.USUAL_SEED);
    return new Simulated(comparison, years, outcomes, Undominated.of(outcomes));
  }

  /** What was simulated of a candidate. */
  public Optional<SimulatedYears> outcome(Candidate candidate) {
    return Optional.ofNullable(outcomes.get(candidate));
  }
}
