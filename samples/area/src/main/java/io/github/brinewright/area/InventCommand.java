package io.github.brinewright.area;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.apache.spark.sql.SparkSession;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a table of invented homes. */
@Command(name = "invent", description = "Writes a table of invented homes, in parts.")
final class InventCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "TABLE",
      description = "a new folder; Parquet where its name ends in .parquet, else CSV")
  private String table = "";

  @Option(names = "--homes", required = true, description = "how many")
  private long homes;

  @Option(names = "--town-seed", description = "of the homes")
  private long seed = InventedTown.USUAL_SEED;

  @Mixin private SparkOptions options = new SparkOptions();

  @Override
  public Integer call() throws IOException {
    try (SparkSession session = options.session()) {
      int parts = options.parts(homes);
      new SparkArea(session).invent(new InventedTown(seed), homes, parts, table);
    }
    return 0;
  }
}
