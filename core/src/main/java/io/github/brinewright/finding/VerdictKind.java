package io.github.brinewright.finding;

/** What is to be done about a home before a softener is chosen, the gravest first. */
public enum VerdictKind {
  /** The water, or the supply, is put right first; a softener is sized for the water after that. */
  TREAT_FIRST,
  /** Something that decides is not known; figures are provisional and nothing is signed. */
  TEST_FIRST,
  /** The water is soft enough as it is. */
  SOFT_ENOUGH,
  /** A softener can be chosen. */
  READY
}
