package io.github.brinewright.bench;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.study.HowSure;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A home's comparison, and how sure its choice is, for the demo price list. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ChoiceBenchmark {
  private final Job job =
      JobFolder.read(Path.of(System.getProperty("brinewright.job", "samples/job")))
          .job()
          .orElseThrow();
  private final Comparison comparison = job.compare(job.homes().get(0));

  /** Every setting of every offer, with margins. */
  @Benchmark
  public Comparison compare() {
    return job.compare(job.homes().get(0));
  }

  /** The usual draws. */
  @Benchmark
  public Optional<HowSure> howSure() {
    return HowSure.of(comparison);
  }
}
