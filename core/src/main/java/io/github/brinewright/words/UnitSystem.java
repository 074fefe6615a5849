package io.github.brinewright.words;

/** The units that a reader is used to. */
public enum UnitSystem {
  /** Gallons, pounds, grains. */
  US,
  /** Litres, kilograms, milligrams per litre. */
  METRIC
}
