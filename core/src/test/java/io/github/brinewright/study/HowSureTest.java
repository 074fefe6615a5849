package io.github.brinewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HowSureTest {
  private static final WaterAnalysis WATER =
      WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(20)).build();

  private static Site home(boolean bill) {
    Household.Builder household = Household.of(3).bathrooms(1);
    return Site.of(
            "h",
            WATER,
            (bill ? household.bill(new Bill(Volume.ofGallons(8_460), 60)) : household).build())
        .build();
  }

  private static Offer offer(String id, double cubicFeet, int price, Control control) {
    Softener softener =
        Softener.withResin(id, Volume.ofCubicFeet(cubicFeet))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6)))
            .controls(EnumSet.of(control))
            .build();
    return Offer.of(softener, Money.of(CurrencyUnit.USD, price)).build();
  }

  private static Comparison compare(Site home, Offer... offers) {
    return PriceList.of(List.of(offers)).compare(home, Tariff.placeholder(CurrencyUnit.USD));
  }

  private static int percent(Comparison comparison, String id) {
    HowSure sure = HowSure.of(comparison).orElseThrow();
    Candidate candidate =
        comparison.candidates().stream()
            .filter(one -> one.softener().id().equals(id))
            .findFirst()
            .orElseThrow();
    return sure.bestInPercentOfDraws(candidate).orElse(-1);
  }

  @Test
  void whatIsAlikeIsBestInEveryDrawAndWhatIsFarDearerInNone() {
    Comparison comparison =
        compare(
            home(false),
            offer("a", 1.5, 2_000, Control.METERED_AT_NIGHT),
            offer("b", 1.5, 2_000, Control.METERED_AT_NIGHT),
            offer("dear", 1.5, 9_000, Control.METERED_AT_NIGHT));

    assertThat(percent(comparison, "a")).isEqualTo(100);
    assertThat(percent(comparison, "b")).isEqualTo(100);
    assertThat(percent(comparison, "dear")).isZero();
  }

  @Test
  void oneThatBreaksMoreMarginsIsNotDrawn() {
    Comparison comparison =
        compare(
            home(false),
            offer("small", 0.5, 100, Control.METERED_AT_NIGHT),
            offer("large", 2, 2_000, Control.METERED_AT_NIGHT));

    assertThat(percent(comparison, "large")).isEqualTo(100);
    assertThat(percent(comparison, "small")).isEqualTo(-1);
  }

  @Test
  void aBillMakesACloseChoiceSurer() {
    Offer[] offers = {
      offer("lean", 2.5, 2_600, Control.METERED_AT_NIGHT), offer("clock", 2.5, 1_500, Control.CLOCK)
    };

    assertThat(percent(compare(home(true), offers), "clock"))
        .as("the clock's cost is fixed; the meter wins where the home uses little")
        .isGreaterThanOrEqualTo(percent(compare(home(false), offers), "clock"));
  }

  @Test
  void theSameSeedGivesTheSameAndManyDrawsAgreeWithFew() {
    Comparison comparison =
        compare(
            home(false),
            offer("a", 1.5, 1_900, Control.METERED_AT_NIGHT),
            offer("b", 2, 1_950, Control.METERED_AT_NIGHT));
    Candidate best = comparison.recommended().orElseThrow();

    assertThat(HowSure.of(comparison)).isEqualTo(HowSure.of(comparison));
    int usual = HowSure.of(comparison).orElseThrow().bestInPercentOfDraws(best).orElseThrow();
    int many =
        HowSure.of(comparison, 100_000, 7).orElseThrow().bestInPercentOfDraws(best).orElseThrow();
    assertThat(usual)
        .as("four standard errors of 1,000 draws at the most")
        .isCloseTo(many, within(7));
    assertThatThrownBy(() -> HowSure.of(comparison, 9, 1)).hasMessageContaining("draws");
    assertThatThrownBy(() -> HowSure.of(comparison, 100_001, 1)).hasMessageContaining("draws");
  }

  @Test
  void nothingIsSureWhereNothingIsRecommended() {
    assertThat(HowSure.of(compare(home(false), offer("tiny", 0.1, 10, Control.CLOCK)))).isEmpty();
  }

  /** Between the multiples that are forecast, the proportion stands for the forecast. */
  @ParameterizedTest
  @EnumSource
  void costsFollowTheForecastBetweenItsPoints(Control control) {
    Comparison comparison = compare(home(false), offer("u", 1.5, 2_000, control));
    Candidate candidate = comparison.recommended().orElseThrow();
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(candidate.design().home()));
    Draws draws = new Draws(candidate.design().home(), 200, 1);
    DrawnCost cost = DrawnCost.of(candidate, draws);
    double stated = forecast.year(candidate.design().bed().orElseThrow()).regenerations();

    for (double multiple : new double[] {0.25, 0.5, 0.8, 1, 1.3, 2, 4}) {
      double exact =
          forecast.yearAt(candidate.design().bed().orElseThrow(), multiple).regenerations();
      assertThat(cost.oftener(multiple, candidate.design().home().variation().coefficient()))
          .as("%s at %s; chords of a smooth curve at a few points", control, multiple)
          .isCloseTo(exact / stated, withinPercentage(4));
    }
  }

  /** Moments of what is drawn: lognormal of mean 1, and the median of the days' variation. */
  @Test
  void whatIsDrawnHasItsDistribution() {
    Draws draws = new Draws(new HomeLoad(home(false)), 20_000, 1);

    assertThat(mean(draws, draws::use)).isCloseTo(1, within(0.005));
    assertThat(deviation(draws, draws::use))
        .as("DAIAD open meter data, 56 households: 0.457")
        .isCloseTo(0.457, within(0.01));
    assertThat(deviation(draws, draws::salt)).as("common practice").isCloseTo(0.15, within(0.003));
    assertThat(deviation(draws, draws::water)).as("common practice").isCloseTo(0.15, within(0.003));
    double[] variations = IntStream.range(0, draws.count()).mapToDouble(draws::variation).toArray();
    java.util.Arrays.sort(variations);
    assertThat(variations[draws.count() / 2]).isCloseTo(0.46, within(0.002));
    double correlation =
        IntStream.range(0, draws.count())
                .mapToDouble(k -> (draws.use(k) - 1) * (draws.salt(k) - 1))
                .average()
                .orElseThrow()
            / (0.457 * 0.15);
    assertThat(correlation).as("drawn apart; 3 standard errors").isCloseTo(0, within(0.022));
  }

  @Test
  void aMeanThatReadingsTellIsDrawnAsNarrowlyAsTheyTellIt() {
    KnownUse known = new KnownUse(Volume.ofGallons(141), 0.06);
    Draws read = new Draws(new HomeLoad(home(false).withKnownUse(known)), 20_000, 1);
    Draws billed = new Draws(new HomeLoad(home(true)), 20_000, 1);

    assertThat(deviation(read, read::use)).isCloseTo(0.06, within(0.002));
    assertThat(deviation(billed, billed::use))
        .as("common practice with a bill")
        .isCloseTo(0.10, within(0.003));
  }

  private static double mean(Draws draws, java.util.function.IntToDoubleFunction of) {
    return IntStream.range(0, draws.count()).mapToDouble(of).average().orElseThrow();
  }

  private static double deviation(Draws draws, java.util.function.IntToDoubleFunction of) {
    double mean = mean(draws, of);
    return Math.sqrt(mean(draws, k -> (of.applyAsDouble(k) - mean) * (of.applyAsDouble(k) - mean)));
  }

  @Test
  void whatIsLevelCountsAsBest() {
    Comparison comparison =
        compare(
            home(false),
            offer("a", 1.5, 9_000, Control.METERED_AT_NIGHT),
            offer("b", 1.5, 9_100, Control.METERED_AT_NIGHT));

    assertThat(percent(comparison, "b")).as("1 % dearer in every draw").isEqualTo(100);
  }

  /** A delayed meter waits (1 + CV²) ÷ 2 of a day on average. Source: renewal theory. */
  @Test
  void daysThatStrayMoreMakeADelayedMeterWaitLonger() {
    Comparison comparison = compare(home(false), offer("u", 1.5, 2_000, Control.METERED_AT_NIGHT));
    Candidate candidate = comparison.recommended().orElseThrow();
    DrawnCost cost = DrawnCost.of(candidate, new Draws(candidate.design().home(), 10, 1));
    double usual = candidate.design().home().variation().coefficient();
    double days = candidate.design().year().orElseThrow().daysBetween();

    assertThat(cost.oftener(1, usual)).isCloseTo(1, within(1e-9));
    assertThat(cost.oftener(1, 0.9))
        .isCloseTo(days / (days + (0.9 * 0.9 - usual * usual) / 2), within(1e-9));
  }
}
