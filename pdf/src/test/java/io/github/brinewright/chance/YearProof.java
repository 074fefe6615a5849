package io.github.brinewright.chance;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.study.HomeStudy;
import java.util.Objects;

/**
 * Figures of a year that page one says of the recommended candidate, held against the simulated
 * years. {@code LabelledValuesTest} holds the page against these figures.
 *
 * <p>Allowed are four standard errors of the simulated mean and the accuracy that {@link
 * io.github.brinewright.simulation.HardWaterForecast} states.
 */
final class YearProof {
  private static final double FIVE_TO_NINETY_FIVE = 3.29;

  private final HomeStudy study;
  private final Candidate candidate;
  private final SimulatedYears years;
  private final Volume day;
  private final double slack;

  private YearProof(HomeStudy study) {
    this.study = study;
    candidate = study.candidate();
    years = Objects.requireNonNull(study.controls().get(study.recommended()));
    day = candidate.design().home().softenedExpected();
    slack = slack(years.bed());
  }

  static void check(HomeStudy study) {
    YearProof proof = new YearProof(study);
    if (proof.dueByDaysAway()) {
      return;
    }
    proof.regenerations();
    proof.hardWater();
    proof.runOuts();
  }

  /** A meter set so low that it is due by the little that is used on days away: not foreseen. */
  private boolean dueByDaysAway() {
    BedSettings bed = years.bed();
    double whileAway = bed.days() * YearDays.LEFT_WHILE_AWAY;
    return bed.control().metered()
        && candidate.design().home().use().days().away() > 0
        && bed.set().ratioTo(day) < whileAway;
  }

  /**
   * Where a meter is set to little or to near its longest interval the forecast is half as good.
   */
  private double slack(BedSettings bed) {
    double days = bed.set().ratioTo(day);
    return bed.control().metered() && (days < 2 || days > 9) ? 2 : 1;
  }

  /** Four standard errors of the mean of all years, of which 90 % lie within the spread. */
  private double sampling(Spread spread) {
    return 4 * (spread.high() - spread.low()) / FIVE_TO_NINETY_FIVE / Math.sqrt(study.years());
  }

  private void close(String figure, double stated, Spread spread, double share, double beyond) {
    close(figure, stated, spread.mean(), sampling(spread) + share * spread.mean() + beyond, 0);
  }

  private void close(String figure, double stated, double simulated, double within, double above) {
    assertThat(stated)
        .as("%s against the simulated year, %s %s", figure, candidate, years.bed())
        .isBetween(simulated - within, simulated + within + above);
  }

  /**
   * What the forecast may say too much of running out: where a meter is set to near its longest
   * interval, a stretch with guests counts as if it filled one, up to as much again.
   */
  private double above(double simulated) {
    boolean near = years.bed().control().metered() && slack > 1;
    boolean stretches = !candidate.design().home().use().days().allOrdinary();
    return near && stretches ? simulated : 0;
  }

  private void regenerations() {
    YearlyUse year = candidate.design().year().orElseThrow();
    double each = slack * 0.01;
    double begin = 0.05;
    close("regenerations", year.regenerations(), years.regenerations(), each, begin);
    close(
        "regenerations by the days between",
        CalendarYear.DAYS / year.daysBetween(),
        years.regenerations(),
        each,
        begin);
    close(
        "pounds of salt",
        year.salt().pounds(),
        years.saltPounds(),
        each,
        begin * years.bed().salt().pounds());
    close(
        "gallons of regeneration water",
        year.water().gallons(),
        years.waterGallons(),
        each,
        begin * years.bed().water().gallons());
  }

  private void hardWater() {
    HardWater hard = candidate.hardWater().orElseThrow();
    close(
        "gallons while regenerating",
        hard.whileRegenerating().gallons(),
        years.cycleGallons(),
        slack * 0.02,
        1);
    double out = years.hardGallons().mean();
    double ofUse = slack * 0.0002 * CalendarYear.DAYS * day.gallons();
    double within = sampling(years.hardGallons()) + slack * 0.04 * out + ofUse;
    close("gallons after running out", hard.runOut().gallons(), out, within, above(out));
    double all = out + years.cycleGallons().mean();
    double withinAll =
        within + sampling(years.cycleGallons()) + slack * 0.02 * years.cycleGallons().mean() + 1;
    close("gallons of hard water", hard.total().gallons(), all, withinAll, above(out));
    close(
        "days of hard water",
        candidate.hardWaterDays().orElseThrow(),
        all / day.gallons(),
        withinAll / day.gallons(),
        above(out) / day.gallons());
  }

  private void runOuts() {
    HardWater hard = candidate.hardWater().orElseThrow();
    double days = years.hardDays().mean();
    double within = sampling(years.hardDays()) + slack * (0.04 * days + 0.1);
    close("days out of soft water", hard.runOutDays(), days, within, above(days));
    shareWithinTheLongestInterval(hard.runOutShare());
    assertThat(hard.runOutShare() * hard.regenerations())
        .as("intervals that run out, each of which has a day that does")
        .isLessThanOrEqualTo(hard.runOutDays() * 1.01 + 0.01);
  }

  private void shareWithinTheLongestInterval(double stated) {
    double share = years.runOutShare();
    double intervals = years.regenerations().mean() * study.years();
    double error = Math.sqrt(share * (1 - share) / intervals);
    double within = 4 * error + slack * (0.04 * share + 0.002);
    close("share of intervals that run out", stated, share, within, above(share));
    assertThat(years.longestGap().high())
        .as("days between regenerations")
        .isLessThanOrEqualTo(Schedule.LONGEST_DAYS);
  }
}
