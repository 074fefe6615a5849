package io.github.brinewright.simulation;

/** A metered control at one bed; volumes are multiples of the mean day. */
interface Meter {
  /** The mean interval when all days use so many times the mean. */
  Interval interval(double factor);

  /** Days after which it regenerates in any case. */
  int longest();

  /** Chance that it has not yet reached its set volume some days after a regeneration. */
  double waiting(int days);

  /** Chance that it has not, and that the bed has run out by then. */
  double waitingHard(int days);
}
