package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.Household;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.sizing.Site;
import io.github.brinewright.trace.Finding;
import io.github.brinewright.units.Hardness;
import io.github.brinewright.water.WaterAnalysis;
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
    return Comparer.of(offers).compare(Site.of("h", water, Household.of(people).build()), TARIFF);
  }

  private static List<Offer> offers() {
    return BuiltInOffers.all(CurrencyUnit.USD);
  }

  @Test
  void feasibleOptionsComeFirstThenCost() {
    Comparison comparison = compare(offers(), 25, 5);
    List<Option> options = comparison.options();

    assertThat(options).extracting(Option::feasible).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(options.stream().filter(Option::feasible).map(o -> o.life().total())).isSorted();
    assertThat(options).anyMatch(Option::feasible).anyMatch(option -> !option.feasible());
    assertThat(comparison.recommended()).contains(options.get(0));
  }

  @Test
  void theOrderOfThePriceListDoesNotMatter() {
    List<Offer> shuffled = new ArrayList<>(offers());
    Comparison straight = compare(offers(), 18, 3);
    for (int seed = 0; seed < 20; seed++) {
      Collections.shuffle(shuffled, new Random(seed));
      assertThat(compare(shuffled, 18, 3).options())
          .extracting(option -> option.unit().id() + option.candidate().control() + option.salt())
          .containsExactlyElementsOf(
              straight.options().stream()
                  .map(o -> o.unit().id() + o.candidate().control() + o.salt())
                  .toList());
    }
  }

  @Test
  void neighboursAreTheNextBedsAndSayWhy() {
    Comparison comparison = compare(offers(), 18, 4);
    Option chosen = comparison.recommended().orElseThrow();
    Option smaller = comparison.smaller().orElseThrow();
    Option larger = comparison.larger().orElseThrow();

    assertThat(smaller.resin()).isLessThan(chosen.resin());
    assertThat(larger.resin()).isGreaterThan(chosen.resin());
    assertThat(comparison.bestOfEachUnit())
        .noneMatch(o -> between(o, smaller, chosen) || between(o, chosen, larger));
    assertThat(comparison.against(smaller)).isPresent();
    assertThat(comparison.against(larger)).isPresent();
    assertThat(comparison.against(chosen)).isEmpty();
    assertThat(comparison.columns(3)).containsExactly(smaller, chosen, larger);
  }

  private static boolean between(Option option, Option low, Option high) {
    return option.resin().exceeds(low.resin()) && high.resin().exceeds(option.resin());
  }

  @Test
  void whenNothingServesEveryOptionNamesTheLimitItBreaks() {
    Comparison comparison = compare(offers(), 60, 30);

    assertThat(comparison.recommended()).isEmpty();
    assertThat(comparison.whyRecommended()).isEmpty();
    assertThat(comparison.options())
        .allSatisfy(option -> assertThat(option.findings()).anyMatch(Finding::stops));
    assertThat(comparison.closest().findings())
        .extracting(Finding::code)
        .contains("capacity-below-load");
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
          compare(offers().subList(3, 4), gpg, 3).options().stream()
              .mapToDouble(option -> option.design().schedule().designDays())
              .max()
              .orElseThrow();
      assertThat(days).isLessThanOrEqualTo(before);
      before = days;
    }
  }
}
