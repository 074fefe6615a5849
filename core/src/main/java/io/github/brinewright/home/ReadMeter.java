package io.github.brinewright.home;

/** Which meter was read. */
public enum ReadMeter {
  /** That of the softener: only what has passed the bed. */
  SOFTENER,
  /** That of the whole house: all use, and the water of regenerations. */
  HOUSE
}
