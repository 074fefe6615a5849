package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.simulation.SimulatedYears;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which candidates no other one beats: another beats it when it is no worse in price, yearly cost,
 * days of hard water and regenerations, and better in one of them.
 */
public final class Undominated {
  private Undominated() {}

  /**
   * The candidates that nothing beats, in the order given.
   *
   * @param outcomes of every feasible candidate, in the order wanted
   */
  public static List<Candidate> of(Map<Candidate, SimulatedYears> outcomes) {
    List<Rated> all =
        outcomes.entrySet().stream().map(e -> Rated.of(e.getKey(), e.getValue())).toList();
    return all.stream()
        .filter(one -> all.stream().noneMatch(other -> other.beats(one)))
        .map(Rated::candidate)
        .collect(Collectors.toList());
  }

  private record Rated(Candidate candidate, double[] worse) {
    static Rated of(Candidate candidate, SimulatedYears outcome) {
      return new Rated(
          candidate,
          new double[] {
            candidate.quote().total().getAmount().doubleValue(),
            candidate.yearly().total().getAmount().doubleValue(),
            outcome.hardDays().mean(),
            outcome.regenerations().mean()
          });
    }

    boolean beats(Rated other) {
      boolean better = false;
      for (int i = 0; i < worse.length; i++) {
        if (worse[i] > other.worse[i]) {
          return false;
        }
        better |= worse[i] < other.worse[i];
      }
      return better;
    }
  }
}
