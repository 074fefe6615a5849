package io.github.brinewright.service;

import io.github.brinewright.quantity.Mass;

/**
 * Salt a year that the right setting saves, parted by cause so that no pound is saved twice: what
 * fewer regenerations save at the salt as found, and what is left for less salt each time.
 *
 * @param byInterval zero or more
 * @param byDosage zero or more
 * @param ofYear salt of a year as found
 */
record SaltSaved(Mass byInterval, Mass byDosage, Mass ofYear) {
  private static final Mass NOTHING = Mass.ofPounds(0);

  /** Less than this share of a year's salt is within what dealers set differently. */
  private static final double MUCH = 0.15;

  /** Nor would anybody call less than a bag of salt a year a fault: common practice. */
  private static final Mass BAG = Mass.ofPounds(40);

  /** Less than this share of it is not worth a word of its own. */
  private static final double SOME = 0.05;

  static SaltSaved of(Inspected inspected) {
    ServiceOption found = inspected.asFound();
    return inspected
        .right()
        .map(right -> between(found, right))
        .orElseGet(() -> new SaltSaved(NOTHING, NOTHING, found.salt()));
  }

  private static SaltSaved between(ServiceOption found, ServiceOption right) {
    Mass all = found.salt().minus(right.salt()).max(NOTHING);
    double fewer = regenerations(found) - regenerations(right);
    Mass byInterval = found.saltPerRegeneration().times(fewer).max(NOTHING).min(all);
    return new SaltSaved(byInterval, all.minus(byInterval), found.salt());
  }

  private static double regenerations(ServiceOption option) {
    return option.years().regenerations().mean();
  }

  private boolean much() {
    return byInterval.plus(byDosage).exceeds(ofYear.times(MUCH).max(BAG));
  }

  /** Whether much is saved, and the interval has its part in that. */
  boolean muchByInterval() {
    return much() && byInterval.exceeds(ofYear.times(SOME));
  }

  /** Whether much is saved, and the salt of a regeneration has its part in that. */
  boolean muchByDosage() {
    return much() && byDosage.exceeds(ofYear.times(SOME));
  }
}
