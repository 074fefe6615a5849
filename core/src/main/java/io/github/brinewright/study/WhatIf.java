package io.github.brinewright.study;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.Hardness;
import java.math.BigDecimal;
import java.util.Optional;

/** Something that may turn out other than it was told. */
public enum WhatIf {
  ONE_PERSON_MORE,
  ONE_PERSON_LESS,
  WATER_HARDER,
  WATER_SOFTER,
  SALT_TWICE_THE_PRICE,
  WATER_TWICE_THE_PRICE;

  private static final double HARDER = 1.2;
  private static final double SOFTER = 0.8;
  private static final BigDecimal TWICE = BigDecimal.valueOf(2);

  /** The home after the change; empty where the change cannot be, as one person less of one. */
  Optional<Site> site(Site site) {
    int people = site.household().people();
    return switch (this) {
      case ONE_PERSON_MORE ->
          people < 40 ? Optional.of(site.withPeople(people + 1)) : Optional.empty();
      case ONE_PERSON_LESS ->
          people > 1 ? Optional.of(site.withPeople(people - 1)) : Optional.empty();
      case WATER_HARDER -> Optional.of(site.withHardness(hardness(site, HARDER)));
      case WATER_SOFTER -> {
        Hardness softer = hardness(site, SOFTER);
        yield softer.exceeds(site.target())
            ? Optional.of(site.withHardness(softer))
            : Optional.empty();
      }
      default -> Optional.of(site);
    };
  }

  private static Hardness hardness(Site site, double factor) {
    return site.water().hardness().times(factor);
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
