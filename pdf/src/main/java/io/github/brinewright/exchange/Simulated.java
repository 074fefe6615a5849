package io.github.brinewright.exchange;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.Undominated;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A comparison with the simulated years of each candidate that keeps every limit.
 *
 * <pre>{@code
 * Simulated simulated = Simulated.of(job.compare(home), 400);
 * }</pre>
 */
public final class Simulated {
  /** Most years that can be simulated. */
  public static final int MOST_YEARS = 100_000;

  private final Comparison comparison;
  private final int years;
  private final Map<Candidate, SimulatedYears> outcomes;
  private final List<Candidate> undominated;
  private final Optional<SimulatedYears> present;

  private Simulated(Comparison comparison, int years, Map<Candidate, SimulatedYears> outcomes) {
    this.comparison = comparison;
    this.years = years;
    this.outcomes = outcomes;
    present = comparison.home().site().present().filter(bed -> years > 0).map(this::run);
    undominated = outcomes.isEmpty() ? List.of() : List.copyOf(Undominated.of(outcomes));
  }

  private SimulatedYears run(PresentSoftener present) {
    BedSettings bed = FoundSoftener.of(present, comparison.home()).settings();
    return new YearSimulation(DemandModel.of(comparison.home()), years, YearSimulation.USUAL_SEED)
        .run(List.of(bed))
        .get(0);
  }

  /**
   * {@return a comparison that was not simulated}
   *
   * @param comparison the candidates
   */
  public static Simulated none(Comparison comparison) {
    return new Simulated(comparison, 0, Map.of());
  }

  /**
   * Simulates the candidates of a comparison.
   *
   * @param comparison the candidates
   * @param years 0 for none, up to {@link #MOST_YEARS}
   * @return the comparison with its simulated years
   * @throws IllegalArgumentException when the years are outside their range
   */
  public static Simulated of(Comparison comparison, int years) {
    if (years < 0 || years > MOST_YEARS) {
      throw new IllegalArgumentException(
          "simulated years are " + years + ", but must be from 0 to " + MOST_YEARS);
    }
    return years == 0
        ? none(comparison)
        : new Simulated(
            comparison, years, HomeStudy.ofAll(comparison, years, YearSimulation.USUAL_SEED));
  }

  /** {@return the candidates} */
  public Comparison comparison() {
    return comparison;
  }

  /** {@return how many years are simulated; 0 for none} */
  public int years() {
    return years;
  }

  /**
   * {@return what was simulated of a candidate; empty for one that breaks a limit}
   *
   * @param candidate of the comparison
   */
  public Optional<SimulatedYears> outcome(Candidate candidate) {
    return Optional.ofNullable(outcomes.get(candidate));
  }

  /**
   * {@return what the softener that is in the house does as it was found, in the same years; empty
   * where there is none, or nothing is simulated}
   */
  public Optional<SimulatedYears> present() {
    return present;
  }

  /** {@return the candidates that no other one beats} */
  public List<Candidate> undominated() {
    return undominated;
  }
}
