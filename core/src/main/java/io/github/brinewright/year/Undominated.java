package io.github.brinewright.year;

import io.github.brinewright.comparison.Option;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which options no other one beats: another beats it when it is no worse in price, yearly cost,
 * days of hard water and regenerations, and better in one of them.
 */
public final class Undominated {
  private Undominated() {}

  /**
   * The options that nothing beats, in the order given.
   *
   * @param outcomes of every feasible option, in the order wanted
   */
  public static List<Option> of(Map<Option, Outcome> outcomes) {
    List<Rated> all =
        outcomes.entrySet().stream().map(e -> Rated.of(e.getKey(), e.getValue())).toList();
    return all.stream()
        .filter(one -> all.stream().noneMatch(other -> other.beats(one)))
        .map(Rated::option)
        .collect(Collectors.toList());
  }

  private record Rated(Option option, double[] worse) {
    static Rated of(Option option, Outcome outcome) {
      return new Rated(
          option,
          new double[] {
            option.quote().total().getAmount().doubleValue(),
            option.yearly().total().getAmount().doubleValue(),
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
