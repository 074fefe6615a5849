package io.github.brinewright.service;

import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.Locale;

/** What may be wrong with the softener of a house, the gravest first. */
public enum FaultKind {
  /** No setting of the bed serves the home: bed, daily load, capacity. */
  BED_TOO_SMALL(Sources.DEFINITION),
  /**
   * The setting reckons with the rating, of which the salt restores a part: capacity reckoned with,
   * usable capacity, days out of soft water a year, hard water a year, salt a year beyond the right
   * setting.
   */
  RATING_AS_CAPACITY(Sources.RATED_CAPACITY),
  /**
   * Iron and manganese were forgotten: hardness set, compensated hardness, days out of soft water a
   * year, hard water a year.
   */
  HARDNESS_WITHOUT_IRON(Sources.FOULING_ALLOWANCE),
  /** The meter is told too little: hardness set, compensated hardness, days, hard water a year. */
  HARDNESS_SET_TOO_LOW(Sources.DEFINITION),
  /** The meter is told too much: hardness set, compensated hardness, share of capacity unused. */
  HARDNESS_SET_TOO_HIGH(Sources.DEFINITION),
  /**
   * Longer than the bed lasts: days as set, days that it lasts at full use, days out of soft water
   * a year, hard water a year.
   */
  INTERVAL_TOO_LONG(Sources.CLOCK_DAYS),
  /**
   * The meter waits for more than the bed holds: volume that starts it, volume that the bed holds,
   * days out of soft water a year, hard water a year.
   */
  VOLUME_TOO_LARGE(Sources.RESERVE),
  /**
   * The control holds back a reserve that the setting has left already: set volume, reserve, volume
   * that the bed holds, share of capacity unused.
   */
  RESERVE_TWICE(Sources.RESERVE),
  /**
   * Much of the bed is thrown away: mean days, share of capacity unused, salt a year of the
   * regenerations too many.
   */
  INTERVAL_TOO_SHORT(Sources.CLOCK_DAYS),
  /**
   * The refill dissolves too little for what the setting reckons with: salt each time, salt that it
   * would take.
   */
  REFILL_TOO_SMALL(Sources.REFILL),
  /**
   * The refill dissolves more than the setting makes use of: salt each time, salt that it would
   * take, salt a year too much in the regenerations of the right setting.
   */
  REFILL_TOO_LARGE(Sources.REFILL),
  /**
   * A rich dosage restores little more: dosage, right dosage, salt a year too much in the
   * regenerations of the right setting.
   */
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
}
