package io.github.brinewright.finding;

import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Limits that a dealer may set; the usual ones are common practice.
 *
 * <pre>{@code
 * Limits limits = Limits.builder().shortestDays(3).reserveRisk(0.05).build();
 * }</pre>
 *
 * <p>Immutable; equal limits are equal.
 */
public final class Limits {
  /** The pressure below which fixtures fail, as a share of the one worth a word. */
  private static final double LEAST_SHARE = 0.5;

  /** Two days, 30 psi, one design day held back: common practice. */
  public static final Limits USUAL = builder().build();

  private final Values values;

  private Limits(Values values) {
    this.values = values;
  }

  /**
   * The usual limits, to be changed.
   *
   * @return a builder that begins with them
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * These limits, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    Builder builder = new Builder();
    builder.designUse = values.designUse;
    return builder
        .shortestDays(values.shortestDays)
        .lowestPressure(values.lowestPressure)
        .reserveRisk(values.reserveRisk)
        .runOut(values.runOutNoted, values.runOutBarred)
        .highestPressureLoss(values.highestPressureLoss)
        .leastBedDepth(values.leastBedDepth)
        .leastFreeboard(values.leastFreeboard);
  }

  /** {@return the shortest interval at design use that is sold, in days; 1 to 7} */
  public double shortestDays() {
    return values.shortestDays;
  }

  /** {@return the pressure that must be left at peak flow before it is worth a word} */
  public Pressure lowestPressure() {
    return values.lowestPressure;
  }

  /**
   * {@return the pressure that must be left at peak flow for the candidate to be sold: half of the
   * lowest}
   */
  public Pressure leastPressure() {
    return values.lowestPressure.times(LEAST_SHARE);
  }

  /**
   * {@return the share of regenerations in which a delayed control may run out, 0.0001 to 0.5; 0 to
   * hold back one design day} Dimensionless.
   */
  public double reserveRisk() {
    return values.reserveRisk;
  }

  /**
   * {@return the share of days whose use the design use covers, for all homes; 0.5 to 0.999,
   * dimensionless} Empty for the usual allowance or bill.
   */
  public OptionalDouble designUse() {
    return values.designUse == null ? OptionalDouble.empty() : OptionalDouble.of(values.designUse);
  }

  /**
   * {@return the share of regenerations before which the bed has run out, above which it is worth a
   * word}
   */
  public double runOutNoted() {
    return values.runOutNoted;
  }

  /** {@return the same share, above which the candidate is not sold} */
  public double runOutBarred() {
    return values.runOutBarred;
  }

  /** {@return the pressure loss at peak flow above which it is worth a word} */
  public Pressure highestPressureLoss() {
    return values.highestPressureLoss;
  }

  /** {@return the depth of the bed below which it is worth a word} */
  public Length leastBedDepth() {
    return values.leastBedDepth;
  }

  /** {@return the room above the bed as a share of its depth, below which it is worth a word} */
  public double leastFreeboard() {
    return values.leastFreeboard;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Limits limits && values.equals(limits.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Limits");
  }

  private record Values(
      double shortestDays,
      Pressure lowestPressure,
      double reserveRisk,
      @Nullable Double designUse,
      double runOutNoted,
      double runOutBarred,
      Pressure highestPressureLoss,
      Length leastBedDepth,
      double leastFreeboard) {}

  /** Collects limits. */
  public static final class Builder {
    private double shortestDays = 2;
    private Pressure lowestPressure = Pressure.ofPsi(30);
    private double reserveRisk;
    private @Nullable Double designUse;
    private double runOutNoted = 0.06;
    private double runOutBarred = 0.2;
    private Pressure highestPressureLoss = Pressure.ofPsi(15);
    private Length leastBedDepth = Length.ofInches(24);
    private double leastFreeboard = 0.5;

    private Builder() {}

    /**
     * The shortest interval at design use that is sold; 2 days unless set.
     *
     * @param days 1 to 7
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder shortestDays(double days) {
      shortestDays = Require.between("shortest interval in days", days, 1, 7);
      return this;
    }

    /**
     * Pressure left at peak flow below which it is worth a word; 30 psi unless set. At half of it
     * nothing is sold.
     *
     * @param pressure 1 to 80 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder lowestPressure(Pressure pressure) {
      Require.between("lowest pressure in psi", pressure.psi(), 1, 80);
      lowestPressure = pressure;
      return this;
    }

    /**
     * Share of regenerations in which a delayed control may run out; unless set, one design day is
     * held back instead.
     *
     * @param share 0.0001 to 0.5; 0 to hold back one design day
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder reserveRisk(double share) {
      reserveRisk = share == 0 ? 0 : Require.between("risk of running out", share, 0.0001, 0.5);
      return this;
    }

    /**
     * Share of days whose use the design use covers, for all homes; the usual allowance or bill
     * unless set.
     *
     * @param share 0.5 to 0.999; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder designUse(double share) {
      designUse = Require.between("share of days that the design use covers", share, 0.5, 0.999);
      return this;
    }

    /**
     * Shares of regenerations before which the bed has run out; 0.06 and 0.2 unless set, so that a
     * reserve for 5 % stays below.
     *
     * @param noted above it a word is said; 0 to {@code barred}
     * @param barred above it the candidate is not sold; up to 1
     * @return this builder
     * @throws IllegalArgumentException outside these ranges
     */
    public Builder runOut(double noted, double barred) {
      Require.between("share of running out at which nothing is sold", barred, 0, 1);
      runOutNoted = Require.between("share of running out worth a word", noted, 0, barred);
      runOutBarred = barred;
      return this;
    }

    /**
     * Pressure loss at peak flow above which it is worth a word; 15 psi unless set.
     *
     * @param loss 1 to 80 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder highestPressureLoss(Pressure loss) {
      Require.between("highest pressure loss in psi", loss.psi(), 1, 80);
      highestPressureLoss = loss;
      return this;
    }

    /**
     * Depth of the bed below which it is worth a word; 24 in unless set.
     *
     * @param depth 6 to 60 in
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leastBedDepth(Length depth) {
      Require.between("least depth of the bed in inches", depth.inches(), 6, 60);
      leastBedDepth = depth;
      return this;
    }

    /**
     * Room above the bed as a share of its depth, below which it is worth a word; 0.5 unless set.
     *
     * @param share 0 to 1
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leastFreeboard(double share) {
      leastFreeboard = Require.between("least room above the bed", share, 0, 1);
      return this;
    }

    /** {@return the finished limits; later calls of this builder do not change them} */
    public Limits build() {
      return new Limits(
          new Values(
              shortestDays,
              lowestPressure,
              reserveRisk,
              designUse,
              runOutNoted,
              runOutBarred,
              highestPressureLoss,
              leastBedDepth,
              leastFreeboard));
    }
  }
}
