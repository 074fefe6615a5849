package io.github.brinewright.trace;

/**
 * The letters that stand for a term in printed formulas, in the publications they cite and in the
 * documentation of the code. A letter may mean different things in formulas of different sources.
 * {@code Wording.term} says what each means.
 *
 * <pre>{@code
 * String entry = Symbol.DOSAGE.sign() + ": " + words.term(Symbol.DOSAGE); // D: salt dosage
 * }</pre>
 */
public enum Symbol {
  /** People in a home. */
  PEOPLE("n", "", Sources.USE_STATISTICS),
  /** Standard deviation of the use of a day as a share of its mean. */
  VARIATION("CV", "", Sources.RENEWAL),
  /** Salt dosage. */
  DOSAGE("D", "lb/ft³", Sources.STANDARD_GEL),
  /** Depth of the bed. */
  BED_DEPTH("L", "m", Sources.ERGUN),
  /** Velocity of the water, as if the vessel held no beads. */
  VELOCITY("v", "m/s", Sources.ERGUN),
  /** Share of the bed that is free for the water. */
  VOIDAGE("e", "", Sources.ERGUN),
  /** Diameter of a bead. */
  BEAD_DIAMETER("d", "m", Sources.ERGUN),
  /** Viscosity of the water. */
  VISCOSITY("μ", "Pa·s", Sources.ERGUN),
  /** Density of the water. */
  WATER_DENSITY("ρ", "kg/m³", Sources.ERGUN),
  /** Density of a wet bead. */
  BEAD_DENSITY("ρb", "kg/m³", Sources.RICHARDSON_ZAKI),
  /** Gravity. */
  GRAVITY("g", "m/s²", Sources.RICHARDSON_ZAKI),
  /** Exponent of the voidage of an expanded bed. */
  EXPANSION_EXPONENT("n", "", Sources.RICHARDSON_ZAKI),
  /** Yearly discount rate. */
  DISCOUNT_RATE("d", "", Sources.HANDBOOK_135),
  /** Yearly rise of a price. */
  PRICE_RISE("e", "", Sources.HANDBOOK_135),
  /** Years reckoned. */
  YEARS("n", "", Sources.HANDBOOK_135);

  private final String sign;
  private final String unit;
  private final Source source;

  Symbol(String sign, String unit, Source source) {
    this.sign = sign;
    this.unit = unit;
    this.source = source;
  }

  /** {@return the letter or letters} */
  public String sign() {
    return sign;
  }

  /** {@return the unit in which its formula takes it; empty where it is a number} */
  public String unit() {
    return unit;
  }

  /** {@return whose formula it stands in} */
  public Source source() {
    return source;
  }
}
