package io.github.brinewright.cli;

import io.github.brinewright.regeneration.ReserveForm;
import io.github.brinewright.sizing.ControlOptions;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that say how a control is set beside what is computed. */
final class HowSet {
  @Option(
      names = "--hour",
      paramLabel = "HOUR",
      description = "Hour of the day at which it regenerates, 0 to 23 (default: 2).")
  private @Nullable Integer hour;

  @Option(
      names = "--start",
      paramLabel = "YYYY-MM-DD",
      description = "Day on which it is set, from which its days count (default: the date).")
  private @Nullable LocalDate start;

  @Option(
      names = "--reserve",
      paramLabel = "FORM",
      description =
          "How a meter takes the reserve: deducted already from what is set (default), or"
              + " separate.")
  private @Nullable ReserveForm reserve;

  /**
   * What is chosen.
   *
   * @param day date of the document
   */
  ControlOptions options(LocalDate day) {
    ControlOptions options = ControlOptions.on(start == null ? day : start);
    if (reserve != null) {
      options = options.with(reserve);
    }
    return hour == null ? options : at(options, hour);
  }

  private static ControlOptions at(ControlOptions options, int hour) {
    try {
      return options.at(hour);
    } catch (IllegalArgumentException outOfRange) {
      throw new UsageException("--hour: " + outOfRange.getMessage());
    }
  }
}
