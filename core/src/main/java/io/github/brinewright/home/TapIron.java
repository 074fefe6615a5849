package io.github.brinewright.home;

/** How water with iron looks as it leaves the tap, before it stands in the air. */
public enum TapIron {
  /** Clear: the iron is dissolved. */
  CLEAR,

  /** Cloudy or coloured: some of the iron is particles. */
  CLOUDY
}
