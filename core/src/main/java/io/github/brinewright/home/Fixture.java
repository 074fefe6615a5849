package io.github.brinewright.home;

/**
 * Fixtures of a home with their water supply fixture units, private use, hot and cold together.
 * Groups count less than their fixtures, since not all run together. Source: International Plumbing
 * Code, table E103.3(2), and for the groups International Residential Code, table P2903.6; both
 * from memory; local code decides.
 */
public enum Fixture {
  /** Bathtub, with or without a shower head. */
  BATHTUB(1.4),

  /** Shower. */
  SHOWER(1.4),

  /** Wash basin. */
  LAVATORY(0.7),

  /** Toilet with a flush tank. */
  WATER_CLOSET(2.2),

  /** Bidet. */
  BIDET(2.0),

  /** Kitchen sink. */
  KITCHEN_SINK(1.4),

  /** Dishwasher. */
  DISHWASHER(1.4),

  /** Washing machine. */
  CLOTHES_WASHER(1.4),

  /** Laundry tub. */
  LAUNDRY_TUB(1.4),

  /** A whole bathroom, counted instead of its fixtures: toilet, basin, bathtub or shower. */
  FULL_BATHROOM(3.6),

  /** A toilet and a basin together. */
  HALF_BATHROOM(2.6),

  /** Kitchen sink and dishwasher together. */
  KITCHEN(2.5),

  /** Washing machine and laundry tub together. */
  LAUNDRY(2.5);

  private final double units;

  Fixture(double units) {
    this.units = units;
  }

  /** {@return the water supply fixture units of one; dimensionless} */
  public double units() {
    return units;
  }
}
