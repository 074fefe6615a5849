package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.exchange.ComparisonCsv;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.exchange.Simulated;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is written home by home is what is written of all homes at once. */
class HomeByHomeTest extends CommandTest {
  private static final Path TOWN = Path.of("../../samples/job");

  private static List<Simulated> all(Path folder) {
    Job job = JobFolder.read(folder).job().orElseThrow();
    return job.homes().stream().map(job::compare).map(Simulated::none).toList();
  }

  private String printed(Path job, String... options) {
    out.getBuffer().setLength(0);
    String[] args = new String[options.length + 2];
    args[0] = "compare";
    args[1] = job.toString();
    System.arraycopy(options, 0, args, 2, options.length);
    assertThat(run(args)).isZero();
    return out.toString();
  }

  @Test
  void theDemoTown() {
    List<Simulated> all = all(TOWN);
    Wording words = Wording.of(Locale.US, UnitSystem.US);

    assertThat(printed(TOWN, "--format", "csv")).isEqualTo(ComparisonCsv.of(all));
    assertThat(printed(TOWN, "--format", "csv", "--grid"))
        .isEqualTo(ComparisonCsv.grid(all.stream().map(Simulated::comparison).toList()));
    assertThat(printed(TOWN, "--format", "json"))
        .isEqualTo(ComparisonJson.many(all, words) + System.lineSeparator());
    assertThat(printed(TOWN))
        .isEqualTo(
            all.stream()
                .map(one -> ComparisonTable.of(one, words) + System.lineSeparator())
                .collect(Collectors.joining()));
  }

  @Test
  void aThousandHomes() throws IOException {
    String rows =
        IntStream.range(0, 1_000)
            .mapToObj(i -> "N" + i + ",x," + (8 + i % 23) + "," + (1 + i % 7))
            .collect(Collectors.joining("\n"));
    Files.writeString(
        folder.resolve("sites.csv"), "site_id,customer,hardness_gpg,people\n" + rows + "\n");

    assertThat(printed(folder, "--format", "csv")).isEqualTo(ComparisonCsv.of(all(folder)));
  }

  @Test
  void asJsonNothingIsPrintedWhereThereIsNoHome() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), "site_id,hardness_gpg,people\nA1,18,0\n");

    assertThat(run("compare", folder.toString(), "--format", "json")).isEqualTo(1);
    assertThat(out.toString()).isEmpty();
  }

  /** A reader that goes away. */
  private static final class Gone extends Writer {
    private int tries;

    @Override
    public void write(char[] text, int from, int count) throws IOException {
      tries++;
      throw new IOException("broken pipe");
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Test
  void nobodyWorksForAReaderThatIsGone() throws IOException {
    String rows =
        IntStream.range(0, 1_000)
            .mapToObj(i -> "N" + i + ",x,18,3")
            .collect(Collectors.joining("\n"));
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,customer,hardness_gpg,people\n" + rows + "\nZ,x,0,0\n");
    var line = Main.commandLine();
    Gone gone = new Gone();
    line.setOut(new PrintWriter(gone));
    line.setErr(new PrintWriter(err, true));

    assertThat(line.execute("compare", folder.toString(), "--format", "csv")).isEqualTo(1);
    assertThat(gone.tries).isPositive();
    assertThat(err.toString()).contains("finds no reader").doesNotContain("row 1002");
  }
}
