package io.github.brinewright.service;

/** What comes of it. */
public enum Advice {
  /** Nothing is wrong, and nothing else pays: leave it as it is. */
  LEAVE,
  /** Keep it, and set it right. */
  SET_RIGHT,
  /** Keep it, set it right, and put a meter on it. */
  ADD_METER,
  /** Replace it. */
  REPLACE
}
