package io.github.brinewright.trace;

/** What a finding means for the option or the home. */
public enum Severity {
  /** The option must not be sold for this home as it stands. */
  STOP,
  /** Somebody must look at it before the sale. */
  CAUTION,
  /** Good to know. */
  NOTE
}
