package io.github.brinewright.demand;

/** What a daily use was taken from. */
public enum UseBasis {
  /** People times an allowance per head. */
  PER_HEAD,
  /** The home's own bill; to size on, the day that nine of ten of its days stay below. */
  BILL,
  /**
   * What a meter has counted over some months, or salt that was bought; to size on, the day that
   * nine of ten of the home's days stay below.
   */
  READINGS,
  /** A published relation between household size and indoor use. */
  STATISTICS,
  /**
   * To size on: the day that nine of ten stay below, because the allowance per head would cover
   * less than three days in four.
   */
  NINE_DAYS_IN_TEN,
  /** To size on: the day that a share chosen by the dealer stays below. */
  CHOSEN_SHARE,
  /** More than a household: a share of what its people use when all are there. */
  OCCUPANCY
}
