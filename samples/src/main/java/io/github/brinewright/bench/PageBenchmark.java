package io.github.brinewright.bench;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.internal.screen.Look;
import io.github.brinewright.internal.screen.Screen;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.internal.visit.Visit;
import io.github.brinewright.job.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the page's server takes to answer a changed entry, without the way there and back: the
 * folder is read anew, the home compared, and what follows made HTML.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 4)
public class PageBenchmark {
  private static final Path FOLDER = Path.of(System.getProperty("brinewright.job", "samples/job"));

  /** A home without a softener, and one that has one. */
  @Param({"H01", "S02"})
  String home = "H01";

  private final Iterator<Integer> people = Stream.iterate(1, many -> many % 9 + 1).iterator();

  /** An entry of the visit was changed. */
  @Benchmark
  public byte[] visit() throws IOException {
    return answer("visit", "field.people");
  }

  /** A slider was moved: all sizes, the year and the totals are drawn anew. */
  @Benchmark
  public byte[] slider() throws IOException {
    return answer("compare", "try.people");
  }

  private byte[] answer(String view, String changed) throws IOException {
    Folder folder = Folder.read(FOLDER);
    Job job = folder.job().orElseThrow();
    Asked asked =
        new Asked(
            Map.of(
                "view", view, "home", Folder.nameOf(home), changed, String.valueOf(people.next())));
    Look look = Look.of(asked, job.dealer());
    Visit visit = Visit.of(folder, asked, look.words().locale());
    Screen screen = new Screen(look, job, visit, asked, LocalDate.EPOCH);
    return JSON.std.asBytes(
        Map.of(
            "parts", screen.parts(),
            "shown", screen.shown(),
            "wrong", screen.wrong(visit.problems()),
            "said", screen.said()));
  }
}
