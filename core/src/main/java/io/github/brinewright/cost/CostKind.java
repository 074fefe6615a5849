package io.github.brinewright.cost;

/** The lines of a yearly cost, in the order in which they are shown. */
public enum CostKind {
  SALT,
  WATER,
  SEWER,
  ELECTRICITY,
  SERVICE;

  /** The yearly rise that applies to the line. */
  double rise(Escalation escalation) {
    return this == WATER || this == SEWER ? escalation.water() : escalation.salt();
  }
}
