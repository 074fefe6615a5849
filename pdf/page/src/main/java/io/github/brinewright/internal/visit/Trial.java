package io.github.brinewright.internal.visit;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.Hardness;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A home as it may turn out: other people, hardness, salt price or years than the visit says. What
 * is tried is never saved, and no document says it.
 *
 * @param job of the home
 * @param home as the visit says
 * @param asked with what is tried
 */
public record Trial(Job job, QuotedHome home, Asked asked) {
  /** What may be tried. */
  public enum Knob {
    /** How many people live there. */
    PEOPLE,
    /** Hardness in grains a gallon. */
    HARDNESS,
    /** Price of a pound of salt. */
    SALT,
    /** Years that costs are summed over. */
    YEARS;

    /** Name of its value among what is asked. */
    public String field() {
      return "try." + name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Whether anything differs from the visit. */
  public boolean differs() {
    for (Knob knob : Knob.values()) {
      if (value(knob).compareTo(told(knob)) != 0) {
        return true;
      }
    }
    return false;
  }

  /** What the visit and the dealer say. */
  public BigDecimal told(Knob knob) {
    return switch (knob) {
      case PEOPLE -> BigDecimal.valueOf(home.site().household().people());
      case HARDNESS -> BigDecimal.valueOf(home.site().water().hardness().grainsPerGallon());
      case SALT -> home.tariff().salt().getAmount();
      case YEARS -> BigDecimal.valueOf(job.prices().terms().years());
    };
  }

  /** What is tried; what was told where nothing is, or nothing that can be. */
  public BigDecimal value(Knob knob) {
    return number(asked.value(knob.field())).filter(value -> holds(knob, value)).orElse(told(knob));
  }

  private static Optional<BigDecimal> number(String text) {
    try {
      return text.isEmpty() || text.length() > 20
          ? Optional.empty()
          : Optional.of(new BigDecimal(text));
    } catch (NumberFormatException other) {
      return Optional.empty();
    }
  }

  private static boolean holds(Knob knob, BigDecimal value) {
    double number = value.doubleValue();
    return switch (knob) {
      case PEOPLE -> number == Math.rint(number) && Household.PEOPLE.holds((int) number);
      case HARDNESS ->
          number > 0 && WaterAnalysis.HARDNESS.holds(Hardness.ofGrainsPerGallon(number));
      case SALT -> number > 0 && number <= 100;
      case YEARS -> number == Math.rint(number) && number >= 1 && number <= LifeCost.MOST_YEARS;
    };
  }

  /** All candidates of the home as it is tried. */
  public Comparison comparison() {
    if (!differs()) {
      return job.compare(home);
    }
    PriceList prices =
        job.prices().toBuilder()
            .terms(job.prices().terms().toBuilder().years(value(Knob.YEARS).intValue()).build())
            .build();
    return prices.compare(site(), tariff());
  }

  private Site site() {
    Site site = home.site();
    if (isTried(Knob.PEOPLE)) {
      site = site.withPeople(value(Knob.PEOPLE).intValue());
    }
    if (isTried(Knob.HARDNESS)) {
      Hardness other = Hardness.ofGrainsPerGallon(value(Knob.HARDNESS).doubleValue());
      // Water that is softer than the blend that is wanted needs no softener, and is no site.
      site = site.enteringWith(other).exceeds(site.target()) ? site.withHardness(other) : site;
    }
    return site;
  }

  private Tariff tariff() {
    BigDecimal told = told(Knob.SALT);
    return isTried(Knob.SALT) && told.signum() > 0
        ? home.tariff().withSaltTimes(value(Knob.SALT).divide(told, MathContext.DECIMAL64))
        : home.tariff();
  }

  private boolean isTried(Knob knob) {
    return value(knob).compareTo(told(knob)) != 0;
  }
}
