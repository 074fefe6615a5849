package io.github.brinewright.regeneration;

/** What starts a regeneration. */
public enum Control {
  /** A fixed number of days. */
  CLOCK,
  /** The set volume has passed; regenerates at once. */
  METERED_IMMEDIATE,
  /** The set volume has passed; waits for the low-use hour of the night. */
  METERED_DELAYED;

  /** Whether a meter counts the water. */
  public boolean metered() {
    return this != CLOCK;
  }
}
