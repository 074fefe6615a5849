package io.github.brinewright.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The option of a command that dates what it writes. */
final class Dated {
  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "Date of what is written (default: today).")
  private @Nullable LocalDate date;

  /** A day as it is typed; what is none is refused in words. */
  static LocalDate parse(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException noDay) {
      throw new CommandLine.TypeConversionException(
          "\"" + text + "\" is no day; write year, month and day, as 2026-05-02");
    }
  }

  LocalDate day() {
    if (date != null && (date.getYear() < 1900 || date.getYear() > 2199)) {
      throw new UsageException("--date is " + date + ", but must be of the years 1900 to 2199");
    }
    return date == null ? LocalDate.now() : date;
  }
}
