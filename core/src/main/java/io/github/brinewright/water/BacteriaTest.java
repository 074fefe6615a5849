package io.github.brinewright.water;

/** Whether the water was tested for bacteria, and what was found. */
public enum BacteriaTest {
  NOT_DONE,
  NONE_FOUND,
  FOUND
}
