package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.ComparisonCsv;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.exchange.ComparisonWriter;
import io.github.brinewright.exchange.Simulated;
import io.github.brinewright.job.Job;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows options side by side on the screen. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "Shows options side by side: of a job folder, or of a home described by options.")
final class CompareCommand implements Callable<Integer>, WithColumns {
  /** Forms of the output. */
  enum Format {
    TABLE,
    JSON,
    CSV
  }

  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "JOBFOLDER",
      description = "Folder with sites.csv, a proposal, or a filled form.")
  @Nullable Path folder;

  @Option(names = "--site", paramLabel = "ID", description = "One home only.")
  @Nullable String site;

  @Option(names = "--format", defaultValue = "table", description = "table (default), json or csv.")
  Format format = Format.TABLE;

  @Option(
      names = "--grid",
      description =
          "Shows sizes and salt dosages side by side, for each control. JSON always has them.")
  boolean grid;

  @Option(
      names = "--simulate",
      paramLabel = "YEARS",
      description = "Runs each option through so many simulated years (1 to 100000).")
  @Nullable Integer years;

  private final QuickHome quick = new QuickHome();

  @Override
  public void addTo(CommandSpec command) {
    quick.addTo(command);
  }

  @Override
  public Integer call() {
    int simulated = years();
    if (folder == null) {
      if (site != null) {
        throw new UsageException("--site is a home of a JOBFOLDER; name that too");
      }
      print(quick.compare(), simulated);
      return 0;
    }
    if (quick.given()) {
      throw new UsageException("give either a JOBFOLDER or options of a home, not both");
    }
    JobInput input = JobInput.open(folder, spec.commandLine().getErr());
    String wanted = input.siteOr(site);
    if (wanted == null) {
      return all(input, simulated);
    }
    Optional<Job> job = input.only(wanted);
    job.ifPresent(one -> print(one.compare(one.homes().get(0)), simulated));
    return job.isPresent() ? 0 : 1;
  }

  /** Prints home by home as they are read. */
  private int all(JobInput input, int years) {
    Printed printed = new Printed(spec.commandLine().getOut());
    try (ComparisonWriter writer = writer()) {
      input.each(
          row -> {
            writer.add(Simulated.of(input.shared().compare(row.home()), years));
            printed.one();
          });
    }
    printed.end();
    return input.clean() && input.hadHomes() ? 0 : 1;
  }

  /** How many years are simulated; 0 for none. */
  private int years() {
    if (years != null && (years < 1 || years > Simulated.MOST_YEARS)) {
      throw new UsageException(
          "--simulate is " + years + ", but must be from 1 to " + Simulated.MOST_YEARS);
    }
    return years == null ? 0 : years;
  }

  /** A single home; as JSON it is no array. */
  private void print(Comparison comparison, int years) {
    PrintWriter out = spec.commandLine().getOut();
    Simulated simulated = Simulated.of(comparison, years);
    if (format == Format.JSON) {
      out.println(ComparisonJson.one(simulated, Wording.of(Locale.US, UnitSystem.US)));
    } else {
      try (ComparisonWriter writer = writer()) {
        writer.add(simulated);
      }
    }
    out.flush();
  }

  private ComparisonWriter writer() {
    PrintWriter out = spec.commandLine().getOut();
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    return switch (format) {
      case JSON -> new EndedLine(ComparisonJson.to(out, words), out);
      case CSV -> grid ? ComparisonCsv.gridTo(out) : ComparisonCsv.to(out);
      case TABLE -> new Tables(out, words, grid);
    };
  }

  /** Tables one below the other. */
  private record Tables(PrintWriter out, Wording words, boolean grid) implements ComparisonWriter {
    @Override
    public void add(Simulated one) {
      out.println(grid ? GridTable.of(one.comparison(), words) : ComparisonTable.of(one, words));
    }

    @Override
    public void close() {
      out.flush();
    }
  }

  /** Ends the last line. */
  private static final class EndedLine implements ComparisonWriter {
    private final ComparisonWriter lines;
    private final PrintWriter out;
    private boolean begun;

    EndedLine(ComparisonWriter lines, PrintWriter out) {
      this.lines = lines;
      this.out = out;
    }

    @Override
    public void add(Simulated comparison) {
      begun = true;
      lines.add(comparison);
    }

    @Override
    public void close() {
      lines.close();
      if (begun) {
        out.println();
      }
    }
  }
}
