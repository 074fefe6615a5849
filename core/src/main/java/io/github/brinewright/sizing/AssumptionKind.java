package io.github.brinewright.sizing;

import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.Locale;

/** What is taken as so where a visit did not find it. */
public enum AssumptionKind {
  /** The bed, from the rating: rating, volume. */
  BED_FROM_RATING(Sources.COMMON_PRACTICE),
  /** The bed, from the vessel: diameter, height, volume. */
  BED_FROM_VESSEL(Sources.COMMON_PRACTICE),
  /** The resin is standard gel. */
  RESIN_STANDARD(Sources.STANDARD_GEL),
  /** The bed is as good as new, since its age is not known. */
  AGE_NOT_KNOWN(Sources.COMMON_PRACTICE),
  /** Capacity lost with the years: age, share left, lowest and highest share left. */
  AGE_LOSS(Sources.RESIN_AGE),
  /** The flow of the refill, which sets its minutes: flow. */
  REFILL_FLOW_USUAL(Sources.COMMON_PRACTICE),
  /** The salt of a regeneration, from what the family buys: salt a year, salt each time. */
  SALT_FROM_BOUGHT(Sources.DEFINITION),
  /** Nothing tells the salt of a regeneration: dosage, lowest and highest dosage. */
  SALT_NOT_KNOWN(Sources.COMMON_PRACTICE),
  /** The salt lies outside what is known of the resin: dosage, nearest dosage of its curve. */
  DOSAGE_OUTSIDE_CURVE(Sources.DEFINITION),
  /**
   * The capacity that the meter was told, since nobody read it: what the bed holds, and by night a
   * day's load less: capacity.
   */
  METER_CAPACITY(Sources.COMMON_PRACTICE),
  /** Minutes of backwash and rinses, since they were not read: minutes of the whole cycle. */
  CYCLE_USUAL(Sources.HOUSEHOLD_CYCLE),
  /** The hour of the regeneration: 2 a.m. */
  HOUR_USUAL(Sources.COMMON_PRACTICE);

  private final Source source;

  AssumptionKind(Source source) {
    this.source = source;
  }

  /** {@return who states what is assumed} */
  public Source source() {
    return source;
  }

  /** {@return its name in files and bundles, as {@code bed-from-rating}} */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
