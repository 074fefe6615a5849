package io.github.brinewright.service;

import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What may be wrong with the softener of a house, the gravest first. */
public enum FaultKind {
  /** No setting of the bed serves the home: bed, daily load, capacity with its salt. */
  BED_TOO_SMALL(Sources.DEFINITION),
  /**
   * The setting reckons with the rating, of which the salt restores a part: capacity reckoned with,
   * usable capacity, days out of soft water a year, hard water of these, salt a year that less of
   * it each time would save.
   */
  RATING_AS_CAPACITY(Sources.RATED_CAPACITY),
  /**
   * Iron and manganese were forgotten: hardness set, compensated hardness, days out of soft water a
   * year, hard water of these.
   */
  HARDNESS_WITHOUT_IRON(Sources.FOULING_ALLOWANCE),
  /** The meter is told too little, as above: hardness set, compensated hardness, days, water. */
  HARDNESS_SET_TOO_LOW(Sources.DEFINITION),
  /**
   * The meter is told too much, and starts sooner than it should: hardness set, compensated
   * hardness, share of the bed that it leaves unused by that.
   */
  HARDNESS_SET_TOO_HIGH(Sources.DEFINITION),
  /**
   * Longer than the bed lasts: days as set, days that it lasts at full use, days out of soft water
   * a year, hard water of these.
   */
  INTERVAL_TOO_LONG(Sources.CLOCK_DAYS),
  /**
   * The meter waits for more than the bed holds: volume that starts it, volume that the bed holds,
   * days out of soft water a year, hard water of these.
   */
  VOLUME_TOO_LARGE(Sources.RESERVE),
  /**
   * The control holds back a reserve that the setting has left already: set volume, reserve, volume
   * that the bed holds, share of the bed that the second reserve leaves unused.
   */
  RESERVE_TWICE(Sources.RESERVE),
  /**
   * It regenerates sooner than it should: mean days, share of the capacity thrown away, salt a year
   * that the right interval would save.
   */
  INTERVAL_TOO_SHORT(Sources.CLOCK_DAYS),
  /**
   * The refill dissolves too little for the interval: salt each time, salt of the right setting,
   * days out of soft water a year, hard water of these.
   */
  REFILL_TOO_SMALL(Sources.REFILL),
  /**
   * The refill dissolves more than is of use: salt each time, salt of the right setting, salt a
   * year that this would save.
   */
  REFILL_TOO_LARGE(Sources.REFILL),
  /** A rich dosage restores little more: dosage, right dosage, salt a year that this would save. */
  DOSAGE_TOO_RICH(Sources.COMMON_PRACTICE),
  /** Too lean for iron or many dissolved solids: dosage, least dosage. */
  DOSAGE_TOO_LEAN(Sources.TRADE_BOOKLET),
  /**
   * It regenerates while people use water: hour, hard water of regenerations a year, the same at 2
   * a.m.
   */
  HOUR_IN_USE(Sources.METER_DATA),
  /** More salt is bought than the settings take: bought, computed. */
  SALT_BOUGHT_ABOVE(Sources.COMMON_PRACTICE),
  /** Less salt is bought than the settings take: bought, computed. */
  SALT_BOUGHT_BELOW(Sources.COMMON_PRACTICE),
  /** The water behind it is not soft: hardness measured. */
  NOT_SOFT_BEHIND(Sources.COMMON_PRACTICE);

  /** Days, volume, capacity, hardness, reserve and salt are right as they are for all that. */
  private static final Set<FaultKind> ELSEWHERE =
      EnumSet.of(BED_TOO_SMALL, HOUR_IN_USE, SALT_BOUGHT_ABOVE, SALT_BOUGHT_BELOW, NOT_SOFT_BEHIND);

  private final Source source;

  FaultKind(Source source) {
    this.source = source;
  }

  /** {@return who states what is right} */
  public Source source() {
    return source;
  }

  /** {@return its name in files and bundles, as {@code reserve-twice}} */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether days, volume, capacity, hardness, reserve or salt are to be set anew. */
  boolean asksForOtherSettings() {
    return !ELSEWHERE.contains(this);
  }
}
