package io.github.brinewright.softener;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.MolarMass;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Temperature;

/** The salt that regenerates the bed. Dosages are stated as sodium chloride throughout. */
public enum Regenerant {
  /** Common salt; 3 lb dissolve in a gallon of refill water (common practice; tables 2.99). */
  SODIUM_CHLORIDE(MolarMass.SODIUM, 3.0, 1.128),
  /**
   * Potassium chloride: 74.551 / 58.443 = 1.2756 times the mass for the same equivalents; in 100 g
   * of water dissolve 28.1, 31.2 and 34.2 g at 0, 10 and 20 °C (CRC Handbook, from memory), so
   * 2.34, 2.60 and 2.85 lb in a gallon; warmer water is taken as 20 °C.
   */
  POTASSIUM_CHLORIDE(MolarMass.POTASSIUM, 2.85, 1.142);

  private static final double[] POTASSIUM_POUNDS = {2.34, 2.60, 2.85};
  private static final double CELSIUS_APART = 10;

  private static final Hardness ONE_GRAIN = Hardness.ofGrainsPerGallon(1);

  private final double cation;
  private final double poundsPerGallon;
  private final double brinePerWater;

  Regenerant(double cation, double poundsPerGallon, double brinePerWater) {
    this.cation = cation;
    this.poundsPerGallon = poundsPerGallon;
    this.brinePerWater = brinePerWater;
  }

  private double molarMass() {
    return cation + MolarMass.CHLORINE;
  }

  /**
   * {@return the mass that exchanges as much as the given mass of sodium chloride}
   *
   * @param sodiumChloride mass of pure sodium chloride
   */
  public Mass equalTo(Mass sodiumChloride) {
    return sodiumChloride.times(massRatio());
  }

  /**
   * {@return the chloride in a mass of this salt: 0.60663 of NaCl, 0.47555 of KCl (atomic weights)}
   *
   * @param salt mass of this salt, pure
   */
  public Mass chlorideIn(Mass salt) {
    return salt.times(chlorideShare());
  }

  /** {@return the chloride in this salt as a share of its mass; dimensionless} */
  public double chlorideShare() {
    return MolarMass.CHLORINE / molarMass();
  }

  /**
   * {@return what softening adds to the water for each grain per gallon of hardness that it
   * removes: two cations for each CaCO3} Example: 7.864 mg/L of sodium, 13.374 mg/L of potassium.
   * Source: atomic weights.
   */
  public Concentration addedForOneGrain() {
    return Concentration.ofMilligramsPerLitre(
        2 * cation / MolarMass.CALCIUM_CARBONATE * ONE_GRAIN.milligramsPerLitre());
  }

  /**
   * {@return what 100 % use of this salt would reach: 5,994 grains a pound of NaCl, 4,699 of KCl}
   */
  public SaltEfficiency chemicalLimit() {
    return CapacityCurve.CHEMICAL_LIMIT.dividedBy(massRatio());
  }

  /** {@return the mass for one mass of sodium chloride; dimensionless} */
  public double massRatio() {
    return molarMass() / MolarMass.SODIUM_CHLORIDE;
  }

  /**
   * {@return the volume of saturated brine from one volume of water: 1.128 for sodium chloride at
   * 60 °F (tables); 1.142 for potassium chloride at 20 °C (density 1,174 kg/m3, from memory)}
   * Dimensionless.
   */
  public double brinePerWater() {
    return brinePerWater;
  }

  /**
   * {@return what a gallon of refill water dissolves} Sodium chloride: 3 lb at any temperature,
   * common practice. Example: potassium chloride at 10 °C → 2.60 lb. Source: CRC Handbook, from
   * memory.
   *
   * @param brineTank temperature of the brine tank; above 20 °C taken as 20 °C, below 0 °C as 0 °C
   */
  public Mass dissolvedByOneGallon(Temperature brineTank) {
    return Mass.ofPounds(
        this == SODIUM_CHLORIDE ? poundsPerGallon : potassiumPounds(brineTank.celsius()));
  }

  private static double potassiumPounds(double celsius) {
    int last = POTASSIUM_POUNDS.length - 1;
    double place = Math.max(0, Math.min(last, celsius / CELSIUS_APART));
    int row = Math.min(last - 1, (int) place);
    return POTASSIUM_POUNDS[row]
        + (POTASSIUM_POUNDS[row + 1] - POTASSIUM_POUNDS[row]) * (place - row);
  }
}
