package io.github.brinewright.area;

import io.github.brinewright.area.Totals.Count;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.SafeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Studies a table of homes. */
@Command(name = "study", description = "Studies a table of homes, as CSV and a report.")
final class StudyCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "TABLE",
      description = "CSV, or Parquet where the name ends in .parquet; a file or a folder of parts")
  private String table = "";

  @Option(
      names = "--invented",
      paramLabel = "HOMES",
      description = "studies invented homes instead")
  private long invented;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "for area.csv and area.pdf")
  private Path out = Path.of(".");

  @Option(names = "--date", description = "of the report; today where empty")
  private LocalDate date = LocalDate.now();

  @Option(names = "--locale", description = "of the report: en-US, es-US, fr-CA …")
  private Locale locale = Locale.US;

  @Option(names = "--name", description = "who reports, at the head of the report")
  private String name = "Service area";

  @Option(names = "--metric", description = "the report in metric units")
  private boolean metric;

  @Mixin private AssumedOptions assumed = new AssumedOptions();
  @Mixin private SparkOptions options = new SparkOptions();

  @Override
  public Integer call() throws IOException {
    if (table.isEmpty() == (invented == 0)) {
      throw new IllegalArgumentException("give a TABLE, or --invented HOMES, and not both");
    }
    AreaStudy study = new AreaStudy(assumed.assumed());
    Town town = town(study);
    town.problems().forEach(System.err::println);
    write(town, study.assumed());
    long refused = town.all().of(Count.REFUSED);
    System.out.println("homes " + town.all().of(Count.ROWS) + ", refused " + refused);
    return refused == 0 ? 0 : 1;
  }

  private Town town(AreaStudy study) throws IOException {
    try (SparkSession session = options.session()) {
      SparkArea area = new SparkArea(session);
      Dataset<Row> rows =
          table.isEmpty()
              ? area.invented(
                  new InventedTown(InventedTown.USUAL_SEED), invented, options.parts(invented))
              : area.read(table);
      return area.study(rows, study);
    }
  }

  /** Both files are made before either is written. */
  private void write(Town town, Assumed taken) throws IOException {
    byte[] csv = AreaCsv.of(town).getBytes(StandardCharsets.UTF_8);
    byte[] pdf =
        new AreaReport(town, taken, invented > 0, metric)
            .toPdf(Dealer.named(name).locale(locale).build(), date);
    Files.createDirectories(out);
    SafeFile.write(out.resolve("area.csv"), csv);
    SafeFile.write(out.resolve("area.pdf"), pdf);
  }
}
