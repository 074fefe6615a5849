package io.github.brinewright.comparison;

/** What a candidate is marked as. */
public enum Mark {
  /** The recommended one. */
  RECOMMENDED,
  /** The one that costs least over the years among all that keep every limit. */
  CHEAPEST_THAT_FITS
}
