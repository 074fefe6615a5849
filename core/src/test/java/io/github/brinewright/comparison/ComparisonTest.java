package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.finding.DesignRule;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Hardness;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

class ComparisonTest {
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);

  private static Comparison compare(List<Offer> offers, double gpg, int people) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg)).build();
    return PriceList.of(offers)
        .compare(Site.of("h", water, Household.of(people).build()).build(), TARIFF);
  }

  private static List<Offer> offers() {
    return BuiltInOffers.all(CurrencyUnit.USD);
  }

  @Test
  void feasibleOptionsComeFirst() {
    Comparison comparison = compare(offers(), 40, 8);
    List<Candidate> candidates = comparison.candidates();

    assertThat(candidates)
        .extracting(Candidate::feasible)
        .isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(candidates)
        .anyMatch(Candidate::feasible)
        .anyMatch(candidate -> !candidate.feasible());
    assertThat(comparison.recommended()).contains(candidates.get(0));
  }

  @Test
  void theOrderOfThePriceListDoesNotMatter() {
    List<Offer> shuffled = new ArrayList<>(offers());
    Comparison straight = compare(offers(), 18, 3);
    for (int seed = 0; seed < 20; seed++) {
      Collections.shuffle(shuffled, new Random(seed));
      assertThat(compare(shuffled, 18, 3).candidates())
          .extracting(
              candidate ->
                  candidate.softener().id() + candidate.setup().control() + candidate.salt())
          .containsExactlyElementsOf(
              straight.candidates().stream()
                  .map(o -> o.softener().id() + o.setup().control() + o.salt())
                  .toList());
    }
  }

  @Test
  void neighboursAreTheNextBedsAndSayWhy() {
    Comparison comparison = compare(offers(), 18, 4);
    Candidate chosen = comparison.recommended().orElseThrow();
    Candidate smaller = comparison.smaller().orElseThrow();
    Candidate larger = comparison.larger().orElseThrow();

    assertThat(smaller.resin()).isLessThan(chosen.resin());
    assertThat(larger.resin()).isGreaterThan(chosen.resin());
    assertThat(comparison.bestOfEachUnit())
        .noneMatch(o -> between(o, smaller, chosen) || between(o, chosen, larger));
    assertThat(comparison.against(smaller)).isPresent();
    assertThat(comparison.against(larger)).isPresent();
    assertThat(comparison.against(chosen)).isEmpty();
    assertThat(comparison.columns(3)).containsExactly(smaller, chosen, larger);
  }

  private static boolean between(Candidate candidate, Candidate low, Candidate high) {
    return candidate.resin().exceeds(low.resin()) && high.resin().exceeds(candidate.resin());
  }

  @Test
  void whenNothingServesEveryOptionNamesTheLimitItBreaks() {
    Comparison comparison = compare(offers(), 60, 30);

    assertThat(comparison.recommended()).isEmpty();
    assertThat(comparison.whyRecommended()).isEmpty();
    assertThat(comparison.candidates())
        .allSatisfy(candidate -> assertThat(candidate.findings()).anyMatch(Finding::stops));
    assertThat(comparison.closest().finding(DesignRule.CAPACITY_BELOW_LOAD)).isPresent();
  }

  @Test
  void twiceThePeopleBringTwiceTheLoad() {
    assertThat(compare(offers(), 18, 6).home().dailyLoad())
        .isEqualTo(compare(offers(), 18, 3).home().dailyLoad().times(2));
  }

  @Test
  void harderWaterNeverLengthensTheInterval() {
    double before = Double.MAX_VALUE;
    for (double gpg = 5; gpg < 60; gpg += 2.5) {
      double days =
          compare(offers().subList(3, 4), gpg, 3).candidates().stream()
              .mapToDouble(candidate -> candidate.design().schedule().designDays())
              .max()
              .orElseThrow();
      assertThat(days).isLessThanOrEqualTo(before);
      before = days;
    }
  }
}
