package io.github.brinewright.samples;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** Writes a table of what a meter saves against a clock on the bed recommended to each home. */
public final class ClockAgainstMeter {
  private static final Wording WORDS = Wording.of(Locale.US, UnitSystem.US);

  private ClockAgainstMeter() {}

  /**
   * @param args the job folder
   */
  public static void main(String[] args) {
    System.out.print(table(JobFolder.read(Path.of(args[0])).job().orElseThrow()));
  }

  static String table(Job job) {
    StringBuilder text =
        new StringBuilder("| home | bed | clock, salt lb | meter, salt lb | clock, water gal ")
            .append("| meter, water gal | meter saves a year | worth its price |\n")
            .append("|---|---|---|---|---|---|---|---|\n");
    job.homes().stream().map(job::compare).forEach(home -> text.append(row(job, home)));
    return text.toString();
  }

  private static String row(Job job, Comparison home) {
    Optional<HomeStudy> study = job.study(home).filter(each -> each.meter().isPresent());
    return "| "
        + home.home().site().id()
        + " | "
        + study
            .map(ClockAgainstMeter::cells)
            .orElse("no unit, or no clock and meter on one bed | | | | | | ")
        + " |\n";
  }

  private static String cells(HomeStudy study) {
    var clock = study.controls().get(Control.CLOCK);
    var meter = study.controls().get(study.meter().orElseThrow());
    Money saves = study.meterSaves().orElseThrow();
    Money overYears = saves.multipliedBy(study.candidate().life().years());
    boolean worth = overYears.isGreaterThan(study.candidate().offer().meterExtra());
    return String.join(
        " | ",
        study.candidate().softener().name(),
        range(clock.saltPounds()),
        range(meter.saltPounds()),
        range(clock.waterGallons()),
        range(meter.waterGallons()),
        saves.isNegative() ? "costs " + WORDS.about(saves.abs()) : WORDS.about(saves),
        worth ? "yes" : "**no**");
  }

  private static String range(Spread spread) {
    String mean = WORDS.number(spread.mean(), 0);
    return mean + " (" + WORDS.number(spread.low(), 0) + "-" + WORDS.number(spread.high(), 0) + ")";
  }
}
