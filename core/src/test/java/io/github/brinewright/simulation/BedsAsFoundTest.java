package io.github.brinewright.simulation;

import static io.github.brinewright.simulation.RandomBeds.MEAN;
import static io.github.brinewright.simulation.RandomBeds.bed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Beds as somebody set them by guess: on weekdays, at any hour, to more than they hold. */
class BedsAsFoundTest {
  private static final double ROUNDING = 1e-6;
  private static final int FIFTHS = 73;

  private static SimulatedYears constant(int years, BedSettings bed) {
    return run(DailyVariation.NONE, years, bed);
  }

  private static SimulatedYears run(DailyVariation variation, int years, BedSettings bed) {
    DemandModel home = new DemandModel(Volume.ofGallons(MEAN), variation, YearDays.ALWAYS_AT_HOME);
    return new YearSimulation(home, years, 7).run(List.of(bed)).get(0);
  }

  /** Nothing passes during a regeneration; five days go 73 times into a year. */
  private static void everyFiveDays(BedSettings bed, int hardDays, double hardGallons) {
    SimulatedYears years = constant(20, bed);

    assertThat(years.regenerations()).as("%s", bed).isEqualTo(Spread.of(same(FIFTHS)));
    assertThat(years.hardDays()).as("%s", bed).isEqualTo(Spread.of(same(FIFTHS * hardDays)));
    assertThat(years.hardGallons().mean())
        .as("%s", bed)
        .isCloseTo(FIFTHS * hardGallons, within(ROUNDING));
    assertThat(years.runOutShare()).isCloseTo(hardDays > 0 ? 1 : 0, within(0.01));
  }

  private static double[] same(double value) {
    double[] all = new double[20];
    Arrays.fill(all, value);
    return all;
  }

  @Test
  void constantUseFollowsTheClosedForms() {
    everyFiveDays(bed(Control.CLOCK, 5, 5, 5, 0), 0, 0);
    everyFiveDays(bed(Control.CLOCK, 2.5, 2.5, 5, 0), 3, 250);
    everyFiveDays(bed(Control.METERED_AT_NIGHT, 5, 4.5, 14, 0), 0, 0);
    everyFiveDays(bed(Control.METERED_AT_NIGHT, 4.8, 4.5, 14, 0), 1, 20);
  }

  @Test
  void aMeterSetToMoreThanTheBedHoldsLetsTheRestPassHard() {
    everyFiveDays(bed(Control.METERED_AT_NIGHT, 2.5, 4.5, 14, 0), 3, 250);
    everyFiveDays(bed(Control.METERED_AT_NIGHT, 0.5, 5, 14, 0), 5, 450);
  }

  @Test
  void theLongestIntervalEndsTheHardWaterOfAMeterThatNeverReachesItsVolume() {
    everyFiveDays(bed(Control.METERED_AT_NIGHT, 2.5, 1e7, 5, 0), 3, 250);
    everyFiveDays(bed(Control.METERED_AT_ONCE, 2.5, 1e7, 5, 0), 3, 250);
  }

  @Test
  void aMeterAtOnceCountsHardWaterToo() {
    SimulatedYears years = constant(200, bed(Control.METERED_AT_ONCE, 2.5, 5, 14, 0));

    assertThat(years.regenerations().mean()).isCloseTo(FIFTHS, within(0.01));
    assertThat(years.hardGallons().mean())
        .as("half of all water")
        .isCloseTo(365 * MEAN / 2, within(0.1));
    assertThat(years.hardDays().mean())
        .as("two and a half days from any point of a day touch three or four, as often one as both")
        .isCloseTo(FIFTHS * 3.5, within(0.02 * FIFTHS));
  }

  @Test
  void aWeekOfWeekdaysFollowsItsGaps() {
    Set<DayOfWeek> days = EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY);
    SimulatedYears years = constant(7, bed(Control.CLOCK, 3.5, 3.5, 7, 0).onWeekdays(days));

    assertThat(years.regenerations().mean())
        .as("seven years have each weekday 365 times")
        .isCloseTo(2 * 365 / 7.0, within(ROUNDING));
    assertThat(years.hardDays().mean())
        .as("the fourth day of the longer gap")
        .isCloseTo(365 / 7.0, within(ROUNDING));
    assertThat(years.hardGallons().mean()).isCloseTo(50 * 365 / 7.0, within(ROUNDING));
    assertThat(years.longestGap().mean()).isEqualTo(4);
  }

  @Test
  void yearsOfALongIntervalBeginWithDaysAndWaterThatBelongTogether() {
    double expected = 365 * 49 / 99.0;
    for (BedSettings bed :
        List.of(
            bed(Control.CLOCK, 50, 50, 99, 0),
            bed(Control.METERED_AT_NIGHT, 50, 99, 99, 0),
            bed(Control.METERED_AT_NIGHT, 50, 99, 365, 0),
            bed(Control.METERED_AT_NIGHT, 50, 1e7, 99, 0))) {
      SimulatedYears years = constant(400, bed);
      assertThat(years.hardDays().mean())
          .as("49 of 99 days; the places are spread to a few in 400; %s", bed)
          .isCloseTo(expected, within(1.0));
      assertThat(years.longestGap().high()).as("%s", bed).isLessThanOrEqualTo(99);
    }
  }

  @Test
  void aRegenerationAtBreakfastMeetsAsMuchMoreWaterAsTheHourTakes() {
    for (Control control : EnumSet.of(Control.CLOCK, Control.WEEKDAYS, Control.METERED_AT_NIGHT)) {
      BedSettings night = bed(control, 20, 5, 7, 1.25);
      double ratio =
          constant(7, night.withHour(7)).cycleGallons().mean()
              / constant(7, night).cycleGallons().mean();

      assertThat(ratio)
          .as(
              "open meter data: 6.60 %% and a quarter of 5.46 %%, against 0.64 and 0.46 %%; %s",
              control)
          .isCloseTo((6.60 + 5.46 / 4) / (0.64 + 0.46 / 4), within(0.02));
    }
    BedSettings atOnce = bed(Control.METERED_AT_ONCE, 5, 5, 7, 1.25);
    assertThat(constant(7, atOnce.withHour(7)).cycleGallons())
        .isEqualTo(constant(7, atOnce).cycleGallons());
  }

  @Property(tries = 300)
  void everyGallonIsSoftenedOrPassesHard(
      @ForAll Control control,
      @ForAll @DoubleRange(min = 0.2, max = 20) double capacity,
      @ForAll @DoubleRange(min = 0.1, max = 5) double setShare,
      @ForAll @IntRange(min = 1, max = 99) int days,
      @ForAll @IntRange(min = 0, max = 23) int hour,
      @ForAll @Size(min = 1, max = 7) Set<DayOfWeek> weekdays) {
    BedSettings any = bed(control, capacity, capacity * setShare, days, 1.25).withHour(hour);
    BedSettings bed = control == Control.WEEKDAYS ? any.onWeekdays(weekdays) : any;
    DemandModel home = new DemandModel(Volume.ofGallons(MEAN), DailyVariation.USUAL, AWAY);
    YearSimulation simulation = new YearSimulation(home, 3, days);
    SimulatedYears outcome = simulation.run(List.of(bed)).get(0);
    double[] gallons = simulation.days(DailyDraw.of(DailyVariation.USUAL), 1);
    YearCounts counts = new BedRun(bed).beginAt(0.5).run(gallons, 28, 1);
    double passed = counts.softGallons() + counts.hardGallons() + counts.cycleGallons();

    assertThat(outcome.imbalanceGallons()).isCloseTo(0, within(ROUNDING));
    assertThat(outcome.unusedShare()).isBetween(0.0, 1.0);
    assertThat(outcome.hardDays().high()).isLessThanOrEqualTo(365);
    assertThat(passed)
        .as("less what is drawn after a day's end while a meter at once still regenerates")
        .isCloseTo(
            Arrays.stream(gallons).skip(28).sum(),
            within(control == Control.METERED_AT_ONCE ? counts.cycleGallons() : ROUNDING));
  }

  private static final YearDays AWAY = new YearDays(20, 20, 2);

  @Property(tries = 100)
  void aMeterSetHigherLetsMoreHardWaterPass(
      @ForAll boolean atOnce,
      @ForAll @DoubleRange(min = 1, max = 10) double capacity,
      @ForAll @DoubleRange(min = 0.5, max = 3) double setShare) {
    Control control = atOnce ? Control.METERED_AT_ONCE : Control.METERED_AT_NIGHT;
    double set = setShare * capacity;

    assertThat(
            run(DailyVariation.USUAL, 60, bed(control, capacity, set + 1.5, 99, 0))
                .hardGallons()
                .mean())
        .isGreaterThanOrEqualTo(
            run(DailyVariation.USUAL, 60, bed(control, capacity, set, 99, 0)).hardGallons().mean());
  }
}
