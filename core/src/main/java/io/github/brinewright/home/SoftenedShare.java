package io.github.brinewright.home;

/** Which water passes the softener. Outdoor taps never do. */
public enum SoftenedShare {
  /** All water of the house. */
  WHOLE_HOUSE(1),
  /**
   * Hot water alone: 35 % of the use. Source: Region of Waterloo; Residential End Uses of Water
   * 2016 has 33 %.
   */
  HOT_WATER(0.35);

  private final double share;

  SoftenedShare(double share) {
    this.share = share;
  }

  /** {@return the share of the daily use, 0 to 1; dimensionless} */
  public double share() {
    return share;
  }
}
