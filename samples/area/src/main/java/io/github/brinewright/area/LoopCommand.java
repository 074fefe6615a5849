package io.github.brinewright.area;

import io.github.brinewright.area.Totals.Count;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.LongStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The same study of invented homes without Spark: one plain loop, on one core or on several. */
@Command(name = "loop", description = "Studies invented homes in a plain loop, for comparison.")
final class LoopCommand implements Callable<Integer> {
  private static final long AT_A_TIME = 2_000;

  @Option(names = "--homes", required = true, description = "how many")
  private long homes;

  @Mixin private AssumedOptions assumed = new AssumedOptions();

  @Override
  public Integer call() {
    long start = System.nanoTime();
    Town town = town(new AreaStudy(assumed.assumed()), homes);
    double millis = (System.nanoTime() - start) / 1e6;
    System.out.printf(
        Locale.ROOT,
        "homes %d, %.0f ms, sums %08x%n",
        town.all().of(Count.ROWS),
        millis,
        AreaCsv.of(town).hashCode());
    return 0;
  }

  /** On as many cores as the common pool has. */
  static Town town(AreaStudy study, long homes) {
    InventedTown invented = new InventedTown(InventedTown.USUAL_SEED);
    return LongStream.range(0, (homes + AT_A_TIME - 1) / AT_A_TIME)
        .parallel()
        .mapToObj(
            part ->
                study.of(invented.rows(part * AT_A_TIME, Math.min(homes, (part + 1) * AT_A_TIME))))
        .collect(() -> new Town(study.assumed().draws()), Town::add, Town::add);
  }
}
