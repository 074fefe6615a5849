package io.github.brinewright.exchange;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The invented demo town, and homes drawn by lot that are quoted from its price list. */
public final class DemoTown {
  /** Folder of the demo job. */
  public static final Path FOLDER = Path.of("..", "samples", "job");

  private DemoTown() {}

  /** The demo job. */
  public static Job job() {
    return JobFolder.read(FOLDER).job().orElseThrow();
  }

  /** The demo job with other homes. */
  static Job withRandomHomes(long seed, int homes) {
    Random lot = new Random(seed);
    String rows =
        IntStream.range(0, homes).mapToObj(i -> row("R" + i, lot)).collect(Collectors.joining());
    return JobFolder.read(
            JobFiles.in(FOLDER)
                .with(
                    "sites.csv",
                    "site_id,hardness_gpg,iron_mg_per_l,ph,people,bathrooms,softened\n" + rows))
        .job()
        .orElseThrow();
  }

  private static String row(String id, Random lot) {
    return String.format(
        Locale.ROOT,
        "%s,%.2f,%s,%.1f,%d,%.1f,%s\n",
        id,
        Math.exp(lot.nextDouble() * Math.log(1_000)) / 10,
        lot.nextBoolean() ? "" : String.format(Locale.ROOT, "%.2f", 12 * lot.nextDouble()),
        4 + 6 * lot.nextDouble(),
        1 + lot.nextInt(12),
        0.5 + 0.5 * lot.nextInt(10),
        lot.nextBoolean() ? "whole_house" : "hot_water");
  }
}
