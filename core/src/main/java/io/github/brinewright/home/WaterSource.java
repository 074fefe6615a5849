package io.github.brinewright.home;

/** Where the home's water comes from. */
public enum WaterSource {
  PUBLIC_SUPPLY,
  PRIVATE_WELL
}
