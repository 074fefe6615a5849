package io.github.brinewright.home;

/** Where the home's water comes from. */
public enum WaterSource {
  /** A public water supply. */
  PUBLIC_SUPPLY,

  /** A well of the home's own. */
  PRIVATE_WELL
}
