package io.github.brinewright.trace;

/** How far a figure can be relied on. */
public enum Standing {
  /** A publication that anyone can open states it. */
  PUBLISHED,
  /** It follows from definitions or atomic weights. */
  DERIVED,
  /** The trade works this way; no single source states it. */
  COMMON_PRACTICE,
  /** A publication states it, but it was quoted without having it at hand. */
  FROM_MEMORY,
  /** The home's or the dealer's own input. */
  GIVEN
}
