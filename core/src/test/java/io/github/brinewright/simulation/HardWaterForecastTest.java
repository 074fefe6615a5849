package io.github.brinewright.simulation;

import static io.github.brinewright.simulation.RandomBeds.MEAN;
import static io.github.brinewright.simulation.RandomBeds.bed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The forecast against the simulated days, and against closed forms. */
class HardWaterForecastTest {
  private static final int BATCHES = 8;
  private static final double HOURS = 1.25;
  private static final double YEARLY_USE = 365 * MEAN;
  private static final DailyVariation INDEPENDENT =
      new DailyVariation(0.461, 0, DailyVariation.NONE.weekdays());

  private static HardWater year(DailyVariation variation, BedSettings bed) {
    DemandModel home = new DemandModel(Volume.ofGallons(MEAN), variation, YearDays.ALWAYS_AT_HOME);
    return HardWaterForecast.of(home).year(bed);
  }

  @Test
  void agreesWithTheSimulationOfRandomHomes() {
    compare(300, 100);
  }

  @Test
  void theShareOverAllHomesIsThatOfTheirMeanYear() {
    RandomBeds random = new RandomBeds(17);
    for (int i = 0; i < 150; i++) {
      DemandModel home = random.home();
      BedSettings bed = random.bed();
      HardWaterForecast forecast = HardWaterForecast.of(home);
      for (UncertainMean uncertain : List.of(UncertainMean.WITH_BILL, UncertainMean.WITHOUT_BILL)) {
        assertThat(forecast.runOutShare(bed, uncertain))
            .as("half a point: weekdays alike, four lengths of a stretch; %s %s", home, bed)
            .isCloseTo(forecast.meanYear(bed, uncertain).runOutShare(), within(0.005));
      }
    }
  }

  @Test
  @Tag("long")
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void agreesWithTheSimulationOfManyRandomHomes() {
    compare(2_000, 250);
  }

  @Test
  void agreesWithTheSimulationOfBedsAsFound() {
    compare(new RandomBeds(23), RandomBeds::bedAsFound, 150, 100);
  }

  private static void compare(int homes, int yearsOfABatch) {
    compare(new RandomBeds(5), RandomBeds::bed, homes, yearsOfABatch);
  }

  private static void compare(
      RandomBeds random, Function<RandomBeds, BedSettings> beds, int homes, int yearsOfABatch) {
    for (int i = 0; i < homes; i++) {
      DemandModel home = random.home();
      BedSettings bed = beds.apply(random);
      List<SimulatedYears> batches = new ArrayList<>();
      for (int batch = 0; batch < BATCHES; batch++) {
        long seed = random.seed();
        batches.addAll(new YearSimulation(home, yearsOfABatch, seed).run(List.of(bed)));
      }
      compare(home + " " + bed, HardWaterForecast.of(home).year(bed), batches, slack(bed));
    }
  }

  /**
   * Where a meter is set to hardly a day, or to near its longest interval, it is half as good; a
   * fifth where that interval ends the hard water of a meter at once, which is approximate.
   */
  private static double slack(BedSettings bed) {
    double days = bed.set().gallons() / MEAN;
    if (bed.control() == Control.METERED_AT_ONCE
        && bed.set().compareTo(bed.capacity()) > 0
        && days > bed.days() / 2.0) {
      return 5;
    }
    return bed.control().metered() && (days < 2 || days > 9) ? 2 : 1;
  }

  private static void compare(
      String what, HardWater forecast, List<SimulatedYears> batches, double slack) {
    Sample regenerations = sample(batches, years -> years.regenerations().mean());
    Sample cycle = sample(batches, years -> years.cycleGallons().mean());
    Sample runOut = sample(batches, years -> years.hardGallons().mean());
    Sample runOutDays = sample(batches, years -> years.hardDays().mean());
    Sample share = sample(batches, SimulatedYears::runOutShare);

    assertThat(forecast.regenerations())
        .as("regenerations; 1 %% of the formula, 0.05 of where the years begin; %s", what)
        .isCloseTo(regenerations.mean, within(regenerations.error(slack * 0.01, 0.05)));
    assertThat(forecast.whileRegenerating().gallons())
        .as("hard water of regenerations; 2 %% of the formula; %s", what)
        .isCloseTo(cycle.mean, within(cycle.error(slack * 0.02, 1)));
    assertThat(forecast.runOut().gallons())
        .as("hard water of running out; 4 %% and 0.02 %% of all use of the formula; %s", what)
        .isCloseTo(runOut.mean, within(runOut.error(slack * 0.04, slack * 0.0002 * YEARLY_USE)));
    assertThat(forecast.runOutDays())
        .as("days; 4 %% and 0.1 of the formula; %s", what)
        .isCloseTo(runOutDays.mean, within(runOutDays.error(slack * 0.04, slack * 0.1)));
    assertThat(forecast.runOutShare())
        .as("share of intervals; 4 %% and 0.2 points of the formula; %s", what)
        .isCloseTo(share.mean, within(share.error(slack * 0.04, slack * 0.002)));
  }

  private static Sample sample(
      List<SimulatedYears> batches, ToDoubleFunction<SimulatedYears> figure) {
    double sum = 0;
    double squares = 0;
    for (SimulatedYears batch : batches) {
      double value = figure.applyAsDouble(batch);
      sum += value;
      squares += value * value;
    }
    double mean = sum / BATCHES;
    double variance = Math.max(0, squares / BATCHES - mean * mean) / (BATCHES - 1);
    return new Sample(mean, Math.sqrt(variance));
  }

  /** Mean of the simulated batches and its standard error. */
  private record Sample(double mean, double standardError) {
    double error(double relative, double absolute) {
      return 4 * standardError + relative * mean + absolute;
    }
  }

  @Test
  void constantUseFollowsTheClosedForms() {
    double cell = 0.04;
    HardWater clock = year(DailyVariation.NONE, bed(Control.CLOCK, 4.5, 4.5, 5, 0));
    assertThat(clock.regenerations()).isEqualTo(73);
    assertThat(clock.runOut().gallons()).isCloseTo(73 * 50, within(1e-9));
    assertThat(clock.runOutDays()).isCloseTo(73, within(1e-9));
    assertThat(clock.runOutShare()).isEqualTo(1);

    HardWater night = year(DailyVariation.NONE, bed(Control.METERED_AT_NIGHT, 6.8, 6.5, 14, 0));
    assertThat(night.regenerations()).isCloseTo(365.0 / 7, within(1e-9));
    assertThat(night.runOut().gallons())
        .as("20 gal an interval; the table's cells are a sixteenth of a day")
        .isCloseTo(20 * 365.0 / 7, within(cell * MEAN * 365 / 7));

    HardWater atOnce = year(DailyVariation.NONE, bed(Control.METERED_AT_ONCE, 6.5, 6.5, 14, 0));
    assertThat(atOnce.regenerations()).isCloseTo(365 / 6.5, within(1e-6));
    assertThat(atOnce.total().gallons()).isZero();
  }

  @Test
  void independentDaysFollowRenewalTheory() {
    HardWater year = year(INDEPENDENT, bed(Control.METERED_AT_NIGHT, 9.2, 8, 60, 0));

    assertThat(365 / year.regenerations())
        .as("Cox, Renewal Theory (1962): set volume and mean excess")
        .isCloseTo(8 + INDEPENDENT.meanExcess(), within(0.002));
    assertThat(year.runOutShare())
        .as("the stationary excess")
        .isCloseTo(INDEPENDENT.excessBeyond(1.2), within(0.0005));
    assertThat(year(INDEPENDENT, bed(Control.METERED_AT_ONCE, 8, 8, 60, 0)).regenerations())
        .as("each set volume once")
        .isCloseTo(365.0 / 8, within(1e-3));
  }

  @Test
  void theLongestIntervalKeepsALargeBedFromRunningOut() {
    HardWater year = year(DailyVariation.USUAL, bed(Control.METERED_AT_NIGHT, 24, 23.2, 14, HOURS));

    assertThat(DailyVariation.USUAL.excessBeyond(0.8)).as("without it").isGreaterThan(0.2);
    assertThat(year.regenerations()).isCloseTo(365.0 / 14, within(0.01));
    assertThat(year.runOutShare()).isLessThan(0.001);
  }

  @Property(tries = 200)
  void moreReserveNeverMeansMoreHardWaterNorFewerRegenerations(
      @ForAll @DoubleRange(min = 2, max = 20) double capacity,
      @ForAll @DoubleRange(min = 0, max = 0.4) double held,
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double more) {
    double set = capacity * (1 - held);
    HardWater less =
        year(DailyVariation.USUAL, bed(Control.METERED_AT_NIGHT, capacity, set, 14, HOURS));
    HardWater kept =
        year(
            DailyVariation.USUAL,
            bed(Control.METERED_AT_NIGHT, capacity, set - more * capacity, 14, HOURS));

    assertThat(kept.runOut().gallons()).isLessThanOrEqualTo(less.runOut().gallons() + 1e-6);
    assertThat(kept.regenerations()).isGreaterThanOrEqualTo(less.regenerations() - 1e-6);
  }

  @Property(tries = 200)
  void moreUseNeverMeansFewerRegenerationsNorLessHardWater(
      @ForAll Control control,
      @ForAll @DoubleRange(min = 2, max = 20) double capacity,
      @ForAll @DoubleRange(min = 0.3, max = 3) double multiple) {
    double set = control == Control.METERED_AT_NIGHT ? 0.8 * capacity : capacity;
    int days = control == Control.CLOCK ? Math.max(1, (int) (capacity / 1.4)) : 14;
    BedSettings bed = bed(control, capacity, set, days, HOURS);
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(Volume.ofGallons(MEAN)));
    HardWater less = forecast.yearAt(bed, multiple);
    HardWater more = forecast.yearAt(bed, 1.1 * multiple);

    assertThat(more.regenerations())
        .as("where the longest interval rules, the formula at once is smooth to 0.01 a year")
        .isGreaterThanOrEqualTo(less.regenerations() - 0.01);
    assertThat(more.total().gallons()).isGreaterThan(0.999 * less.total().gallons());
  }

  @Test
  void theMeanYearIsThatOfManyDrawnHomes() {
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(Volume.ofGallons(MEAN)));
    int homes = 4_000;
    for (Control control : Control.values()) {
      BedSettings bed = bed(control, 10, control == Control.METERED_AT_NIGHT ? 8.5 : 10, 7, HOURS);
      double regenerations = 0;
      double hard = 0;
      double ends = 0;
      for (int i = 0; i < homes; i++) {
        double multiple = UncertainMean.WITHOUT_BILL.quantile((i + 0.5) / homes);
        HardWater year = forecast.yearAt(bed, multiple);
        regenerations += year.regenerations() / homes;
        hard += year.total().gallons() / homes;
        ends += year.regenerations() * year.runOutShare() / homes;
      }
      HardWater mean = forecast.meanYear(bed, UncertainMean.WITHOUT_BILL);

      assertThat(mean.regenerations()).isCloseTo(regenerations, within(0.002 * regenerations));
      assertThat(mean.total().gallons())
          .as("the %d quantiles leave the outermost homes out; %s", homes, control)
          .isCloseTo(hard, within(0.01 * hard));
      assertThat(mean.runOutShare()).isCloseTo(ends / regenerations, within(0.003));
    }
  }

  @Test
  void aMeanThatIsKnownIsTheYearItself() {
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(Volume.ofGallons(MEAN)));
    BedSettings bed = bed(Control.METERED_AT_NIGHT, 10, 8.5, 14, HOURS);

    assertThat(forecast.meanYear(bed, new UncertainMean(0))).isEqualTo(forecast.year(bed));
    assertThat(forecast.year(bed).daysOf(Volume.ofGallons(MEAN)))
        .isCloseTo(forecast.year(bed).total().gallons() / MEAN, within(1e-12));
  }

  @Test
  void absurdBedsHaveAYearToo() {
    for (Control control : Control.values()) {
      for (double hours : new double[] {0, 24}) {
        HardWater year = year(DailyVariation.USUAL, bed(control, 0.05, 0, 14, hours));

        assertThat(year.regenerations()).isBetween(26.0, 24 * 365.0);
        assertThat(year.total().gallons()).isBetween(0.0, 24 * YEARLY_USE);
        assertThat(year.runOutShare()).isBetween(0.0, 1.0);
      }
    }
  }

  @Test
  void impossibleSettingsAreRefused() {
    HardWaterForecast forecast = HardWaterForecast.of(DemandModel.of(Volume.ofGallons(MEAN)));
    BedSettings endless = bed(Control.METERED_AT_NIGHT, 10, 8.5, 100, HOURS);

    assertThatThrownBy(() -> forecast.year(endless)).hasMessageContaining("from 1 to 99");
    assertThatThrownBy(() -> forecast.yearAt(bed(Control.CLOCK, 1, 1, 1, HOURS), 0))
        .hasMessageContaining("multiple");
  }
}
