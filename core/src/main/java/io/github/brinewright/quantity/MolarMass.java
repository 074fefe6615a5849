package io.github.brinewright.quantity;

/**
 * Molar masses in grams per mole, from which everything that follows from atomic weights is
 * computed. Source: IUPAC, standard atomic weights (abridged).
 */
public final class MolarMass {
  /** Sodium, Na. */
  public static final double SODIUM = 22.990;

  /** Potassium, K. */
  public static final double POTASSIUM = 39.098;

  /** Chlorine, Cl. */
  public static final double CHLORINE = 35.453;

  /** Sodium chloride, NaCl. */
  public static final double SODIUM_CHLORIDE = 58.443;

  /** Potassium chloride, KCl. */
  public static final double POTASSIUM_CHLORIDE = 74.551;

  /** CO2. */
  public static final double CARBON_DIOXIDE = 44.009;

  /** Calcium carbonate, CaCO3, as which hardness is expressed. */
  public static final double CALCIUM_CARBONATE = 100.0869;

  /** Calcium oxide, CaO, of the German degree. */
  public static final double CALCIUM_OXIDE = 56.0774;

  private MolarMass() {}
}
