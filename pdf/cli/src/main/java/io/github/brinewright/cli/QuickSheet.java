package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.sizing.ControlOptions;
import java.time.LocalDate;
import java.util.Map;

/** The settings sheet of a softener and a home that are described by options alone. */
final class QuickSheet {
  private final QuickHome quick;

  QuickSheet(QuickHome quick) {
    this.quick = quick;
  }

  byte[] pdf(LocalDate day, ControlOptions options) {
    Map<String, String> unit = quick.unit();
    if (!unit.containsKey("rated_grains") && !unit.containsKey("resin_ft3")) {
      throw new UsageException(
          "name a JOBFOLDER and a --unit, or describe a home with --hardness and --people, and the"
              + " softener with --rated-grains or --resin-ft3 and --control");
    }
    Job job = quick.job();
    QuotedHome home = job.homes().get(0);
    Comparison comparison = job.compare(home);
    return new SettingsSheet(comparison, comparison.closest(), job.dealerFor(home), day, options)
        .unlisted()
        .toPdf();
  }
}
