package io.github.brinewright.home;

/** Whether the water was tested for bacteria, and what was found. */
public enum BacteriaResult {
  /** The water was not tested. */
  NOT_DONE,

  /** The test found none. */
  NONE_FOUND,

  /** The test found some. */
  FOUND
}
