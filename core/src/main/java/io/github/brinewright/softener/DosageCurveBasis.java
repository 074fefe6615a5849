package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/**
 * Usable capacity = design factor × curve(dosage) × resin volume; salt = dosage × volume. Example:
 * 1 ft3 of standard gel at 6 lb/ft3, factor 0.9 → 17,781 grains and 6 lb. Source: the resin's
 * curve; the factor is common practice.
 *
 * @param resinType the resin
 * @param resin its volume; 0.1 to 20 ft3
 * @param dosage sodium chloride for each cubic foot, within the resin's curve
 * @param designFactor 0.5 to 1
 * @param regenerant the salt used
 */
public record DosageCurveBasis(
    Resin resinType, Volume resin, SaltDosage dosage, double designFactor, Regenerant regenerant)
    implements CapacityBasis {
  /** Share of the curve that is counted on unless the dealer says otherwise: common practice. */
  public static final double USUAL_DESIGN_FACTOR = 0.9;

  /** Share of the curve that may be counted on: 0.5 to 1; dimensionless. */
  public static final Bounds<Double> DESIGN_FACTOR = Bounds.of(0.5, 1.0);

  /**
   * @param resinType the resin
   * @param resin its volume
   * @param dosage sodium chloride for each cubic foot, within the resin's curve
   * @param designFactor 0.5 to 1
   * @param regenerant the salt used
   * @throws IllegalArgumentException outside the ranges above
   */
  public DosageCurveBasis {
    Softener.RESIN_VOLUME.require("resin volume", resin);
    DESIGN_FACTOR.require("design factor", designFactor);
    resinType.curve().requireCovered(dosage);
  }

  @Override
  public Method method() {
    return Method.DOSAGE_CURVE;
  }

  private Worked<HardnessAmount> workedUsable() {
    return Worked.of(
        StepKind.USABLE_FROM_CURVE,
        Sources.DESIGN_FACTOR,
        designFactor,
        resinType.curve().at(dosage),
        resin,
        (factor, capacity, volume) -> capacity.of(volume).times(factor));
  }

  private Worked<Mass> workedSalt() {
    return Worked.of(
        StepKind.SALT_FROM_DOSAGE,
        Sources.DEFINITION,
        dosage,
        resin,
        regenerant.massRatio(),
        (pounds, volume, ratio) -> pounds.saltFor(volume).times(ratio));
  }

  @Override
  public HardnessAmount usable() {
    return workedUsable().value();
  }

  @Override
  public Mass saltPerRegeneration() {
    return workedSalt().value();
  }

  @Override
  public List<Step> steps() {
    return List.of(
        resinType.curve().worked(dosage).step(), workedUsable().step(), workedSalt().step());
  }
}
