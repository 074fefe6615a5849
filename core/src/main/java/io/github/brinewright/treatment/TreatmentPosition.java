package io.github.brinewright.treatment;

/**
 * Where a treatment stands, in the order of the water; common practice. The last two stand behind
 * the softener and change nothing that it is sized on.
 */
public enum TreatmentPosition {
  /** A filter for what floats in the water. */
  SEDIMENT,
  /** A bed that lifts a low pH. */
  NEUTRALIZER,
  /** Air or a chemical that oxidizes iron, manganese or hydrogen sulfide. */
  OXIDATION,
  /** A filter for iron, manganese or hydrogen sulfide. */
  METALS,
  /** Activated carbon. */
  CARBON,
  /** Ultraviolet light or the like, behind the softener. */
  DISINFECTION,
  /** A tap for drinking water with a treatment of its own. */
  DRINKING_TAP;

  /** {@return whether the softener gets the water behind it} */
  public boolean aheadOfSoftener() {
    return compareTo(DISINFECTION) < 0;
  }
}
