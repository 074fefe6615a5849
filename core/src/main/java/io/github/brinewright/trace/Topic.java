package io.github.brinewright.trace;

/** What part of the work a step belongs to. */
public enum Topic {
  WATER,
  DEMAND,
  CAPACITY,
  REGENERATION,
  FLOW,
  YEAR,
  MONEY,
  EFFECT
}
