package io.github.brinewright.home;

import io.github.brinewright.quantity.Concentration;

/**
 * What a laboratory says of a substance that it tested for: an amount, less than it can report, or
 * that none was detected. A substance that was not tested has no result at all. Example: {@code
 * LabResult.below(Concentration.ofMilligramsPerLitre(0.05))}.
 *
 * @param kind of the result
 * @param atMost the amount; below a reporting limit that limit; 0 mg/L where none was detected.
 *     Sums and thresholds count this.
 */
public record LabResult(Kind kind, Concentration atMost) {
  private static final Concentration NOTHING = Concentration.ofMilligramsPerLitre(0);

  /** None was detected, and no limit is stated. */
  public static final LabResult NOT_DETECTED = new LabResult(Kind.NOT_DETECTED, NOTHING);

  /** What a result states. */
  public enum Kind {
    /** An amount. */
    MEASURED,

    /** Less than the least amount that the laboratory reports. */
    BELOW_REPORTING_LIMIT,

    /** That none was detected, without a limit. */
    NOT_DETECTED
  }

  /**
   * A result of any kind.
   *
   * @param kind of the result
   * @param atMost 0 to 50,000 mg/L; a reporting limit is more than 0, and 0 belongs to what was not
   *     detected
   * @throws IllegalArgumentException outside that range
   */
  public LabResult {
    Substance.FOUND.require("lab result", atMost);
    if (kind == Kind.BELOW_REPORTING_LIMIT && !atMost.isPositive()) {
      throw new IllegalArgumentException(
          "reporting limit is " + atMost + ", but must be more than zero");
    }
    if (kind == Kind.NOT_DETECTED && atMost.isPositive()) {
      throw new IllegalArgumentException(
          "a substance that was not detected has no amount, but " + atMost + " is given");
    }
  }

  /**
   * {@return a measured amount}
   *
   * @param amount 0 to 50,000 mg/L
   * @throws IllegalArgumentException outside that range
   */
  public static LabResult measured(Concentration amount) {
    return new LabResult(Kind.MEASURED, amount);
  }

  /**
   * {@return an amount below the least that the laboratory reports}
   *
   * @param reportingLimit more than 0, up to 50,000 mg/L
   * @throws IllegalArgumentException outside that range
   */
  public static LabResult below(Concentration reportingLimit) {
    return new LabResult(Kind.BELOW_REPORTING_LIMIT, reportingLimit);
  }
}
