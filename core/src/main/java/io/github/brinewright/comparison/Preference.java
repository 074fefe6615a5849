package io.github.brinewright.comparison;

import java.util.Comparator;

/**
 * The order of candidates: those that keep every limit first, then cost over the years, then price,
 * bed and salt, so that ties break the same way each time. Feasibility and cost are never blended.
 */
final class Preference {
  private Preference() {}

  static final Comparator<Candidate> ORDER =
      Comparator.comparing(Candidate::feasible, Comparator.reverseOrder())
          .thenComparing(candidate -> candidate.life().total())
          .thenComparing(candidate -> candidate.quote().total())
          .thenComparing(Candidate::resin)
          .thenComparing(Candidate::salt)
          .thenComparing(candidate -> candidate.setup().control())
          .thenComparing(candidate -> candidate.softener().id());
}
