package io.github.brinewright.softener;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.List;

/**
 * Usable capacity = design factor × curve(dosage) × resin volume; salt = dosage × volume. Example:
 * 1 ft3 of standard gel at 6 lb/ft3, factor 0.9 → 17,781 grains and 6 lb. Source: the resin's
 * curve; the factor is common practice.
 *
 * @param resinType the resin
 * @param resin its volume; more than zero
 * @param dosage sodium chloride for each cubic foot, within the resin's curve
 * @param designFactor 0.5 to 1
 * @param regenerant the salt used
 */
public record DosageCurveBasis(
    Resin resinType, Volume resin, SaltDosage dosage, double designFactor, Regenerant regenerant)
    implements CapacityBasis {
  /** Share of the curve that is counted on unless the dealer says otherwise: common practice. */
  public static final double USUAL_DESIGN_FACTOR = 0.9;

  /**
   * @throws IllegalArgumentException outside the ranges above
   */
  public DosageCurveBasis {
    Require.positive("resin volume", resin);
    Require.between("design factor", designFactor, 0.5, 1);
    resinType.curve().requireCovered(dosage);
  }

  @Override
  public Method method() {
    return Method.DOSAGE_CURVE;
  }

  @Override
  public HardnessAmount usable() {
    return resinType.curve().at(dosage).of(resin).times(designFactor);
  }

  @Override
  public Mass saltPerRegeneration() {
    return regenerant.equalTo(dosage.saltFor(resin));
  }

  @Override
  public List<Step> steps() {
    return List.of(
        resinType.curve().step(dosage),
        new Step(
            StepKind.USABLE_FROM_CURVE,
            List.of(
                Figure.of(designFactor, 2),
                Figure.of(resinType.curve().at(dosage)),
                Figure.of(resin.cubicFeet(), 2)),
            Figure.of(usable()),
            Sources.DESIGN_FACTOR),
        new Step(
            StepKind.SALT_FROM_DOSAGE,
            List.of(
                Figure.of(dosage),
                Figure.of(resin.cubicFeet(), 2),
                Figure.of(regenerant.massRatio(), 4)),
            Figure.of(saltPerRegeneration()),
            Sources.DEFINITION));
  }
}
