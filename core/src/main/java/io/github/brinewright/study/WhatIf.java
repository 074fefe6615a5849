package io.github.brinewright.study;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import java.math.BigDecimal;
import java.util.Optional;

/** Something that may turn out other than it was told. */
public enum WhatIf {
  /** One more person lives there, of 40 at most. */
  ONE_PERSON_MORE,
  /** One person fewer lives there, if more than one does. */
  ONE_PERSON_LESS,
  /** The water is harder by a fifth, of 200 gpg at most. */
  WATER_HARDER,
  /** The water is softer by a fifth, above the target of a blend. */
  WATER_SOFTER,
  /** Both salts cost twice as much. */
  SALT_TWICE_THE_PRICE,
  /** Water and sewer cost twice as much. */
  WATER_TWICE_THE_PRICE;

  private static final double HARDER = 1.2;
  private static final double SOFTER = 0.8;

  private static final BigDecimal TWICE = BigDecimal.valueOf(2);

  /** The home after the change; empty where the change cannot be, as one person less of one. */
  Optional<Site> site(Site site) {
    return switch (this) {
      case ONE_PERSON_MORE -> withPeople(site, 1);
      case ONE_PERSON_LESS -> withPeople(site, -1);
      case WATER_HARDER -> withHardness(site, HARDER);
      case WATER_SOFTER -> withHardness(site, SOFTER);
      default -> Optional.of(site);
    };
  }

  private static Optional<Site> withPeople(Site site, int more) {
    int people = site.household().people() + more;
    return Household.PEOPLE.holds(people) ? Optional.of(site.withPeople(people)) : Optional.empty();
  }

  private static Optional<Site> withHardness(Site site, double factor) {
    Hardness other = site.water().hardness().times(factor);
    return WaterAnalysis.HARDNESS.holds(other) && site.enteringWith(other).exceeds(site.target())
        ? Optional.of(site.withHardness(other))
        : Optional.empty();
  }

  /** The prices after the change. */
  Tariff tariff(Tariff tariff) {
    return switch (this) {
      case SALT_TWICE_THE_PRICE -> tariff.withSaltTimes(TWICE);
      case WATER_TWICE_THE_PRICE -> tariff.withWaterTimes(TWICE);
      default -> tariff;
    };
  }
}
