package io.github.brinewright.regeneration;

import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Capacity held back so that soft water lasts until the regeneration.
 *
 * <p>One day to size on, or as many days of expected use as a chosen risk of running out asks for.
 * Example: 225 gal at 22.4 gpg → 5,040 grains. Source: common practice; renewal theory (Cox, 1962).
 */
public final class Reserve implements Explained {
  /** Nothing held back: for immediate regeneration. */
  public static final Reserve NONE = new Reserve(0, 0, null);

  private final double days;
  private final double risk;
  private final @Nullable Worked<HardnessAmount> worked;

  private Reserve(double days, double risk, @Nullable Worked<HardnessAmount> worked) {
    this.days = days;
    this.risk = risk;
    this.worked = worked;
  }

  /**
   * {@return one day's design load: the usual reserve of a delayed regeneration}
   *
   * @param design design use of a day; more than zero
   * @param compensated compensated hardness; more than zero
   * @throws IllegalArgumentException when one of them is not
   */
  public static Reserve ofDay(Volume design, Hardness compensated) {
    return new Reserve(
        1,
        0,
        Worked.of(
            StepKind.RESERVE,
            Sources.RESERVE,
            Require.positive("design use", design),
            Require.positive("compensated hardness", compensated),
            (use, hardness) -> hardness.in(use)));
  }

  /**
   * {@return what is not enough in a chosen share of regenerations, averaged over homes of the
   * expected use, whose own mean is known only so well} Example: 5 % at 100 gallons a day of 10
   * gpg, which vary as usual and are known by a bill → 1,508 grains.
   *
   * @param risk 0.0001 to 0.5; dimensionless
   * @param likely what the days at home may use
   * @param expected expected use of a day; more than zero
   * @param compensated compensated hardness; more than zero
   * @throws IllegalArgumentException outside these ranges
   */
  public static Reserve forRisk(
      double risk, LikelyUse likely, Volume expected, Hardness compensated) {
    double days = likely.reserveForRisk(risk);
    return new Reserve(
        days,
        risk,
        Worked.of(
            StepKind.RESERVE_BY_RISK,
            Sources.RENEWAL,
            days,
            Require.positive("expected use", expected),
            Require.positive("compensated hardness", compensated),
            (number, use, hardness) -> hardness.in(use).times(number)));
  }

  /** {@return the capacity held back; zero or more} */
  public HardnessAmount held() {
    return worked == null ? HardnessAmount.ofGrains(0) : worked.value();
  }

  /** {@return the days of load that it holds; dimensionless} */
  public double days() {
    return days;
  }

  /** {@return the risk of running out that it was chosen for; 0 where it was not chosen by risk} */
  public double risk() {
    return risk;
  }

  /** {@return whether it was chosen by risk} */
  public boolean byRisk() {
    return risk > 0;
  }

  @Override
  public List<Step> steps() {
    return worked == null ? List.of() : worked.steps();
  }

  /** Reserves of the same capacity for the same reason are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Reserve that
        && held().equals(that.held())
        && days == that.days
        && risk == that.risk;
  }

  @Override
  public int hashCode() {
    return Objects.hash(held(), days, risk);
  }

  /** The capacity and its reason, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return held() + " held back for " + days + " days" + (byRisk() ? " at a risk of " + risk : "");
  }
}
