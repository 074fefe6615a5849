package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.ComparisonCsv;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.exchange.Simulated;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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
      print(List.of(quick.compare()), true, simulated);
      return 0;
    }
    if (quick.given()) {
      throw new UsageException("give either a JOBFOLDER or options of a home, not both");
    }
    JobInput input = JobInput.read(folder, spec.commandLine().getErr());
    if (!input.hasHomes()) {
      return 1;
    }
    String wanted = input.siteOr(site);
    List<Comparison> comparisons = input.homes(wanted).stream().map(input.job()::compare).toList();
    print(comparisons, wanted != null, simulated);
    return input.clean() || wanted != null ? 0 : 1;
  }

  /** How many years are simulated; 0 for none. */
  private int years() {
    if (years != null && (years < 1 || years > Simulated.MOST_YEARS)) {
      throw new UsageException(
          "--simulate is " + years + ", but must be from 1 to " + Simulated.MOST_YEARS);
    }
    return years == null ? 0 : years;
  }

  private void print(List<Comparison> comparisons, boolean single, int years) {
    PrintWriter out = spec.commandLine().getOut();
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    List<Simulated> simulated =
        comparisons.stream().map(comparison -> Simulated.of(comparison, years)).toList();
    switch (format) {
      case JSON ->
          out.println(
              single
                  ? ComparisonJson.one(simulated.get(0), words)
                  : ComparisonJson.many(simulated, words));
      case CSV -> out.print(grid ? ComparisonCsv.grid(comparisons) : ComparisonCsv.of(simulated));
      case TABLE -> simulated.forEach(one -> out.println(table(one, words)));
    }
    out.flush();
  }

  private String table(Simulated one, Wording words) {
    return grid ? GridTable.of(one.comparison(), words) : ComparisonTable.of(one, words);
  }
}
