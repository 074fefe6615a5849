package io.github.brinewright.finding;

import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Limits that a dealer may set; the usual ones are common practice. What he would rather keep, but
 * may give up at a price, are margins of {@code comparison}.
 *
 * <pre>{@code
 * Limits limits = Limits.builder().leastPressure(Pressure.ofPsi(20)).reserveRisk(0.05).build();
 * }</pre>
 *
 * <p>Immutable; equal limits are equal.
 */
public final class Limits {
  /** 15 psi, one design day held back: common practice. */
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
        .leastPressure(values.leastPressure)
        .reserveRisk(values.reserveRisk)
        .leastBedDepth(values.leastBedDepth)
        .leastFreeboard(values.leastFreeboard);
  }

  /** {@return the pressure that must be left at peak flow for the candidate to be sold} */
  public Pressure leastPressure() {
    return values.leastPressure;
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
      Pressure leastPressure,
      double reserveRisk,
      @Nullable Double designUse,
      Length leastBedDepth,
      double leastFreeboard) {}

  /** Collects limits. */
  public static final class Builder {
    private Pressure leastPressure = Pressure.ofPsi(15);
    private double reserveRisk;
    private @Nullable Double designUse;
    private Length leastBedDepth = Length.ofInches(24);
    private double leastFreeboard = 0.5;

    private Builder() {}

    /**
     * Pressure left at peak flow below which nothing is sold; 15 psi unless set.
     *
     * @param pressure 1 to 80 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leastPressure(Pressure pressure) {
      Require.between("least pressure in psi", pressure.psi(), 1, 80);
      leastPressure = pressure;
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
          new Values(leastPressure, reserveRisk, designUse, leastBedDepth, leastFreeboard));
    }
  }
}
