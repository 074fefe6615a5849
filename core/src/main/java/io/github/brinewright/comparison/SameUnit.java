package io.github.brinewright.comparison;

/** What a candidate is called beside another one of the same unit. */
enum SameUnit {
  /** The same unit with another control or another salt dosage. */
  ANOTHER_SETTING
}
