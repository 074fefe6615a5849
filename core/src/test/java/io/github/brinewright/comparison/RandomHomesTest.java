package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What the choice keeps to in any home, with any price list and any margins. */
class RandomHomesTest {
  /** The forecast of regenerations is within 1 %. */
  private static final double FORECAST = 0.99;

  private static Tariff tariff() {
    return Tariff.placeholder(CurrencyUnit.USD);
  }

  private static double within(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static Site home(Random random) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(within(random, 4, 45)))
            .found(
                Substance.TOTAL_DISSOLVED_SOLIDS,
                Concentration.ofMilligramsPerLitre(within(random, 200, 1_000)))
            .build();
    Household.Builder household =
        Household.of(1 + random.nextInt(8)).bathrooms(1 + random.nextInt(7) / 2.0);
    Supply supply =
        Supply.of(
            Pressure.ofPsi(within(random, 35, 80)),
            FlowRate.ofGallonsPerMinute(within(random, 8, 25)));
    return Site.of("h", water, household.build()).supply(supply).build();
  }

  private static List<Offer> offers(Random random) {
    List<Offer> offers = new ArrayList<>();
    int units = 2 + random.nextInt(5);
    for (int i = 0; i < units; i++) {
      double volume = 0.75 + 0.25 * random.nextInt(14);
      Softener softener =
          Softener.withResin("u" + i, Volume.ofCubicFeet(volume))
              .dosages(Stream.of(4.0, 6.0, 9.0).map(SaltDosage::ofPoundsPerCubicFoot).toList())
              .controls(EnumSet.allOf(Control.class))
              .build();
      Money price = Money.of(CurrencyUnit.USD, 500 + random.nextInt(2_500));
      offers.add(Offer.of(softener, price).meterExtra(Money.parse("USD 150")).build());
    }
    return offers;
  }

  private static Margins tightened(Random random) {
    return Margins.builder()
        .meanDays(within(random, 2, 8))
        .designDays(within(random, 1, 5))
        .peakShare(within(random, 0.5, 1.5))
        .hardWaterMean(within(random, 0.002, 0.02))
        .pressureLeft(Pressure.ofPsi(within(random, 20, 50)))
        .build();
  }

  private static Comparison comparison(long seed) {
    Random random = new Random(seed);
    Site home = home(random);
    List<Offer> offers = offers(random);
    return PriceList.builder(offers).margins(tightened(random)).build().compare(home, tariff());
  }

  private static Set<Margin> broken(Candidate candidate) {
    return candidate.marginsBroken().stream().map(MarginCheck::margin).collect(Collectors.toSet());
  }

  private static List<Candidate> feasible(Comparison comparison) {
    return comparison.candidates().stream().filter(Candidate::feasible).toList();
  }

  @Property(tries = 60)
  void theRecommendedKeepsATightenedMarginWhileAnyEquallyGoodOneDoes(@ForAll long seed) {
    Comparison comparison = comparison(seed);
    comparison
        .recommended()
        .ifPresent(
            chosen -> {
              List<Candidate> fit = feasible(comparison);
              Set<Margin> unkeepable = broken(chosen);
              unkeepable.removeIf(
                  margin -> fit.stream().anyMatch(one -> !broken(one).contains(margin)));
              int ranked = broken(chosen).size() - unkeepable.size();
              assertThat(fit)
                  .as("none breaks fewer of the margins that any keeps")
                  .allMatch(
                      one ->
                          broken(one).stream().filter(m -> !unkeepable.contains(m)).count()
                              >= ranked);
            });
  }

  @Property(tries = 60)
  void theRecommendedCostsAtMostTwoPercentMoreThanTheCheapestThatBreaksAsFew(@ForAll long seed) {
    Comparison comparison = comparison(seed);
    comparison
        .recommended()
        .ifPresent(
            chosen ->
                assertThat(feasible(comparison))
                    .filteredOn(one -> broken(one).equals(broken(chosen)))
                    .filteredOn(one -> excess(comparison, one) <= excess(comparison, chosen))
                    .allSatisfy(
                        one ->
                            assertThat(amount(chosen)).isLessThanOrEqualTo(1.0201 * amount(one))));
  }

  /** Of the margins that any candidate keeps; one that all break parts nobody. */
  private static double excess(Comparison comparison, Candidate candidate) {
    return candidate.marginsBroken().stream()
        .filter(check -> !allBreak(comparison, check.margin()))
        .mapToDouble(MarginCheck::excess)
        .sum();
  }

  private static boolean allBreak(Comparison comparison, Margin margin) {
    return feasible(comparison).stream().allMatch(one -> broken(one).contains(margin));
  }

  private static double amount(Candidate candidate) {
    return candidate.life().total().getAmount().doubleValue();
  }

  @Property(tries = 60)
  void aHigherDosageNeverEarnsWhatALowerOneHoldsWithinNear(@ForAll long seed) {
    Comparison comparison = comparison(seed);
    comparison
        .recommended()
        .ifPresent(
            chosen ->
                assertThat(feasible(comparison))
                    .filteredOn(one -> one.softener().equals(chosen.softener()))
                    .filteredOn(one -> one.setup().control() == chosen.setup().control())
                    .filteredOn(one -> chosen.dosage().exceeds(one.dosage()))
                    .filteredOn(one -> broken(chosen).containsAll(broken(one)))
                    .filteredOn(one -> excess(comparison, one) <= excess(comparison, chosen))
                    .as("a leaner dosage of the same bed that breaks nothing more costs as much")
                    .allSatisfy(
                        one ->
                            assertThat(amount(chosen)).isLessThanOrEqualTo(1.0201 * amount(one))));
  }

  @Property(tries = 40)
  void everyCandidateIsToldApartInWordsByWhatDecides(@ForAll long seed) {
    Comparison comparison = comparison(seed);
    for (Locale language : List.of(Locale.US, new Locale("es"), Locale.FRENCH)) {
      Wording words = Wording.of(language, UnitSystem.US);
      comparison.whyRecommended().map(words::reason).ifPresent(RandomHomesTest::whole);
      comparison.marginsGivenUp().stream().map(words::reason).forEach(RandomHomesTest::whole);
      for (Candidate candidate : comparison.candidates()) {
        comparison.against(candidate).map(words::reason).ifPresent(RandomHomesTest::whole);
        candidate.margins().forEach(check -> whole(words.margin(check)));
      }
    }
  }

  private static void whole(String text) {
    assertThat(text).doesNotContain("{", "}", "null", "-$", "NaN").endsWith(".");
  }

  @Property(tries = 40)
  void costsDecideOnlyWhereTheReasonSaysSo(@ForAll long seed) {
    Comparison comparison = comparison(seed);
    comparison
        .recommended()
        .ifPresent(
            chosen -> {
              for (Candidate other : feasible(comparison)) {
                if (comparison.recommends(other)) {
                  continue;
                }
                Reason reason = comparison.against(other).orElseThrow();
                boolean byMargin = reason.margin().isPresent();
                boolean moreBroken = other.marginsBroken().size() > chosen.marginsBroken().size();
                assertThat(byMargin || !moreBroken).isTrue();
                reason
                    .margin()
                    .ifPresent(check -> assertThat(other.marginsBroken()).contains(check));
              }
            });
  }

  @Property(tries = 40)
  void moreHardnessNeverMeansFewerRegenerationsOfOneSetting(@ForAll long seed) {
    Random random = new Random(seed);
    Site home = home(random);
    PriceList prices = PriceList.of(offers(random));
    Comparison now = prices.compare(home, tariff());
    Comparison harder =
        prices.compare(home.withHardness(home.water().hardness().times(1.1)), tariff());
    for (Candidate before : now.candidates()) {
      harder.candidates().stream()
          .filter(one -> one.setup().equals(before.setup()))
          .filter(one -> one.design().feasible() && before.design().feasible())
          .forEach(
              after ->
                  assertThat(after.design().year().orElseThrow().regenerations())
                      .isGreaterThanOrEqualTo(
                          before.design().year().orElseThrow().regenerations() * FORECAST));
    }
  }

  @Property(tries = 20)
  void aComparisonIsTheSameEachTime(@ForAll long seed) {
    assertThat(comparison(seed).candidates()).isEqualTo(comparison(seed).candidates());
    assertThatCode(() -> comparison(seed).grids()).doesNotThrowAnyException();
  }
}
