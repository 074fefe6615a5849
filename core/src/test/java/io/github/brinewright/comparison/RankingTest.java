package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Reason.Kind;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** One rule of the ranking after the other, on offers made for it. */
class RankingTest {
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);

  private static Site home(double gpg, int people) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg)).build();
    return Site.of("h", water, Household.of(people).bathrooms(1).build())
        .supply(Supply.of(Pressure.ofPsi(60), FlowRate.ofGallonsPerMinute(20)))
        .build();
  }

  private static Offer offer(String id, double cubicFeet, int price, double... pounds) {
    return offer(id, cubicFeet, price, EnumSet.of(Control.METERED_AT_NIGHT), pounds);
  }

  private static Offer offer(
      String id, double cubicFeet, int price, EnumSet<Control> controls, double... pounds) {
    Softener softener =
        Softener.withResin(id, Volume.ofCubicFeet(cubicFeet))
            .dosages(DoubleStream.of(pounds).mapToObj(SaltDosage::ofPoundsPerCubicFoot).toList())
            .controls(controls)
            .build();
    return Offer.of(softener, Money.of(CurrencyUnit.USD, price)).build();
  }

  private static Comparison compare(Site home, Offer... offers) {
    return PriceList.of(List.of(offers)).compare(home, TARIFF);
  }

  private static String recommended(Comparison comparison) {
    return comparison.recommended().orElseThrow().softener().id();
  }

  @Test
  void aBrokenMarginWeighsMoreThanAnyPrice() {
    Comparison comparison =
        compare(home(30, 4), offer("small", 1, 100, 6), offer("large", 2, 4_000, 6));
    Candidate small = candidate(comparison, "small");

    assertThat(small.feasible()).isTrue();
    assertThat(small.marginsBroken()).isNotEmpty();
    assertThat(recommended(comparison)).isEqualTo("large");
    assertThat(comparison.cheapestThatFits()).contains(small);
    assertThat(comparison.marks(small)).containsExactly(Mark.CHEAPEST_THAT_FITS);
    assertThat(comparison.premium().orElseThrow().isPositive()).isTrue();
    Reason why = comparison.whyRecommended().orElseThrow();
    assertThat(why.kind()).isEqualTo(Kind.KEEPS_MARGIN);
    assertThat(why.margin().map(MarginCheck::broken)).contains(true);
    Reason against = comparison.against(small).orElseThrow();
    assertThat(against.kind()).isEqualTo(Kind.CHEAPER_BEYOND_MARGIN);
    assertThat(against.margin()).isEqualTo(why.margin());
  }

  private static Candidate candidate(Comparison comparison, String id) {
    return comparison.candidates().stream()
        .filter(one -> one.softener().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aMarginThatAllBreakPartsNobody() {
    Offer[] offers = {offer("small", 1, 1_000, 6), offer("large", 2, 1_100, 6)};
    Margins beyondReach = Margins.builder().pressureLeft(Pressure.ofPsi(80)).build();
    Comparison usual = compare(home(12, 3), offers);
    Comparison strict =
        PriceList.builder(List.of(offers))
            .margins(beyondReach)
            .build()
            .compare(home(12, 3), TARIFF);

    assertThat(strict.candidates())
        .allMatch(one -> one.margin(Margin.PRESSURE_LEFT).orElseThrow().broken());
    assertThat(strict.marginsGivenUp())
        .extracting(Reason::kind)
        .containsExactly(Kind.NONE_KEEPS_MARGIN);
    assertThat(usual.marginsGivenUp()).isEmpty();
    assertThat(strict.candidates().stream().map(Candidate::setup))
        .containsExactlyElementsOf(usual.candidates().stream().map(Candidate::setup).toList());
  }

  @Test
  void amongLevelCostsTheLowerPriceToBuyWins() {
    Comparison comparison =
        compare(home(20, 3), offer("a", 1.5, 3_020, 6), offer("b", 1.5, 3_000, 6));

    assertThat(recommended(comparison)).isEqualTo("b");
    Reason other = comparison.against(candidate(comparison, "a")).orElseThrow();
    assertThat(other.kind()).isEqualTo(Kind.LEVEL_BUT_DEARER_TO_BUY);
  }

  @Test
  void aTieFallsToTheIdWhateverTheOrderOfThePriceList() {
    Offer a = offer("a", 1.5, 3_000, 6);
    Offer b = offer("b", 1.5, 3_000, 6);

    assertThat(recommended(compare(home(20, 3), a, b))).isEqualTo("a");
    assertThat(recommended(compare(home(20, 3), b, a))).isEqualTo("a");
    assertThat(compare(home(20, 3), b, a).against(candidate(compare(home(20, 3), a, b), "b")))
        .map(Reason::kind)
        .contains(Kind.LEVEL_BUT_LATER_NAME);
  }

  @Test
  void amongLevelOnesOfOnePriceTheNightGoesBeforeTheDay() {
    EnumSet<Control> meters = EnumSet.of(Control.METERED_AT_ONCE, Control.METERED_AT_NIGHT);
    Tariff cheap = TARIFF.toBuilder().salt(BigMoney.parse("USD 0.01")).build();
    Comparison comparison =
        PriceList.of(List.of(offer("a", 2, 9_000, meters, 6))).compare(home(15, 3), cheap);

    assertThat(comparison.candidates()).hasSize(2).allMatch(one -> one.marginsBroken().isEmpty());
    Candidate chosen = comparison.recommended().orElseThrow();
    Candidate other = comparison.candidates().get(1);
    assertThat(chosen.hardWater().orElseThrow().total())
        .isLessThan(other.hardWater().orElseThrow().total());
    assertThat(chosen.setup().control()).isEqualTo(Control.METERED_AT_NIGHT);
    assertThat(comparison.against(other))
        .map(Reason::kind)
        .contains(Kind.LEVEL_BUT_MORE_HARD_WATER);
  }

  @Test
  void aBrokenLimitIsNeverRevived() {
    Comparison comparison = compare(home(100, 10), offer("tiny", 0.5, 10, 6));

    assertThat(comparison.recommended()).isEmpty();
    assertThat(comparison.cheapestThatFits()).isEmpty();
    assertThat(comparison.premium()).isEmpty();
    assertThat(comparison.candidates().get(0).margins()).isEmpty();
    assertThat(comparison.candidates().get(0).hardWater()).isEmpty();
    assertThat(comparison.marks(comparison.candidates().get(0))).isEmpty();
  }

  @Test
  void theGridHoldsEachCandidateOnceByVolumeAndDosage() {
    EnumSet<Control> both = EnumSet.of(Control.CLOCK, Control.METERED_AT_NIGHT);
    Comparison comparison =
        compare(
            home(20, 3),
            offer("b", 2, 2_000, both, 10, 6),
            offer("a", 1, 1_500, both, 4, 6),
            Offer.of(
                    Softener.withRating(
                            "r", io.github.brinewright.quantity.HardnessAmount.ofGrains(48_000))
                        .build(),
                    Money.parse("USD 1200"))
                .build());
    Grid grid = comparison.grid(Control.METERED_AT_NIGHT);

    assertThat(grid.dosages())
        .extracting(SaltDosage::poundsPerCubicFoot)
        .containsExactly(4.0, 6.0, 10.0);
    assertThat(grid.rows()).extracting(row -> row.softener().id()).containsExactly("a", "r", "b");
    Grid.Row row = grid.rows().get(0);
    assertThat(row.cells()).extracting(Optional::isPresent).containsExactly(true, true, false);
    assertThat(grid.rows().get(1).byRating()).isPresent();
    assertThat(comparison.grids().stream().flatMap(Grid::all))
        .containsExactlyInAnyOrderElementsOf(comparison.candidates());
    assertThat(Stream.of(Control.values()).map(comparison::grid).filter(Grid::isEmpty))
        .extracting(Grid::control)
        .containsExactly(Control.WEEKDAYS, Control.METERED_AT_ONCE);
    assertThat(comparison.grids().get(0).control())
        .isEqualTo(comparison.recommended().orElseThrow().setup().control());
    assertThat(comparison.acrossBases()).map(Reason::kind).contains(Kind.ACROSS_BASES);
  }
}
