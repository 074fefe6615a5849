package io.github.brinewright.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Which figure sizes a home and which tells its year. */
class DailyUseTest {
  /** Factors are printed and used with two decimals. */
  private static final double NINE_OF_TEN = 1.63;

  private static final DailyVariation USUAL = DailyVariation.USUAL;

  private static DailyUse of(Household.Builder household) {
    return new DailyUse(household.build(), DailyVariation.USUAL, OptionalDouble.empty());
  }

  private static HomeLoad home(Household.Builder household) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(15)).build();
    return new HomeLoad(Site.of("h", water, household.build()).build());
  }

  private static double typical(int people) {
    return 0.78 * (37.2 * people + 69.2);
  }

  @Test
  void theAllowanceSizesAHomeWhereItCoversThreeDaysOfFour() {
    Map<Integer, Double> covered = Map.of(2, 0.793, 3, 0.894, 4, 0.934, 7, 0.972);
    covered.forEach(
        (people, share) -> {
          DailyUse use = of(Household.of(people));
          assertThat(use.designBasis()).isEqualTo(UseBasis.PER_HEAD);
          assertThat(use.design().gallons()).isEqualTo(75.0 * people);
          assertThat(use.expected().gallons()).isCloseTo(typical(people), within(1e-9));
          assertThat(use.coverage())
              .as("gamma, scipy at 0.46; %d people", people)
              .isCloseTo(share, within(0.001));
        });
  }

  @Test
  void theDayThatNineOfTenStayBelowTakesThePlaceOfAnAllowanceThatIsTooLow() {
    DailyUse one = of(Household.of(1));
    assertThat(one.designBasis())
        .as("75 gal cover 48 % of days")
        .isEqualTo(UseBasis.NINE_DAYS_IN_TEN);
    assertThat(one.design().gallons()).isCloseTo(NINE_OF_TEN * typical(1), within(1e-9));
    assertThat(one.coverage()).isCloseTo(0.90, within(0.02));

    DailyUse lean = of(Household.of(4).perPersonDaily(Volume.ofGallons(40)));
    assertThat(lean.designBasis()).isEqualTo(UseBasis.NINE_DAYS_IN_TEN);

    DailyUse guests = of(Household.of(2).guests(6, 200));
    assertThat(guests.designBasis())
        .as("150 gal are too little where eight people stay on most days")
        .isEqualTo(UseBasis.NINE_DAYS_IN_TEN);
    assertThat(guests.coverage()).isGreaterThan(0.85);
  }

  @Test
  void aBillSizesOnItsOwnMean() {
    DailyUse use = of(Household.of(3).bill(new Bill(Volume.ofGallons(12_000), 60)));
    assertThat(use.expected().gallons()).isCloseTo(200, within(1e-9));
    assertThat(use.design().gallons()).isCloseTo(NINE_OF_TEN * 200, within(1e-9));
    assertThat(use.designBasis()).isEqualTo(UseBasis.BILL);
    assertThat(use.likely().uncertain()).isEqualTo(UncertainMean.WITH_BILL);
    assertThat(use.deviationsAboveUsual())
        .as("200 beside 141 gal, one deviation is 0.457 of the mean")
        .isCloseTo((200 / typical(3) - 1) / 0.457, within(1e-9));
  }

  @Test
  void readingsTakeThePlaceOfBillAndStatisticsAndAreAsSureAsTheySay() {
    KnownUse known = new KnownUse(Volume.ofGallons(170), 0.06);
    Bill bill = new Bill(Volume.ofGallons(12_000), 60);
    DailyUse use = of(Household.of(3).bill(bill).knownUse(known));

    assertThat(use.expected()).isEqualTo(known.mean());
    assertThat(use.expectedBasis()).isEqualTo(UseBasis.READINGS);
    assertThat(use.designBasis()).isEqualTo(UseBasis.READINGS);
    assertThat(use.likely().uncertain()).isEqualTo(new UncertainMean(0.06));
    assertThat(use.design().ratioTo(use.expected()))
        .as("of a gamma day, scipy at 0.461: 1.616; a little more for a mean not quite known")
        .isBetween(1.61, NINE_OF_TEN)
        .isCloseTo(
            new LikelyUse(USUAL, new UncertainMean(0.06), YearDays.ALWAYS_AT_HOME).factor(1, 0.9),
            within(1e-12));
    assertThat(use.deviationsAboveUsual()).isCloseTo((170 / typical(3) - 1) / 0.457, within(1e-9));
  }

  @Test
  void guestsCountAsMuchAfterReadingsAsBeforeThem() {
    KnownUse known = new KnownUse(Volume.ofGallons(170), 0.06);
    assertThat(of(Household.of(3).guests(2, 30).knownUse(known)).days())
        .isEqualTo(of(Household.of(3).guests(2, 30)).days());
  }

  @Test
  void otherPeopleUseAKnownUseInProportion() {
    Household three = Household.of(3).knownUse(new KnownUse(Volume.ofGallons(180), 0.06)).build();
    assertThat(three.withPeople(4).knownUse()).contains(new KnownUse(Volume.ofGallons(240), 0.06));
    assertThat(three.withPeople(3)).isEqualTo(three);
  }

  @Test
  void aDealerMayChooseTheShareOfDaysForAll() {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(15)).build();
    Site site = Site.of("h", water, Household.of(3).build()).build();
    DailyUse use = HomeLoad.coveringShare(site, 0.9).use();

    assertThat(use.design().gallons())
        .as("1.85 × the statistical mean")
        .isCloseTo(1.85 * typical(3), within(1e-9));
    assertThat(use.designBasis()).isEqualTo(UseBasis.CHOSEN_SHARE);
  }

  @Test
  void moreThanAHouseholdIsSizedFullAndReckonedAtSixTenths() {
    HomeLoad guestHouse = home(Household.of(20));
    assertThat(guestHouse.use().design().gallons()).isEqualTo(1_500);
    assertThat(guestHouse.use().expected().gallons()).isCloseTo(900, within(1e-9));
    assertThat(guestHouse.use().expectedBasis()).isEqualTo(UseBasis.OCCUPANCY);
    assertThat(guestHouse.variation().coefficient())
        .as("√(0.3² + 0.461² ÷ 8)")
        .isCloseTo(Math.sqrt(0.09 + 0.461 * 0.461 / 8), within(1e-12));
    assertThat(home(Household.of(8)).variation()).isEqualTo(DailyVariation.USUAL);
  }

  @Test
  void guestsAndDaysAwayAreInTheMeanOfTheYearAndDaysAwayNotInTheDesign() {
    DailyUse plain = of(Household.of(3));
    DailyUse away = of(Household.of(3).away(73));
    DailyUse guests = of(Household.of(3).guests(3, 73));

    assertThat(plain.meanOfYear()).isEqualTo(plain.expected());
    assertThat(away.meanOfYear().ratioTo(plain.expected()))
        .as("a fifth of the year at 2 %")
        .isCloseTo(0.8 + 0.2 * 0.02, within(1e-12));
    assertThat(away.design()).isEqualTo(plain.design());
    assertThat(guests.meanOfYear().ratioTo(plain.expected()))
        .as("a fifth of the year as six people")
        .isCloseTo(0.8 + 0.2 * typical(6) / typical(3), within(1e-12));
  }

  @Test
  void morePeopleNeverUseLess() {
    UnaryOperator<Household.Builder> plain = household -> household;
    neverLess(plain);
    neverLess(household -> household.guests(6, 120).away(20));
  }

  private static void neverLess(UnaryOperator<Household.Builder> more) {
    DailyUse before = of(more.apply(Household.of(1)));
    for (int people = 2; people <= 40; people++) {
      DailyUse use = of(more.apply(Household.of(people)));
      assertThat(use.expected()).isGreaterThanOrEqualTo(before.expected());
      assertThat(use.meanOfYear()).isGreaterThanOrEqualTo(before.meanOfYear());
      before = use;
    }
  }
}
