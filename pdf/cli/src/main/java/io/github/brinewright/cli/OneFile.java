package io.github.brinewright.cli;

import io.github.brinewright.job.SafeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The option of a command that writes one document: where it goes. */
final class OneFile {
  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The PDF file to write.")
  @Nullable Path out;

  /** Writes the document whole or not at all, with its folder, and returns where. */
  Path write(byte[] pdf) throws IOException {
    return write(Objects.requireNonNull(out), pdf);
  }

  /** The same to a file named otherwise. */
  static Path write(Path target, byte[] pdf) throws IOException {
    Path folder = Objects.requireNonNull(target.toAbsolutePath().getParent());
    try {
      Files.createDirectories(folder);
      SafeFile.sweep(folder);
    } catch (IOException failure) {
      throw new UsageException(folder + " cannot be made a folder; " + Failures.inWords(failure));
    }
    if (Files.isDirectory(target)) {
      throw new UsageException(target + " is a folder; name a file in it");
    }
    SafeFile.write(target, pdf);
    return target;
  }
}
