package io.github.brinewright.comparison;

import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityCurve;

/**
 * The margins of a dealer: what a good choice keeps beyond the limits. Each one's source stands
 * with its {@link Margin}.
 *
 * <pre>{@code
 * Margins margins = Margins.builder().meanDays(4).hardWaterMean(0.005).build();
 * PriceList prices = PriceList.builder(offers).margins(margins).build();
 * }</pre>
 *
 * <p>Immutable; equal margins are equal.
 */
public final class Margins {
  /** Least days between regenerations: 0.5 to 14. */
  public static final Bounds<Double> DAYS = Bounds.of(0.5, 14.0);

  /** Peak flow as a share of the service flow: 0.1 to 5; dimensionless. */
  public static final Bounds<Double> PEAK_SHARE = Bounds.of(0.1, 5.0);

  /** Flow through the area of a bed: 1 to 100 gpm/ft2. */
  public static final Bounds<FlowVelocity> LOADING =
      Bounds.of(
          FlowVelocity.ofGallonsPerMinutePerSquareFoot(1),
          FlowVelocity.ofGallonsPerMinutePerSquareFoot(100));

  /** Pressures: 1 to 80 psi. */
  public static final Bounds<Pressure> PRESSURE = Bounds.of(Pressure.ofPsi(1), Pressure.ofPsi(80));

  /** Shares of intervals or of a year's use: 0.0001 to 1; dimensionless. */
  public static final Bounds<Double> SHARE = Bounds.of(0.0001, 1.0);

  /** The usual margins. */
  public static final Margins USUAL = builder().build();

  private static final double MUCH_IRON = 2;
  private static final double MANY_SOLIDS = 750;

  private final Values values;

  private Margins(Values values) {
    this.values = values;
  }

  /**
   * The usual margins, to be changed.
   *
   * @return a builder that begins with them
   */
  public static Builder builder() {
    return new Builder(
        new Values(
            3,
            2,
            1,
            1,
            FlowVelocity.ofGallonsPerMinutePerSquareFoot(15),
            FlowVelocity.ofGallonsPerMinutePerSquareFoot(20),
            Pressure.ofPsi(15),
            Pressure.ofPsi(30),
            0.02,
            0.01,
            0.02,
            SaltDosage.ofPoundsPerCubicFoot(6)));
  }

  /**
   * These margins, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    return new Builder(values);
  }

  /** {@return the least days between regenerations at mean use} */
  public double meanDays() {
    return values.meanDays;
  }

  /** {@return the least days between regenerations at design use} */
  public double designDays() {
    return values.designDays;
  }

  /** {@return the least days between regenerations of tanks that take turns, at any use} */
  public double twinDays() {
    return values.twinDays;
  }

  /** {@return the highest peak flow as a share of the service flow; dimensionless} */
  public double peakShare() {
    return values.peakShare;
  }

  /** {@return the highest flow through the area of the bed, used within its service flow} */
  public FlowVelocity serviceLoading() {
    return values.serviceLoading;
  }

  /** {@return the highest flow through the area of the bed at peak flow} */
  public FlowVelocity peakLoading() {
    return values.peakLoading;
  }

  /** {@return the highest pressure loss of a unit used within its service flow} */
  public Pressure pressureLoss() {
    return values.pressureLoss;
  }

  /** {@return the least pressure left at peak flow} */
  public Pressure pressureLeft() {
    return values.pressureLeft;
  }

  /**
   * {@return the share of intervals that may run out beyond the risk chosen; dimensionless} The
   * risk is that of a meter's reserve, {@link io.github.brinewright.finding.Limits#reserveRisk()};
   * under a clock, and where a design day is held back, it is the share of days above that day, one
   * in ten unless the dealer chose another.
   */
  public double runOutBeyondRisk() {
    return values.runOutBeyondRisk;
  }

  /** {@return the highest share of a year's use that may pass hard at mean use; dimensionless} */
  public double hardWaterMean() {
    return values.hardWaterMean;
  }

  /** {@return the same at the mean that three of four such homes stay below; dimensionless} */
  public double hardWaterHigh() {
    return values.hardWaterHigh;
  }

  /** {@return the least dosage in water with much iron or many dissolved solids} */
  public SaltDosage leanDosage() {
    return values.leanDosage;
  }

  /**
   * {@return whether a water asks for {@link #leanDosage()}: 2 mg/L of iron or 750 mg/L of
   * dissolved solids} Source: trade association booklet.
   *
   * @param water that enters the softener
   */
  public static boolean harsh(WaterAnalysis water) {
    return water.foundOrNone(Substance.IRON).milligramsPerLitre() >= MUCH_IRON
        || water.foundOrNone(Substance.TOTAL_DISSOLVED_SOLIDS).milligramsPerLitre() >= MANY_SOLIDS;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Margins margins && values.equals(margins.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Margins");
  }

  private record Values(
      double meanDays,
      double designDays,
      double twinDays,
      double peakShare,
      FlowVelocity serviceLoading,
      FlowVelocity peakLoading,
      Pressure pressureLoss,
      Pressure pressureLeft,
      double runOutBeyondRisk,
      double hardWaterMean,
      double hardWaterHigh,
      SaltDosage leanDosage) {}

  /** Collects margins. */
  public static final class Builder {
    private double meanDays;
    private double designDays;
    private double twinDays;
    private double peakShare;
    private FlowVelocity serviceLoading;
    private FlowVelocity peakLoading;
    private Pressure pressureLoss;
    private Pressure pressureLeft;
    private double runOutBeyondRisk;
    private double hardWaterMean;
    private double hardWaterHigh;
    private SaltDosage leanDosage;

    private Builder(Values start) {
      meanDays = start.meanDays;
      designDays = start.designDays;
      twinDays = start.twinDays;
      peakShare = start.peakShare;
      serviceLoading = start.serviceLoading;
      peakLoading = start.peakLoading;
      pressureLoss = start.pressureLoss;
      pressureLeft = start.pressureLeft;
      runOutBeyondRisk = start.runOutBeyondRisk;
      hardWaterMean = start.hardWaterMean;
      hardWaterHigh = start.hardWaterHigh;
      leanDosage = start.leanDosage;
    }

    /**
     * Least days between regenerations at mean use; 3 unless set.
     *
     * @param days 0.5 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder meanDays(double days) {
      meanDays = DAYS.require("least days between regenerations at mean use", days);
      return this;
    }

    /**
     * Least days between regenerations at design use; 2 unless set.
     *
     * @param days 0.5 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder designDays(double days) {
      designDays = DAYS.require("least days between regenerations at design use", days);
      return this;
    }

    /**
     * Least days between regenerations of tanks that take turns, at any use; 1 unless set.
     *
     * @param days 0.5 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder twinDays(double days) {
      twinDays = DAYS.require("least days between regenerations of a twin", days);
      return this;
    }

    /**
     * Highest peak flow as a share of the service flow of the bed; 1 unless set.
     *
     * @param share 0.1 to 5; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder peakShare(double share) {
      peakShare = PEAK_SHARE.require("peak flow as a share of the service flow", share);
      return this;
    }

    /**
     * Highest flow through the area of the bed, used within its service flow; 15 gpm/ft2 unless
     * set.
     *
     * @param loading 1 to 100 gpm/ft2
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder serviceLoading(FlowVelocity loading) {
      serviceLoading = LOADING.require("loading of the bed in service", loading);
      return this;
    }

    /**
     * Highest flow through the area of the bed at peak flow; 20 gpm/ft2 unless set.
     *
     * @param loading 1 to 100 gpm/ft2
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder peakLoading(FlowVelocity loading) {
      peakLoading = LOADING.require("loading of the bed at peak flow", loading);
      return this;
    }

    /**
     * Highest pressure loss of a unit used within its service flow; 15 psi unless set.
     *
     * @param loss 1 to 80 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder pressureLoss(Pressure loss) {
      pressureLoss = PRESSURE.require("highest pressure loss", loss);
      return this;
    }

    /**
     * Least pressure left at peak flow; 30 psi unless set.
     *
     * @param pressure 1 to 80 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder pressureLeft(Pressure pressure) {
      pressureLeft = PRESSURE.require("least pressure left", pressure);
      return this;
    }

    /**
     * Share of intervals that may run out beyond the risk chosen; 0.02 unless set.
     *
     * @param share 0.0001 to 1; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder runOutBeyondRisk(double share) {
      runOutBeyondRisk = SHARE.require("share of intervals beyond the risk", share);
      return this;
    }

    /**
     * Highest share of a year's use that may pass hard at mean use; 0.01 unless set.
     *
     * @param share 0.0001 to 1; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder hardWaterMean(double share) {
      hardWaterMean = SHARE.require("share of hard water at mean use", share);
      return this;
    }

    /**
     * The same at the mean that three of four such homes stay below; 0.02 unless set.
     *
     * @param share 0.0001 to 1; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder hardWaterHigh(double share) {
      hardWaterHigh = SHARE.require("share of hard water at high use", share);
      return this;
    }

    /**
     * Least dosage in water with 2 mg/L of iron or 750 mg/L of dissolved solids; 6 lb/ft3 unless
     * set.
     *
     * @param dosage 1 to 30 lb/ft3
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leanDosage(SaltDosage dosage) {
      leanDosage = CapacityCurve.DOSAGE.require("least dosage in harsh water", dosage);
      return this;
    }

    /** {@return the finished margins; later calls of this builder do not change them} */
    public Margins build() {
      return new Margins(
          new Values(
              meanDays,
              designDays,
              twinDays,
              peakShare,
              serviceLoading,
              peakLoading,
              pressureLoss,
              pressureLeft,
              runOutBeyondRisk,
              hardWaterMean,
              hardWaterHigh,
              leanDosage));
    }
  }
}
