package io.github.brinewright.area;

import java.util.Locale;

/** How the softeners of a town are set, or what is done at the source. */
public enum Scenario {
  /** As they were found. */
  AS_FOUND,
  /** Clocks get the right setting of their bed; meters stay as found. */
  CLOCKS_SET_RIGHT,
  /** Every control gets the right setting of its bed. */
  ALL_SET_RIGHT,
  /** Clocks are replaced by meters that wait for the night; meters stay as found. */
  CLOCKS_METERED,
  /**
   * Every bed gets, under the control that it has, the setting that takes the least salt and breaks
   * no more margins than the right one.
   */
  LEAN_DOSAGE,
  /** The public supply is treated to a lower hardness, and nobody sets a softener anew. */
  SOFTER_SOURCE,
  /** The public supply is treated to a lower hardness, and every softener is set right for it. */
  SOFTER_SOURCE_SET_RIGHT;

  /** {@return its name in files, as {@code clocks_set_right}} */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }
}
