package io.github.brinewright.bench;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Control;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A thousand years of one bed against the bare drawing of their days, on one core and on two. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
public class YearBenchmark {
  /** How many cores work on the years. */
  @Param({"1", "2"})
  int cores;

  /** What starts a regeneration. */
  @Param({"METERED_AT_NIGHT", "METERED_AT_ONCE", "CLOCK"})
  Control control = Control.METERED_AT_NIGHT;

  private final Job job =
      JobFolder.read(Path.of(System.getProperty("brinewright.job", "samples/job")))
          .job()
          .orElseThrow();
  private final Comparison comparison = job.compare(job.homes().get(0));
  private BedSettings bed = comparison.closest().design().bed().orElseThrow();
  private final YearSimulation simulation =
      new YearSimulation(DemandModel.of(comparison.home()), 1_000, 1);
  private ForkJoinPool pool = new ForkJoinPool(1);

  /** A pool of the wanted size. */
  @Setup
  public void start() {
    pool = new ForkJoinPool(cores);
    var setup =
        new io.github.brinewright.sizing.Setup(
            comparison.closest().softener(), comparison.closest().design().basis(), control);
    bed = new Sizer(comparison.home()).design(setup).bed().orElseThrow();
  }

  /** Ends the pool. */
  @TearDown
  public void stop() {
    pool.shutdown();
  }

  /** The days alone. */
  @Benchmark
  public List<SimulatedYears> draw() throws InterruptedException, ExecutionException {
    return pool.submit(() -> simulation.run(List.of())).get();
  }

  /** The days, and the bed that meets them. */
  @Benchmark
  public List<SimulatedYears> drawAndSimulate() throws InterruptedException, ExecutionException {
    return pool.submit(() -> simulation.run(List.of(bed))).get();
  }
}
