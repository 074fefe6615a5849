package io.github.brinewright.finding;

/** What a finding means for the candidate or the home. */
public enum Severity {
  /** The candidate must not be sold for this home as it stands. */
  STOP,
  /** Somebody must look at it before the sale. */
  CAUTION,
  /** Good to know. */
  NOTE
}
