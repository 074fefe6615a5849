package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.ColdWater;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The year of a design: closed forms, monotonicity, and the simulation it stands for. */
class DesignYearTest {
  private static final int YEARS = 400;

  private static Design design(HomeLoad home, Softener softener) {
    return Homes.only(new Sizer(home), softener);
  }

  @Test
  void constantUseFollowsTheClosedForms() {
    HomeLoad steady =
        new HomeLoad(
            Homes.site(30, Household.of(3).bill(new Bill(Volume.ofGallons(6_000), 60))).build(),
            DailyVariation.NONE);
    Design clock = design(steady, Homes.bed(1, 8, Control.CLOCK).build());
    double days = clock.schedule().designDays();
    assertThat(clock.year().orElseThrow().regenerations()).isCloseTo(365 / days, within(1e-9));
    assertThat(clock.year().orElseThrow().daysBetween()).isCloseTo(days, within(1e-9));
    assertThat(clock.hardWater().orElseThrow().runOut().gallons()).isZero();

    Design night = design(steady, Homes.bed(1, 8, Control.METERED_AT_NIGHT).build());
    double set = night.schedule().setVolume().orElseThrow().gallons();
    assertThat(night.year().orElseThrow().daysBetween())
        .as("the night after 100 gal a day reach %s gal; tables of a sixteenth of a day", set)
        .isCloseTo(Math.ceil(set / 100), within(0.1));
    assertThat(night.hardWater().orElseThrow().runOutShare()).isZero();
  }

  @Test
  void theForecastIsTheSimulationOfRandomDesigns() {
    SplittableRandom random = new SplittableRandom(11);
    int compared = 0;
    while (compared < 60) {
      Household.Builder household = Household.of(1 + random.nextInt(7));
      if (random.nextBoolean()) {
        household.guests(1 + random.nextInt(3), random.nextInt(30)).away(random.nextInt(30));
      }
      HomeLoad home = new HomeLoad(Homes.site(5 + random.nextInt(25), household).build());
      Control control = Control.values()[random.nextInt(3)];
      double volume = 1 + random.nextInt(4) / 2.0;
      Design design = design(home, Homes.bed(volume, 4 + random.nextInt(10), control).build());
      if (design.feasible()) {
        compared++;
        compare(home, design);
      }
    }
  }

  private static void compare(HomeLoad home, Design design) {
    SimulatedYears years =
        new YearSimulation(DemandModel.of(home), YEARS, 5)
            .run(List.of(design.bed().orElseThrow()))
            .get(0);
    HardWater hard = design.hardWater().orElseThrow();
    double regenerations = design.year().orElseThrow().regenerations();
    double yearlyUse = home.softenedYear().gallons();

    assertThat(years.regenerations().mean())
        .as("2 %% of the forecast near its limits, and sampling; %s", design)
        .isCloseTo(regenerations, within(0.02 * regenerations + 0.3));
    assertThat((years.hardGallons().mean() + years.cycleGallons().mean()) / yearlyUse)
        .as("8 %% of it, 0.04 %% of the year's use and as much for sampling; %s", design)
        .isCloseTo(
            hard.total().gallons() / yearlyUse,
            within(0.0008 + 0.15 * hard.total().gallons() / yearlyUse));
  }

  @Test
  void morePeopleNeverRegenerateLessOften() {
    for (Control control : Control.values()) {
      double before = 0;
      for (int people = 1; people <= 8; people++) {
        Household.Builder household = Household.of(people).guests(4, 60).away(20);
        Design design =
            design(
                new HomeLoad(Homes.site(12, household).build()), Homes.bed(4, 10, control).build());
        double now = design.year().orElseThrow().regenerations();
        assertThat(now).as("%d people, %s", people, control).isGreaterThanOrEqualTo(before - 1e-6);
        before = now;
      }
    }
  }

  @Test
  void moreUseMeansMoreHardWater() {
    HomeLoad home = new HomeLoad(Homes.site(20, Household.of(4)).build());
    Design clock = design(home, Homes.bed(2, 8, Control.CLOCK).build());

    assertThat(clock.hardWaterHigh().orElseThrow().total())
        .isGreaterThan(clock.hardWater().orElseThrow().total());
    assertThat(clock.runOutShare().orElseThrow())
        .as("over all homes more than at the mean, which the bed was sized for")
        .isGreaterThan(clock.hardWater().orElseThrow().runOutShare());
  }

  @Test
  void ironShortensTheLongestIntervalOfEveryControl() {
    for (Control control : Control.values()) {
      double clean = between(0.1, control);
      double iron = between(0.5, control);
      double least = control == Control.WEEKDAYS ? 7 : 10;
      assertThat(clean).as(control.toString()).isBetween(least, 14.0 + 1e-9);
      assertThat(iron).as(control.toString()).isBetween(6.5, 7.0 + 1e-9);
    }
  }

  private static double between(double iron, Control control) {
    WaterAnalysis.Builder water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(4))
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(iron));
    HomeLoad home = new HomeLoad(Homes.site(water, Household.of(2)).build());
    return design(home, Homes.bed(3, 10, control).build()).year().orElseThrow().daysBetween();
  }

  @Test
  void theSmallestOfTheLimitsIsSet() {
    HomeLoad home = new HomeLoad(Homes.site(18, Household.of(3)).build());
    Design design = design(home, Homes.bed(2, 8, Control.CLOCK).build());
    ClockSchedule clock = (ClockSchedule) design.schedule();
    double held = design.usable().ratioTo(home.expectedLoad());

    assertThat(clock.daysAtDesignUse())
        .isEqualTo((int) Math.floor(design.usable().ratioTo(home.dailyLoad())));
    int days = clock.daysWithinMargin();
    assertThat(days * home.use().likely().factor(days, 0.9)).isLessThanOrEqualTo(held);
    assertThat((days + 1) * home.use().likely().factor(days + 1, 0.9)).isGreaterThan(held);
    assertThat(clock.setDays()).isEqualTo(Math.min(clock.daysAtDesignUse(), days));
  }

  @Test
  void aBedThatCannotServeSaysNothingOfAYear() {
    HomeLoad home = new HomeLoad(Homes.site(60, Household.of(8)).build());
    for (Control control : Control.values()) {
      Design design = design(home, Homes.bed(0.5, 5, control).build());
      assertThat(design.feasible()).isFalse();
      assertThat(design.year()).isEmpty();
      assertThat(design.hardWater()).isEmpty();
      assertThat(design.hardWaterHigh()).isEmpty();
      assertThat(design.runOutShare()).isEmpty();
      assertThat(design.bed()).isEmpty();
      assertThat(design.filling()).isEmpty();
      assertThat(design.schedule().setVolume()).isEmpty();
      assertThat(design.schedule().designDays()).isBetween(0.0, 1.0);
      assertThat(design.steps()).isNotEmpty();
    }
  }

  @Test
  void coldWaterLowersTheCapacity() {
    Softener bed = Homes.bed(1, 8, Control.METERED_AT_NIGHT).build();
    double warm = usable(60, bed, ColdWater.USUAL);

    assertThat(usable(50, bed, ColdWater.USUAL)).isEqualTo(warm);
    assertThat(usable(45, bed, ColdWater.USUAL) / warm)
        .as("common practice: 0.75 at 40 °F, linear")
        .isCloseTo(0.875, within(1e-9));
    assertThat(usable(40, bed, ColdWater.USUAL) / warm).isCloseTo(0.75, within(1e-9));
    assertThat(usable(40, bed, new ColdWater(1))).isEqualTo(warm);
  }

  private static double usable(double fahrenheit, Softener bed, ColdWater cold) {
    WaterAnalysis.Builder water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(10))
            .temperature(Temperature.ofFahrenheit(fahrenheit));
    HomeLoad home = new HomeLoad(Homes.site(water, Household.of(2)).build());
    return Homes.only(new Sizer(home, 0, cold), bed).basis().usable().grains();
  }

  @Test
  void potassiumChlorideTakesMoreWaterInAColdBrineTank() {
    Softener bed =
        Homes.bed(1, 8, Control.METERED_AT_NIGHT).regenerant(Regenerant.POTASSIUM_CHLORIDE).build();
    double cold = minutes(0, bed);

    assertThat(minutes(20, bed) / cold)
        .as("2.34 and 2.85 lb a gallon: KCL-01")
        .isCloseTo(2.34 / 2.85, within(1e-9));
    assertThat(minutes(10, bed) / cold).isCloseTo(2.34 / 2.60, within(1e-9));
  }

  private static double minutes(double celsius, Softener bed) {
    Temperature tank = Temperature.ofCelsius(Math.max(celsius, 0.6));
    HomeLoad home =
        new HomeLoad(Homes.site(10, Household.of(2)).brineTankTemperature(tank).build());
    Design design = Homes.only(new Sizer(home), bed);
    double scale =
        Regenerant.POTASSIUM_CHLORIDE.dissolvedByOneGallon(tank).pounds()
            / Regenerant.POTASSIUM_CHLORIDE
                .dissolvedByOneGallon(Temperature.ofCelsius(celsius))
                .pounds();
    return Minutes.of(design.refill().exact()) * scale;
  }
}
