package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.simulation.SimulatedYears;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Which candidates no other one beats: another beats it when it is no worse in price, yearly cost,
 * hard water from all causes and regenerations, and better in one of them.
 */
public final class Undominated {
  private Undominated() {}

  /**
   * {@return the candidates that nothing beats, in the order given}
   *
   * @param outcomes of every feasible candidate, in the order wanted
   */
  public static List<Candidate> of(Map<Candidate, SimulatedYears> outcomes) {
    List<Rated> all =
        outcomes.entrySet().stream().map(e -> Rated.of(e.getKey(), e.getValue())).toList();
    return all.stream()
        .filter(one -> all.stream().noneMatch(other -> other.beats(one)))
        .map(Rated::candidate)
        .toList();
  }

  private record Rated(
      Candidate candidate, Money price, Money yearly, double hardGallons, double regenerations) {
    static Rated of(Candidate candidate, SimulatedYears outcome) {
      return new Rated(
          candidate,
          candidate.quote().total(),
          candidate.yearly().total(),
          outcome.hardWater().total().gallons(),
          outcome.regenerations().mean());
    }

    boolean beats(Rated other) {
      int[] signs = {
        price.compareTo(other.price),
        yearly.compareTo(other.yearly),
        Double.compare(hardGallons, other.hardGallons),
        Double.compare(regenerations, other.regenerations)
      };
      return IntStream.of(signs).allMatch(sign -> sign <= 0)
          && IntStream.of(signs).anyMatch(sign -> sign < 0);
    }
  }
}
