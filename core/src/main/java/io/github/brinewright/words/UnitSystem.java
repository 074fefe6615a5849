package io.github.brinewright.words;

import io.github.brinewright.quantity.Mass;

/** The units that a reader is used to. */
public enum UnitSystem {
  /** Gallons, pounds, grains. */
  US(Mass.ofPounds(40)),
  /** Litres, kilograms, milligrams per litre. */
  METRIC(Mass.ofKilograms(20));

  private final Mass bag;

  UnitSystem(Mass bag) {
    this.bag = bag;
  }

  /** {@return the mass of a usual bag of salt where these units are used: common practice} */
  public Mass bag() {
    return bag;
  }
}
