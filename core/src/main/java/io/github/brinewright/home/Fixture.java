package io.github.brinewright.home;

/**
 * Fixtures of a home with their water supply fixture units, private use, hot and cold together.
 * Source: International Plumbing Code, table E103.3(2), from memory; local code decides.
 */
public enum Fixture {
  BATHTUB(1.4),
  SHOWER(1.4),
  LAVATORY(0.7),
  WATER_CLOSET(2.2),
  BIDET(2.0),
  KITCHEN_SINK(1.4),
  DISHWASHER(1.4),
  CLOTHES_WASHER(1.4),
  LAUNDRY_TUB(1.4);

  private final double units;

  Fixture(double units) {
    this.units = units;
  }

  /** Water supply fixture units of one; dimensionless. */
  public double units() {
    return units;
  }
}
