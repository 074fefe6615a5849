package io.github.brinewright.area;

import org.apache.spark.sql.SparkSession;
import picocli.CommandLine.Option;

/** Where the work is done. */
final class SparkOptions {
  private static final long HOMES_A_PART = 2_000;
  private static final int FEWEST_PARTS = 4;
  private static final String MASTER = "spark.master";

  @Option(
      names = "--master",
      description = "local[2], local[*] …; where empty that of spark-submit, or local[*]")
  private String master = "";

  /** A session; what spark-submit has set holds where nothing is said. */
  SparkSession session() {
    SparkSession.Builder builder = SparkSession.builder().appName("brinewright-area");
    if (!master.isEmpty()) {
      builder.master(master);
    } else if (System.getProperty(MASTER) == null) {
      builder.master("local[*]");
    }
    return builder
        .config("spark.ui.enabled", "false")
        .config("spark.ui.showConsoleProgress", "false")
        .getOrCreate();
  }

  /** Parts small enough that all executors end together. */
  int parts(long homes) {
    return (int) Math.max(FEWEST_PARTS, Math.min(10_000, homes / HOMES_A_PART));
  }
}
