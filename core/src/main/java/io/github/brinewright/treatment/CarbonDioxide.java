package io.github.brinewright.treatment;

import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.MolarMass;
import java.util.Optional;

/**
 * Carbon dioxide, alkalinity and pH of a water that bicarbonate buffers: each follows from the
 * other two, and a neutralizer moves all three.
 */
final class CarbonDioxide {
  /** First dissociation constant of carbonic acid at 25 °C, from memory (textbooks: 6.35). */
  private static final double PK = 6.35;

  private CarbonDioxide() {}

  /** mg of carbon dioxide for each mg of alkalinity as CaCO3 at a pH. */
  static double perAlkalinity(double ph) {
    return 2 * MolarMass.CARBON_DIOXIDE / MolarMass.CALCIUM_CARBONATE * Math.pow(10, PK - ph);
  }

  /** As measured, or from alkalinity and pH; empty where neither is known. */
  static Optional<Concentration> of(WaterAnalysis water) {
    return water
        .found(Substance.CARBON_DIOXIDE)
        .or(
            () ->
                water
                    .found(Substance.ALKALINITY)
                    .filter(alkalinity -> water.ph().isPresent())
                    .map(each -> each.times(perAlkalinity(water.ph().getAsDouble()))));
  }

  /**
   * Hardness and alkalinity, as mg/L of CaCO3, that a mineral gives until a pH is reached: what is
   * dissolved takes carbon dioxide away and adds alkalinity, until the two stand as that pH asks.
   */
  static Optional<Concentration> dissolved(
      WaterAnalysis water, NeutralizerMineral mineral, double phAfter) {
    Optional<Concentration> alkalinity = water.found(Substance.ALKALINITY);
    Optional<Concentration> carbonDioxide = of(water);
    if (alkalinity.isEmpty() || carbonDioxide.isEmpty()) {
      return Optional.empty();
    }
    double ratio = perAlkalinity(phAfter);
    double mg =
        (carbonDioxide.get().milligramsPerLitre() - ratio * alkalinity.get().milligramsPerLitre())
            / (ratio + 1 / mineral.hardnessPerCarbonDioxide());
    return Optional.of(Concentration.ofMilligramsPerLitre(Math.max(0, mg)));
  }
}
