package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What follows from what a visit finds, by closed forms where there are some. */
class FoundSoftenerTest {
  private static final double ROUND_OFF = 1e-6;
  private static final double FACTOR = 0.9;

  /** 3 people and 20 gpg: 225 gal and 4,500 grains on the day to size on. */
  private static final HomeLoad HOME = new HomeLoad(Homes.site(20, Household.of(3)).build());

  private static PresentSoftener.Builder clock(int days) {
    return PresentSoftener.of(PresentControl.clock(days));
  }

  private static PresentSoftener.Builder foot(int days) {
    return clock(days).resinVolume(Volume.ofCubicFeet(1)).ageYears(0);
  }

  private static FoundSoftener found(PresentSoftener.Builder present) {
    return FoundSoftener.of(present.build(), HOME);
  }

  private static PresentSalt each(double pounds) {
    return new PresentSalt.EachTime(Mass.ofPounds(pounds));
  }

  private static double usable(PresentSoftener.Builder present) {
    return found(present).usable().grains();
  }

  private static List<AssumptionKind> assumed(PresentSoftener.Builder present) {
    return found(present).assumptions().stream().map(Assumption::kind).toList();
  }

  /** Common practice: 32,000 rated grains a cubic foot. */
  @Test
  void aRatingAloneTellsTheBed() {
    FoundSoftener found = found(clock(5).rated(HardnessAmount.ofGrains(48_000)));

    assertThat(found.resinVolume().cubicFeet()).isCloseTo(1.5, within(ROUND_OFF));
    assertThat(found.assumptions().get(0).kind()).isEqualTo(AssumptionKind.BED_FROM_RATING);
  }

  @ParameterizedTest
  @CsvSource({
    "9, 48, 1",
    "10, 54, 1.5",
    "12, 52, 2",
    "13, 54, 2.5",
    "14, 65, 3",
    "9.2, 47, 1",
    "20, 65, 6.25"
  })
  void aVesselAloneTellsTheBed(double diameter, double height, double cubicFeet) {
    Vessel vessel = new Vessel(Length.ofInches(diameter), Length.ofInches(height));

    assertThat(found(clock(5).vessel(vessel)).resinVolume().cubicFeet())
        .isCloseTo(cubicFeet, within(ROUND_OFF));
    assertThat(assumed(clock(5).vessel(vessel))).contains(AssumptionKind.BED_FROM_VESSEL);
  }

  /** Training slides: 10,286 ln(6) + 1,326.3 = 19,756 grains for a cubic foot. */
  @Test
  void theSaltAndTheCurveTellWhatTheBedHolds() {
    assertThat(usable(foot(5).salt(each(6)))).isCloseTo(FACTOR * 19_756, within(0.5));
    assertThat(usable(foot(5).salt(each(6)).resin(ShippedResins.FINE_MESH)))
        .isGreaterThan(usable(foot(5).salt(each(6))));
  }

  /** Michaud, WC&P 2023: less below 50 °F; 0.875 of it at 45 °F. */
  @Test
  void coldWaterTakesItsShare() {
    WaterAnalysis.Builder cold =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(20))
            .temperature(Temperature.ofFahrenheit(45));
    HomeLoad home = new HomeLoad(Homes.site(cold, Household.of(3)).build());
    FoundSoftener found = FoundSoftener.of(foot(5).salt(each(6)).build(), home);

    assertThat(found.usable().grains()).isCloseTo(0.875 * FACTOR * 19_756, within(0.5));
  }

  /** UFC 3-240-13FN: 1 to 5 % a year. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 5, 10})
  void everyYearTakesOneToFivePercent(int years) {
    PresentSoftener.Builder present = foot(5).salt(each(6)).ageYears(years);
    Range<HardnessAmount> range = found(present).usableRange();
    double fresh = FACTOR * 19_756;

    assertThat(range.high().grains()).isCloseTo(fresh * Math.pow(0.99, years), within(1.0));
    assertThat(range.low().grains()).isCloseTo(fresh * Math.pow(0.95, years), within(1.0));
    assertThat(usable(present)).isCloseTo(fresh * Math.pow(0.97, years), within(1.0));
  }

  @Test
  void anOldBedStillHoldsMoreThanHalf() {
    assertThat(usable(foot(5).salt(each(6)).ageYears(60)))
        .isCloseTo(FACTOR * 19_756 * 0.56, within(1.0));
  }

  /** Beyond 20 lb the slides say nothing. */
  @Test
  void moreSaltThanTheCurveKnowsGivesWhatItsEndGives() {
    assertThat(usable(foot(5).salt(each(30)))).isEqualTo(usable(foot(5).salt(each(20))));
    assertThat(assumed(foot(5).salt(each(30)))).contains(AssumptionKind.DOSAGE_OUTSIDE_CURVE);
    assertThat(assumed(foot(5).salt(each(20)))).doesNotContain(AssumptionKind.DOSAGE_OUTSIDE_CURVE);
  }

  /** Its lower end is 3 lb: 12,627 grains; 1.5 lb restore half of that, or 5,994 a pound. */
  @Test
  void lessSaltThanTheCurveKnowsGivesARange() {
    Range<HardnessAmount> range = found(foot(5).salt(each(1.5))).usableRange();
    double limit = CapacityCurve.CHEMICAL_LIMIT.grainsPerPound() * 1.5;

    assertThat(range.low().grains()).isCloseTo(FACTOR * 12_627 / 2, within(1.0));
    assertThat(range.high().grains()).isCloseTo(FACTOR * limit, within(1.0));
  }

  /** 6 to 14 lb, common practice; 10 in the middle. */
  @Test
  void unknownSaltGivesARange() {
    Range<HardnessAmount> range = found(foot(5)).usableRange();

    assertThat(range.low().grains()).isCloseTo(FACTOR * 19_756, within(1.0));
    assertThat(range.high().grains())
        .isCloseTo(FACTOR * (10_286 * Math.log(14) + 1_326.3), within(1.0));
    assertThat(found(foot(5)).dosage().poundsPerCubicFoot()).isCloseTo(10, within(ROUND_OFF));
    assertThat(found(foot(5)).saltKnown()).isFalse();
  }

  /** 365 ÷ 5 = 73 regenerations. */
  @Test
  void whatIsBoughtTellsTheSaltOfAClock() {
    FoundSoftener found = found(foot(5).saltBought(Mass.ofPounds(730)));

    assertThat(found.saltPerRegeneration().pounds()).isCloseTo(10, within(ROUND_OFF));
    assertThat(found.saltKnown()).isTrue();
    assertThat(yearsOf(found.settings(), HOME).salt().pounds()).isCloseTo(730, within(10.0));
  }

  @Test
  void whatIsBoughtTellsTheSaltOfWeekdays() {
    PresentSoftener.Builder twice =
        PresentSoftener.of(
                PresentControl.weekdays(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY)))
            .resinVolume(Volume.ofCubicFeet(1))
            .saltBought(Mass.ofPounds(730));

    assertThat(found(twice).saltPerRegeneration().pounds())
        .isCloseTo(730 / (365.0 / 7 * 2), within(ROUND_OFF));
  }

  /** Renewal theory without what meets a regeneration: within 5 % of the days that are run. */
  @ParameterizedTest
  @ValueSource(doubles = {200, 600, 900, 2_500})
  void whatIsBoughtTellsTheSaltOfAMeter(double gallons) {
    for (boolean atOnce : new boolean[] {true, false}) {
      PresentSoftener.Builder meter =
          PresentSoftener.of(
                  new PresentControl.ByVolume(
                      Volume.ofGallons(gallons), atOnce, Optional.empty(), Optional.of(14)))
              .resinVolume(Volume.ofCubicFeet(2))
              .saltBought(Mass.ofPounds(400));

      assertThat(yearsOf(found(meter).settings(), HOME).salt().pounds())
          .as("%s gal, at once: %s", gallons, atOnce)
          .isCloseTo(400, within(20.0));
    }
  }

  private static SimulatedYears yearsOf(BedSettings bed, HomeLoad home) {
    return new YearSimulation(DemandModel.of(home), 100, 1).run(List.of(bed)).get(0);
  }

  /** Two minutes at 0.5 gpm are a gallon: 3 lb by common practice. */
  @Test
  void minutesAndFlowTellTheSalt() {
    PresentSalt refill =
        new PresentSalt.Refill(
            Minutes.toDuration(4), Optional.of(FlowRate.ofGallonsPerMinute(0.5)));
    PresentSalt unread = new PresentSalt.Refill(Minutes.toDuration(4), Optional.empty());

    assertThat(found(foot(5).salt(refill)).saltPerRegeneration().pounds())
        .isCloseTo(6, within(ROUND_OFF));
    assertThat(assumed(foot(5).salt(refill))).doesNotContain(AssumptionKind.REFILL_FLOW_USUAL);
    assertThat(found(foot(5).salt(unread)).saltPerRegeneration().pounds())
        .isCloseTo(6, within(ROUND_OFF));
    assertThat(assumed(foot(5).salt(unread))).contains(AssumptionKind.REFILL_FLOW_USUAL);
  }

  /** 1.2756 lb of potassium chloride for a pound of sodium chloride [K-01]. */
  @Test
  void potassiumRestoresLessForItsMass() {
    PresentSoftener.Builder potassium =
        foot(5).salt(each(7.6536)).regenerant(Regenerant.POTASSIUM_CHLORIDE);

    assertThat(found(potassium).dosage().poundsPerCubicFoot()).isCloseTo(6, within(0.001));
    assertThat(
            found(foot(5).salt(dosed(6)).regenerant(Regenerant.POTASSIUM_CHLORIDE))
                .saltPerRegeneration()
                .pounds())
        .isCloseTo(7.6536, within(0.001));
  }

  private static PresentSalt dosed(double pounds) {
    return new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(pounds));
  }

  /** 889 gal of 20 gpg; told the hardness alone, it keeps a day of 225 gal. */
  @Test
  void aCapacityThatNobodyReadIsBlamedForNothing() {
    PresentSoftener.Builder night = told(20, false).salt(each(6));
    PresentSoftener.Builder atOnce = told(20, true).salt(each(6));

    assertThat(found(night).startsAfter().orElseThrow().gallons())
        .isCloseTo(FACTOR * 19_756 / 20 - 225, within(0.1));
    assertThat(found(atOnce).startsAfter().orElseThrow().gallons())
        .isCloseTo(FACTOR * 19_756 / 20, within(0.1));
    assertThat(assumed(night)).contains(AssumptionKind.METER_CAPACITY);
  }

  private static PresentSoftener.Builder told(double gpg, boolean atOnce) {
    return PresentSoftener.of(
            new PresentControl.ByHardness(
                Hardness.ofGrainsPerGallon(gpg),
                Optional.empty(),
                atOnce,
                Optional.empty(),
                Optional.empty()))
        .resinVolume(Volume.ofCubicFeet(1))
        .ageYears(0);
  }

  @Test
  void aMeterStartsAtItsCapacityByItsHardnessLessItsReserve() {
    PresentControl told =
        new PresentControl.ByHardness(
            Hardness.ofGrainsPerGallon(25),
            Optional.of(HardnessAmount.ofGrains(20_000)),
            false,
            Optional.of(Volume.ofGallons(150)),
            Optional.of(10));
    FoundSoftener found = found(PresentSoftener.of(told).resinVolume(Volume.ofCubicFeet(1)));

    assertThat(found.setVolume().orElseThrow().gallons()).isCloseTo(800, within(ROUND_OFF));
    assertThat(found.startsAfter().orElseThrow().gallons()).isCloseTo(650, within(ROUND_OFF));
    assertThat(found.longestDays()).isEqualTo(10);
    assertThat(found.control()).isEqualTo(Control.METERED_AT_NIGHT);
  }

  @Test
  void allThatWasFoundLeavesLittleToAssume() {
    PresentSalt refill =
        new PresentSalt.Refill(
            Minutes.toDuration(4), Optional.of(FlowRate.ofGallonsPerMinute(0.5)));

    assertThat(assumed(foot(5).resin(ShippedResins.STANDARD_GEL).salt(refill).ageYears(4).hour(3)))
        .containsExactly(AssumptionKind.AGE_LOSS, AssumptionKind.CYCLE_USUAL);
  }

  // Use that is the same every day: everything is known in advance.

  private static final HomeLoad STEADY =
      new HomeLoad(Homes.site(20, Household.of(3)).build(), DailyVariation.NONE);

  private static final double DAILY = STEADY.softenedExpected().gallons();

  /** 890 gal a bed, 141 gal a day: of ten days some three and a half run hard. */
  @Test
  void aClockAtSteadyUseRunsDryOnItsDay() {
    BedSettings bed = FoundSoftener.of(foot(10).salt(each(6)).build(), STEADY).settings();
    double holds = FACTOR * 19_756 / 20;
    SimulatedYears years = yearsOf(bed, STEADY);
    double met = years.cycleGallons().mean() / years.regenerations().mean();

    assertThat(bed.capacity().gallons()).isCloseTo(holds, within(0.1));
    assertThat(years.regenerations().mean()).isCloseTo(36.5, within(0.1));
    assertThat(years.salt().pounds()).isCloseTo(365.0 / 10 * 6, within(0.6));
    assertThat(years.hardGallons().mean() / years.regenerations().mean())
        .as("each interval: ten days, less what met the regeneration, less the bed")
        .isCloseTo(10 * DAILY - met - holds, within(0.01 * holds));
  }

  /** 500 gal are reached on the fourth day: a regeneration every four nights. */
  @Test
  void aMeterAtSteadyUseRegeneratesAfterWholeDays() {
    PresentControl control = PresentControl.metered(Volume.ofGallons(500));
    PresentSoftener present =
        PresentSoftener.of(control).resinVolume(Volume.ofCubicFeet(1)).salt(each(6)).build();
    SimulatedYears years = yearsOf(FoundSoftener.of(present, STEADY).settings(), STEADY);

    assertThat(years.regenerations().mean()).isCloseTo(365 / Math.ceil(500 / DAILY), within(0.1));
    assertThat(years.hardGallons().mean()).isZero();
  }

  /** Set to 1,200 gal, of which the bed softens 890; reached on the ninth day. */
  @Test
  void aMeterThatWaitsForTooMuchLetsTheRestPassHard() {
    PresentControl control = PresentControl.metered(Volume.ofGallons(1_200));
    PresentSoftener present =
        PresentSoftener.of(control)
            .resinVolume(Volume.ofCubicFeet(1))
            .ageYears(0)
            .salt(each(6))
            .build();
    SimulatedYears years = yearsOf(FoundSoftener.of(present, STEADY).settings(), STEADY);
    double met = years.cycleGallons().mean() / years.regenerations().mean();
    double days = Math.ceil(1_200 / DAILY);

    assertThat(365 / years.regenerations().mean()).isCloseTo(days, within(0.05));
    assertThat(years.hardGallons().mean() / years.regenerations().mean())
        .isCloseTo(days * DAILY - met - FACTOR * 19_756 / 20, within(2.0));
  }
}
