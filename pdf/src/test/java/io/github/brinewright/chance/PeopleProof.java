package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.sizing.Design;

/**
 * With more people the same setting never regenerates less often, and neither does one that is set
 * anew for them. Use falls with more people only where it is found in another way: from 8 to 9
 * people, where it is as entered instead of by statistics, and where an allowance that is entered
 * low comes to cover three of four days and takes the place of the ninth day in ten.
 */
final class PeopleProof {
  /** The forecast of regenerations is within 1 %. */
  private static final double FORECAST = 0.99;

  private final DailyUse less;
  private final DailyUse more;
  private final HardWaterForecast forecast;

  private PeopleProof(Comparison before, Comparison after) {
    less = before.home().use();
    more = after.home().use();
    forecast = HardWaterForecast.of(DemandModel.of(after.home()));
  }

  static void check(Job job, QuotedHome home, Comparison before) {
    Site site = home.site();
    int people = site.household().people();
    if (people == Household.PEOPLE.high()) {
      return;
    }
    Comparison after = job.compare(new QuotedHome(site.withPeople(people + 1), home.tariff()));
    PeopleProof proof = new PeopleProof(before, after);
    proof.use(people);
    before.candidates().stream()
        .map(candidate -> candidate.design())
        .filter(Design::feasible)
        .forEach(
            design ->
                after.candidates().stream()
                    .map(candidate -> candidate.design())
                    .filter(one -> one.setup().equals(design.setup()))
                    .forEach(one -> proof.regenerations(design, one)));
  }

  private static boolean falls(Volume before, Volume after) {
    return before.ratioTo(after) > 1 + 1e-9;
  }

  private void use(int people) {
    boolean guestHouse = people == DailyUse.LARGEST_HOUSEHOLD;
    assertThat(falls(less.expected(), more.expected()) && !guestHouse)
        .as("mean use falls with more than %s people", people)
        .isFalse();
    assertThat(
            falls(less.design(), more.design())
                && less.designBasis() == more.designBasis()
                && !guestHouse)
        .as("design use falls with more than %s people", people)
        .isFalse();
  }

  private void regenerations(Design before, Design after) {
    if (falls(less.expected(), more.expected())) {
      return;
    }
    double least = before.year().orElseThrow().regenerations() * FORECAST;
    assertThat(forecast.year(before.bed().orElseThrow()).regenerations())
        .as("regenerations of the same setting with one more than %s", before)
        .isGreaterThanOrEqualTo(least);
    if (after.feasible() && !falls(less.design(), more.design())) {
      assertThat(after.year().orElseThrow().regenerations())
          .as("regenerations, set anew, with one more than %s", before)
          .isGreaterThanOrEqualTo(least);
    }
  }
}
