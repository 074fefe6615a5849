package io.github.brinewright.bench;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.HowSure;
import java.nio.file.Path;
import java.time.LocalDate;
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

/** What comparing a home, saying how sure its choice is and writing its proposal cost, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class ProposalBenchmark {
  private final Job job =
      JobFolder.read(Path.of(System.getProperty("brinewright.job", "samples/job")))
          .job()
          .orElseThrow();
  private final Comparison comparison = job.compare(job.homes().get(0));

  /** Sizing, pricing and ranking all setups of one home, with margins. */
  @Benchmark
  public Comparison compare() {
    return job.compare(job.homes().get(0));
  }

  /** How sure the choice is, by the usual draws. */
  @Benchmark
  public Optional<HowSure> howSure() {
    return HowSure.of(comparison);
  }

  /** The simulated years, the best dosage and the changes that a proposal speaks of. */
  @Benchmark
  public Optional<HomeStudy> study() {
    return job.study(comparison);
  }

  /** The PDF of a comparison. */
  @Benchmark
  public byte[] writeProposal() {
    return new Proposal(comparison, job.dealer(), LocalDate.EPOCH).toPdf();
  }
}
