package io.github.brinewright.home;

/** Whether the water was tested for bacteria, and what was found. */
public enum BacteriaResult {
  NOT_DONE,
  NONE_FOUND,
  FOUND
}
