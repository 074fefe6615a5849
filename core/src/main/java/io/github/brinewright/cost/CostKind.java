package io.github.brinewright.cost;

/** The lines of a yearly cost, in the order in which they are shown. */
public enum CostKind {
  /** Sodium or potassium chloride. */
  SALT,
  /** Regeneration water. */
  WATER,
  /** The same water as sewage. */
  SEWER,
  /** The control at all times. */
  ELECTRICITY,
  /** A year's service, with the upkeep of what is sold beside the softener. */
  SERVICE;

  /** The yearly rise that applies to the line. */
  double rise(Escalation escalation) {
    return this == WATER || this == SEWER ? escalation.water() : escalation.salt();
  }
}
