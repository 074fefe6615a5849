package io.github.brinewright.cli;

import io.github.brinewright.job.TableFormatException;
import io.github.brinewright.xlsx.Spreadsheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a table of a job as a spreadsheet, or a spreadsheet as CSV. */
@Command(
    name = "table",
    mixinStandardHelpOptions = true,
    description = "Writes a table of a job folder as a spreadsheet, or a spreadsheet as CSV.")
final class TableCommand implements Callable<Integer> {
  private static final String CSV = ".csv";
  private static final String SPREADSHEET = ".xlsx";

  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "A table, as in units.csv or units.xlsx.")
  @Nullable Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The file to write; one that is there is replaced.")
  @Nullable Path out;

  @Override
  public Integer call() throws IOException {
    Path from = Objects.requireNonNull(file);
    Path to = Objects.requireNonNull(out);
    if (!Files.isRegularFile(from)) {
      throw new UsageException("there is no file " + from);
    }
    byte[] content;
    if (ends(from, CSV) && ends(to, SPREADSHEET)) {
      content = new Spreadsheet().fromCsv(Files.readString(from), name(from));
    } else if (ends(from, SPREADSHEET) && ends(to, CSV)) {
      content = csv(from);
    } else {
      throw new UsageException("one of the two files is to end in .csv, the other in .xlsx");
    }
    spec.commandLine().getOut().println("Table written to " + OneFile.write(to, content));
    return 0;
  }

  private static byte[] csv(Path from) throws IOException {
    try {
      return new Spreadsheet().toCsv(Files.readAllBytes(from)).getBytes(StandardCharsets.UTF_8);
    } catch (TableFormatException cell) {
      throw new IllegalArgumentException(
          from
              + ", cell "
              + cell.cell()
              + ": \""
              + cell.getMessage()
              + "\" is no value; correct the formula or type the value");
    }
  }

  private static boolean ends(Path path, String extension) {
    return fileName(path).toLowerCase(Locale.ROOT).endsWith(extension);
  }

  /** The name of the table, which its sheet bears. */
  private static String name(Path path) {
    return fileName(path).substring(0, fileName(path).length() - CSV.length());
  }

  private static String fileName(Path path) {
    return String.valueOf(path.getFileName());
  }
}
