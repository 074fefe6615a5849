package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.sizing.Design;

/**
 * With more people the same setting never regenerates less often, within a household or within a
 * guest house. From 8 to 9 people the one becomes the other, and use is no longer that of the
 * statistics but as entered, which may be less.
 */
final class PeopleProof {
  /** The forecast of regenerations is within 1 %. */
  private static final double FORECAST = 0.99;

  private PeopleProof() {}

  static void check(Job job, QuotedHome home, Comparison before) {
    Site site = home.site();
    int people = site.household().people();
    if (people == DailyUse.LARGEST_HOUSEHOLD || people == Household.PEOPLE.high()) {
      return;
    }
    Comparison after = job.compare(new QuotedHome(site.withPeople(people + 1), home.tariff()));
    for (Candidate candidate : before.candidates()) {
      after.candidates().stream()
          .filter(one -> one.setup().equals(candidate.setup()))
          .forEach(more -> check(candidate.design(), more.design()));
    }
  }

  private static void check(Design before, Design after) {
    if (before.feasible() && after.feasible()) {
      assertThat(after.year().orElseThrow().regenerations())
          .as("regenerations with one more than %s", before)
          .isGreaterThanOrEqualTo(before.year().orElseThrow().regenerations() * FORECAST);
    }
  }
}
