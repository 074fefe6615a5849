package io.github.brinewright.service;

import io.github.brinewright.service.ServiceOption.Kind;

/** What comes of it. */
public enum Advice {
  /** Nothing is wrong, and nothing else pays: leave it as it is. */
  LEAVE(Kind.AS_FOUND),
  /** Keep it, and set it right. */
  SET_RIGHT(Kind.SET_RIGHT),
  /** Keep it, set it right, and put a meter on it. */
  ADD_METER(Kind.METERED),
  /** Replace it. */
  REPLACE(Kind.REPLACED);

  private final Kind way;

  Advice(Kind way) {
    this.way = way;
  }

  /** {@return the way to go on that is advised} */
  public Kind way() {
    return way;
  }
}
