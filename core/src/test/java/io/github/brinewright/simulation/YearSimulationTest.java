package io.github.brinewright.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.softener.Control;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class YearSimulationTest {
  private static final DailyVariation INDEPENDENT =
      new DailyVariation(0.461, 0, DailyVariation.NONE.weekdays());
  private static final double MEAN = 100;
  private static final long SEED = 7;

  private static BedSettings bed(Control control, double capacity, double set, int days) {
    return new BedSettings(
        control,
        Volume.ofGallons(capacity),
        Volume.ofGallons(set),
        days,
        control == Control.WEEKDAYS ? Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY) : Set.of(),
        Mass.ofPounds(6),
        Volume.ofGallons(60),
        1.25);
  }

  private static DemandModel demand(DailyVariation variation) {
    return new DemandModel(Volume.ofGallons(MEAN), variation, YearDays.ALWAYS_AT_HOME);
  }

  private static SimulatedYears run(DailyVariation variation, int years, BedSettings bed) {
    return new YearSimulation(demand(variation), years, SEED).run(List.of(bed)).get(0);
  }

  @Property(tries = 30)
  void theDaysOfAYearAddUpToTheYear(
      @ForAll Control control,
      @ForAll @DoubleRange(min = 150, max = 1_500) double capacity,
      @ForAll @IntRange(min = 1, max = 14) int days) {
    BedSettings bed = bed(control, capacity, 0.8 * capacity, days);
    YearSimulation simulation = new YearSimulation(demand(INDEPENDENT), 9, SEED);
    SimulatedYears outcome = simulation.run(List.of(bed)).get(0);

    for (int year = 0; year < 9; year++) {
      int[] counts = simulation.regenerations(List.of(bed), year).get(0);
      assertThat(counts).hasSize(365);
      assertThat(IntStream.of(counts).sum()).isEqualTo(outcome.regenerationsOf(year));
    }
  }

  @Test
  void theTypicalYearHasTheMiddleNumberOfRegenerations() {
    BedSettings bed = bed(Control.METERED_AT_NIGHT, 800, 650, 14);
    YearSimulation simulation = new YearSimulation(demand(INDEPENDENT), 101, SEED);
    List<SimulatedYears> outcomes = simulation.run(List.of(bed));
    TypicalYear year = TypicalYear.of(simulation, outcomes, Control.METERED_AT_NIGHT);

    int middle =
        IntStream.range(0, 101)
            .map(outcomes.get(0)::regenerationsOf)
            .sorted()
            .skip(50)
            .findFirst()
            .orElseThrow();
    assertThat(year.total(Control.METERED_AT_NIGHT)).isEqualTo(middle);
    assertThat(year.byMonth(Control.METERED_AT_NIGHT))
        .hasSize(12)
        .satisfies(months -> assertThat(months.stream().mapToInt(m -> m).sum()).isEqualTo(middle));
  }

  @Test
  void anotherBedMeetsTheDaysOfTheTypicalYear() {
    BedSettings meter = bed(Control.METERED_AT_NIGHT, 800, 650, 14);
    BedSettings clock = bed(Control.CLOCK, 800, 800, 5);
    YearSimulation simulation = new YearSimulation(demand(INDEPENDENT), 101, SEED);
    List<SimulatedYears> outcomes = simulation.run(List.of(meter, clock));
    TypicalYear year = TypicalYear.of(simulation, outcomes, Control.METERED_AT_NIGHT);

    assertThat(year.regenerations(meter))
        .isEqualTo(year.regenerations().get(Control.METERED_AT_NIGHT));
    assertThat(year.regenerations(clock)).isEqualTo(year.regenerations().get(Control.CLOCK));
    assertThat(TypicalYear.byMonth(year.regenerations(clock)))
        .isEqualTo(year.byMonth(Control.CLOCK));
  }

  @Test
  void constantUseFollowsTheClosedForms() {
    SimulatedYears clock = run(DailyVariation.NONE, 50, bed(Control.CLOCK, 1_000, 1_000, 5));
    assertThat(clock.regenerations().mean()).isCloseTo(365.0 / 5, within(0.2));
    assertThat(clock.unusedShare()).as("half the bed unused").isCloseTo(0.5, within(0.01));
    assertThat(clock.hardDays().mean()).isZero();

    SimulatedYears delayed =
        run(DailyVariation.NONE, 50, bed(Control.METERED_AT_NIGHT, 800, 650, 14));
    assertThat(delayed.regenerations().mean())
        .as("every 7 days: 650 gal are reached on the seventh; 50 places in the interval")
        .isCloseTo(365.0 / 7, within(0.1));

    SimulatedYears immediate =
        run(DailyVariation.NONE, 50, bed(Control.METERED_AT_ONCE, 650, 650, 14));
    double hardDuringCycle = immediate.cycleGallons().mean() / immediate.regenerations().mean();
    assertThat(immediate.regenerations().mean())
        .isCloseTo(365 * MEAN / (650 + hardDuringCycle), within(0.1));
    assertThat(immediate.unusedShare()).isCloseTo(0, within(1e-9));
  }

  @Test
  void whatPassesDuringARegenerationDueByDaysIsNotSoftenedToo() {
    SimulatedYears due =
        run(DailyVariation.NONE, 50, bed(Control.METERED_AT_ONCE, 5_000, 5_000, 7));
    double softened =
        due.regenerations().mean() * due.bed().capacity().gallons() * (1 - due.unusedShare());

    assertThat(softened + due.cycleGallons().mean())
        .as("all water is either softened or not; a week more or less at the ends of the year")
        .isCloseTo(365 * MEAN, within(0.002 * 365 * MEAN));
  }

  @Test
  void yearsBeginAtAllPointsOfAClocksInterval() {
    int years = 400;
    for (int days = 1; days <= 14; days++) {
      SimulatedYears clock =
          run(DailyVariation.USUAL, years, bed(Control.CLOCK, 2_000, 2_000, days));

      assertThat(clock.regenerations().mean())
          .as(
              "every %d days; evenly spread points leave an error of a few per %d years",
              days, years)
          .isCloseTo(365.0 / days, within(5.0 / years));
    }
  }

  @Test
  void aClockThatIsSetTooLongRunsOutEachTime() {
    SimulatedYears clock = run(DailyVariation.NONE, 20, bed(Control.CLOCK, 450, 450, 5));

    assertThat(clock.hardDays().mean()).as("one day in five").isCloseTo(73, within(0.5));
    assertThat(clock.hardGallons().mean()).isCloseTo(73 * 50, within(80.0));
    assertThat(clock.runOutShare()).isCloseTo(1, within(0.02));
  }

  @Test
  void theMeanIntervalAgreesWithRenewalTheory() {
    int years = 2_000;
    SimulatedYears outcome = run(INDEPENDENT, years, bed(Control.METERED_AT_NIGHT, 2_000, 800, 14));
    double expectedDays = 8 + INDEPENDENT.meanExcess();
    double intervals = outcome.regenerations().mean() * years;
    double spreadOfInterval = 0.461 * Math.sqrt(8.6);
    double samplingError = spreadOfInterval / Math.sqrt(intervals);

    assertThat(365 / outcome.regenerations().mean())
        .as("Cox, Renewal Theory (1962); four standard errors")
        .isCloseTo(expectedDays, within(4 * samplingError + 0.01));
  }

  @Test
  void theBedRunsOutAsOftenAsTheRiskItsReserveWasChosenFor() {
    for (double risk : new double[] {0.02, 0.05, 0.2}) {
      double reserve = MEAN * INDEPENDENT.reserveForRisk(risk);
      int years = 2_000;
      SimulatedYears outcome =
          run(INDEPENDENT, years, bed(Control.METERED_AT_NIGHT, 800 + reserve, 800, 60));
      double regenerations = outcome.regenerations().mean() * years;
      double samplingError = Math.sqrt(risk * (1 - risk) / regenerations);

      assertThat(outcome.runOutShare())
          .as("risk " + risk + " over " + regenerations + " regenerations; the tables add 0.0005")
          .isCloseTo(risk, within(4 * samplingError + 0.0005));
    }
  }

  @Test
  void theClosedFormForAClockAgreesWithTheSimulation() {
    for (double capacity : new double[] {520, 600, 700}) {
      double share = INDEPENDENT.totalBeyond(5, capacity / MEAN);
      int years = 1_000;
      SimulatedYears outcome = run(INDEPENDENT, years, bed(Control.CLOCK, capacity, capacity, 5));
      double samplingError = Math.sqrt(share * (1 - share) / (73.0 * years));

      assertThat(outcome.runOutShare())
          .as("capacity " + capacity + "; 1.4 % of a day's use passes hard while it regenerates")
          .isCloseTo(share, within(4 * samplingError + 0.01));
    }
  }

  @Property(tries = 200)
  void theBooksBalance(
      @ForAll @DoubleRange(min = 100, max = 3_000) double capacity,
      @ForAll @DoubleRange(min = 0.1, max = 1) double setShare,
      @ForAll @IntRange(min = 1, max = 14) int days,
      @ForAll Control control) {
    SimulatedYears outcome =
        run(DailyVariation.USUAL, 3, bed(control, capacity, capacity * setShare, days));

    assertThat(outcome.imbalanceGallons()).isCloseTo(0, within(1e-6));
    assertThat(outcome.unusedShare()).isBetween(0.0, 1.0);
  }

  @Test
  void theSameSeedGivesTheSameYearsOnAnyNumberOfThreads() throws Exception {
    BedSettings bed = bed(Control.METERED_AT_NIGHT, 1_000, 850, 14);
    SimulatedYears many = run(DailyVariation.USUAL, 300, bed);
    ForkJoinPool one = new ForkJoinPool(1);
    try {
      SimulatedYears single = one.submit(() -> run(DailyVariation.USUAL, 300, bed)).get();
      assertThat(single.regenerations()).isEqualTo(many.regenerations());
      assertThat(single.hardGallons()).isEqualTo(many.hardGallons());
    } finally {
      one.shutdown();
    }
  }

  @Test
  void theResultOfASeedDoesNotDrift() {
    SimulatedYears outcome =
        run(DailyVariation.USUAL, 200, bed(Control.METERED_AT_NIGHT, 1_000, 850, 14));

    assertThat(outcome.regenerations().mean())
        .as("own number, kept so that a change of results is seen")
        .isCloseTo(REGENERATIONS_OF_SEED_7, within(1e-9));
  }

  private static final double REGENERATIONS_OF_SEED_7 = 40.04;

  @Test
  void allBedsMeetTheSameDays() {
    BedSettings bed = bed(Control.METERED_AT_NIGHT, 1_000, 850, 14);
    List<SimulatedYears> twins =
        new YearSimulation(demand(DailyVariation.USUAL), 50, SEED).run(List.of(bed, bed));

    assertThat(twins.get(0).hardGallons()).isEqualTo(twins.get(1).hardGallons());
  }

  @Test
  void holidaysSaveAMeterSaltButNotAClock() {
    DemandModel away =
        new DemandModel(Volume.ofGallons(MEAN), DailyVariation.USUAL, new YearDays(60, 0, 1));
    List<BedSettings> beds =
        List.of(bed(Control.CLOCK, 1_000, 1_000, 5), bed(Control.METERED_AT_NIGHT, 1_000, 600, 14));
    List<SimulatedYears> home =
        new YearSimulation(demand(DailyVariation.USUAL), 300, SEED).run(beds);
    List<SimulatedYears> gone = new YearSimulation(away, 300, SEED).run(beds);

    assertThat(gone.get(0).salt()).isEqualTo(home.get(0).salt());
    assertThat(gone.get(1).salt()).isLessThan(home.get(1).salt());
  }

  @Test
  void guestsTakeMoreThanTheBedWasSetFor() {
    DemandModel guests =
        new DemandModel(Volume.ofGallons(MEAN), DailyVariation.USUAL, new YearDays(0, 40, 2.5));
    BedSettings clock = bed(Control.CLOCK, 1_000, 1_000, 7);

    assertThat(hardDays(guests, clock))
        .isGreaterThan(hardDays(demand(DailyVariation.USUAL), clock) + 5);
  }

  private static double hardDays(DemandModel model, BedSettings bed) {
    return new YearSimulation(model, 300, SEED).run(List.of(bed)).get(0).hardDays().mean();
  }

  @Test
  void aWeekdayClockRegeneratesOnItsDays() {
    WeekdayClock clock = WeekdayClock.forGap(3);
    assertThat(clock.days()).hasSize(3);
    assertThat(clock.longestGap()).isEqualTo(3);
    for (int gap = 1; gap <= 7; gap++) {
      assertThat(WeekdayClock.forGap(gap).longestGap()).isLessThanOrEqualTo(gap);
    }
    assertThatThrownBy(() -> new WeekdayClock(Set.of())).hasMessageContaining("at least one");

    BedSettings bed = bed(Control.CLOCK, 1_000, 1_000, 5).onWeekdays(clock.days());
    SimulatedYears outcome = run(DailyVariation.USUAL, 50, bed);
    assertThat(outcome.regenerations().mean()).isCloseTo(365 * 3 / 7.0, within(1.0));
    assertThat(outcome.longestGap().mean()).isEqualTo(3);
  }

  @Test
  void impossibleModelsAreRefused() {
    assertThatThrownBy(() -> new YearSimulation(demand(INDEPENDENT), 0, 1))
        .hasMessageContaining("from 1 to 100000");
    assertThatThrownBy(
            () ->
                new DemandModel(Volume.ofGallons(1), DailyVariation.NONE, new YearDays(301, 0, 1)))
        .hasMessageContaining("days away");
  }

  @Test
  void weekdaysBelongToAClock() {
    BedSettings meter = bed(Control.METERED_AT_NIGHT, 1_000, 850, 14);
    assertThatThrownBy(() -> meter.onWeekdays(Set.of())).hasMessageContaining("at least one");
    assertThatThrownBy(
            () ->
                new BedSettings(
                    Control.METERED_AT_NIGHT,
                    meter.capacity(),
                    meter.set(),
                    7,
                    Set.of(DayOfWeek.MONDAY),
                    meter.salt(),
                    meter.water(),
                    1))
        .hasMessageContaining("a meter takes none");
    assertThat(meter.onWeekdays(Set.of(DayOfWeek.SUNDAY, DayOfWeek.MONDAY)).toString())
        .contains("[MONDAY, SUNDAY]");
  }

  @Test
  void yearsOfOneSimulationAreEqualAndOthersAreRefused() {
    BedSettings bed = bed(Control.CLOCK, 1_000, 1_000, 5);
    SimulatedYears years = run(DailyVariation.USUAL, 20, bed);

    assertThat(run(DailyVariation.USUAL, 20, bed)).isEqualTo(years).hasSameHashCodeAs(years);
    assertThat(run(DailyVariation.USUAL, 21, bed)).isNotEqualTo(years);
    YearSimulation longer = new YearSimulation(demand(DailyVariation.USUAL), 21, SEED);
    assertThatThrownBy(() -> TypicalYear.of(longer, List.of(years), Control.CLOCK))
        .hasMessageContaining("simulated years");
    YearSimulation same = new YearSimulation(demand(DailyVariation.USUAL), 20, SEED);
    assertThatThrownBy(() -> TypicalYear.of(same, List.of(years, years), Control.CLOCK))
        .hasMessageContaining("two of the beds");
  }
}
