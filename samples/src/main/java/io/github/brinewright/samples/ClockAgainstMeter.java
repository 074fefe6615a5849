package io.github.brinewright.samples;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * Writes a table of what a meter does against a clock on the bed recommended to each home: salt,
 * hard water and money, on the same simulated days.
 */
public final class ClockAgainstMeter {
  private static final Wording WORDS = Wording.of(Locale.US, UnitSystem.US);
  private static final String HEAD =
      """
      | home | bed | clock, salt lb | meter, salt lb | clock, hard water | meter, hard water \
      | meter saves a year | pays for itself | weighed |
      |---|---|---|---|---|---|---|---|---|
      """;

  private ClockAgainstMeter() {}

  /**
   * @param args the job folder
   */
  public static void main(String[] args) {
    System.out.print(table(JobFolder.read(Path.of(args[0])).job().orElseThrow()));
  }

  static String table(Job job) {
    StringBuilder text = new StringBuilder(HEAD);
    job.homes().stream().map(job::compare).forEach(home -> text.append(row(job, home)));
    return text.toString();
  }

  private static String row(Job job, Comparison home) {
    Optional<HomeStudy> study = job.study(home).filter(each -> each.meter().isPresent());
    return "| "
        + home.home().site().id()
        + " | "
        + study
            .map(each -> cells(each, job.prices().margins()))
            .orElseGet(() -> without(home) + " | | | | | | | ")
        + " |\n";
  }

  private static String without(Comparison home) {
    String verdict = home.verdict().kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return home.recommended().isPresent()
        ? "no clock and meter on one bed"
        : "nothing is recommended (" + verdict + ")";
  }

  private static String cells(HomeStudy study, Margins margins) {
    SimulatedYears clock = study.controls().get(study.clock());
    SimulatedYears meter = study.controls().get(study.meter().orElseThrow());
    HomeLoad load = study.candidate().design().home();
    Volume day = load.softenedExpected();
    AgainstClock weighed =
        new AgainstClock(
            clock.salt().pounds(),
            meter.salt().pounds(),
            clock.hardWater().daysOf(day),
            meter.hardWater().daysOf(day),
            margins.hardWaterMean() * load.softenedYear().ratioTo(day));
    Money saves = study.meterSaves().orElseThrow();
    return String.join(
        " | ",
        study.candidate().softener().name(),
        range(clock.saltPounds()),
        range(meter.saltPounds()),
        hard(clock.hardWater(), day),
        hard(meter.hardWater(), day),
        saves.isNegative() ? "costs " + WORDS.about(saves.abs()) : WORDS.about(saves),
        payback(study, saves),
        weighed.verdict());
  }

  private static String range(Spread spread) {
    String mean = WORDS.number(spread.mean(), 0);
    return mean + " (" + WORDS.number(spread.low(), 0) + "-" + WORDS.number(spread.high(), 0) + ")";
  }

  private static String hard(HardWater hard, Volume day) {
    return WORDS.number(hard.daysOf(day), 1)
        + " days, "
        + WORDS.number(hard.total().gallons(), 0)
        + " gal";
  }

  /** Whether the price of the meter comes back, without interest. */
  private static String payback(HomeStudy study, Money saves) {
    Set<Control> sold = study.candidate().softener().controls();
    if (sold.stream().noneMatch(Control::timed)) {
      return "sold with a meter only";
    }
    if (sold.stream().allMatch(Control::timed)) {
      return "sold with a clock only";
    }
    Money extra = study.candidate().offer().meterExtra();
    if (extra.isZero()) {
      return "at the same price";
    }
    int compared = study.candidate().life().years();
    Money overYears = saves.multipliedBy(compared);
    if (overYears.isLessThan(extra)) {
      return "**not in " + compared + " years**";
    }
    double years = extra.getAmount().doubleValue() / saves.getAmount().doubleValue();
    return "in " + WORDS.number(years, 1) + " years";
  }
}
