package io.github.brinewright.comparison;

import java.util.Comparator;

/**
 * The order of options: those that keep every limit first, then cost over the years, then price,
 * bed and salt, so that ties break the same way each time. Feasibility and cost are never blended.
 */
final class Preference {
  private Preference() {}

  static final Comparator<Option> ORDER =
      Comparator.comparing(Option::feasible, Comparator.reverseOrder())
          .thenComparing(option -> option.life().total())
          .thenComparing(option -> option.quote().total())
          .thenComparing(Option::resin)
          .thenComparing(Option::salt)
          .thenComparing(option -> option.candidate().control())
          .thenComparing(option -> option.unit().id());
}
