package io.github.brinewright.softener;

/** What starts a regeneration. */
public enum Control {
  /** A fixed number of days. */
  CLOCK,
  /** A clock set to chosen weekdays, the same every week. */
  WEEKDAYS,
  /** The set volume has passed; regenerates at once. */
  METERED_AT_ONCE,
  /** The set volume has passed; waits for the low-use hour of the night. */
  METERED_AT_NIGHT;

  /** {@return whether a meter counts the water} */
  public boolean metered() {
    return !timed();
  }

  /** {@return whether a clock alone decides, whatever is used} */
  public boolean timed() {
    return this == CLOCK || this == WEEKDAYS;
  }
}
