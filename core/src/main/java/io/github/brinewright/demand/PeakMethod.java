package io.github.brinewright.demand;

/** How a peak flow was found, the most trusted first. */
public enum PeakMethod {
  /** Measured at the visit. */
  MEASURED,
  /** Fixture units and the table of the code. */
  FIXTURE_UNITS,
  /** A rule of thumb by the number of bathrooms. */
  BATHROOMS
}
