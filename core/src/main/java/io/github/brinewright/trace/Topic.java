package io.github.brinewright.trace;

/** What part of the work a step belongs to. */
public enum Topic {
  /** The water and its hardness. */
  WATER,

  /** What the home uses. */
  DEMAND,

  /** Capacity of the bed and its salt. */
  CAPACITY,

  /** When and how the bed is regenerated. */
  REGENERATION,

  /** Peak flow, pressure and backwash. */
  FLOW,

  /** What a year takes. */
  YEAR,

  /** What it costs. */
  MONEY,

  /** What it does to water and drain. */
  EFFECT
}
