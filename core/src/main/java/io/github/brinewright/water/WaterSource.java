package io.github.brinewright.water;

/** Where the home's water comes from. */
public enum WaterSource {
  PUBLIC_SUPPLY,
  PRIVATE_WELL
}
