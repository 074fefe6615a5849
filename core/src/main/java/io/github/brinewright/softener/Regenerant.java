package io.github.brinewright.softener;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltEfficiency;

/** The salt that regenerates the bed. Dosages are stated as sodium chloride throughout. */
public enum Regenerant {
  /** Common salt; 3 lb dissolve in a gallon of refill water (common practice; tables 2.99). */
  SODIUM_CHLORIDE(1.0, 3.0, 1.128, 22.990),
  /**
   * Potassium chloride: 74.551 / 58.443 = 1.2756 times the mass for the same equivalents; 34.2 g
   * dissolve in 100 g of water at 20 °C (CRC Handbook, from memory), so 2.85 lb in a gallon.
   */
  POTASSIUM_CHLORIDE(74.551 / 58.443, 2.85, 1.142, 39.098);

  private static final double CHLORINE = 35.453;

  private final double massForOneOfSodiumChloride;
  private final double poundsPerGallon;
  private final double brinePerWater;
  private final double cation;

  Regenerant(
      double massForOneOfSodiumChloride,
      double poundsPerGallon,
      double brinePerWater,
      double cation) {
    this.massForOneOfSodiumChloride = massForOneOfSodiumChloride;
    this.poundsPerGallon = poundsPerGallon;
    this.brinePerWater = brinePerWater;
    this.cation = cation;
  }

  /** The mass that exchanges as much as the given mass of sodium chloride. */
  public Mass equalTo(Mass sodiumChloride) {
    return sodiumChloride.times(massForOneOfSodiumChloride);
  }

  /** The chloride in a mass of this salt: 0.60663 of NaCl, 0.47555 of KCl (atomic weights). */
  public Mass chlorideIn(Mass salt) {
    return salt.times(CHLORINE / (CHLORINE + cation));
  }

  /** What 100 % use of this salt would reach: 5,994 grains a pound of NaCl, 4,699 of KCl. */
  public SaltEfficiency chemicalLimit() {
    return CapacityCurve.CHEMICAL_LIMIT.dividedBy(massForOneOfSodiumChloride);
  }

  /** Mass for one mass of sodium chloride; dimensionless. */
  public double massRatio() {
    return massForOneOfSodiumChloride;
  }

  /**
   * Volume of saturated brine from one volume of water: 1.128 for sodium chloride at 60 °F
   * (tables); 1.142 for potassium chloride at 20 °C (density 1,174 kg/m3, from memory).
   * Dimensionless.
   */
  public double brinePerWater() {
    return brinePerWater;
  }

  /** What a gallon of refill water dissolves. */
  public Mass dissolvedByOneGallon() {
    return Mass.ofPounds(poundsPerGallon);
  }
}
