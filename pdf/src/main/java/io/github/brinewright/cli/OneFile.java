package io.github.brinewright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options of a command that writes one document: where it goes, and its date. */
final class OneFile {
  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The PDF file to write.")
  @Nullable Path out;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "Date of the document (default: today).")
  @Nullable LocalDate date;

  LocalDate day() {
    return date == null ? LocalDate.now() : date;
  }

  /** Writes the document whole or not at all and returns where. */
  Path write(byte[] pdf) throws IOException {
    Path target = Objects.requireNonNull(out);
    SafeFile.writeWithFolder(target, pdf);
    return target;
  }
}
