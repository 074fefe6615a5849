package io.github.brinewright.cli;

import io.github.brinewright.cli.Batch.Written;
import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SafeFile;
import io.github.brinewright.proposal.BatchSummary;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.Proposals;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes proposals as PDF. */
@Command(
    name = "propose",
    mixinStandardHelpOptions = true,
    description = "Writes a proposal as PDF for one home or for all homes of a job folder.")
final class ProposeCommand implements Callable<Integer> {
  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "JOBFOLDER",
      description = "Folder with sites.csv, a proposal, or a filled form.")
  @Nullable Path folder;

  /** One home or all. */
  static final class Which {
    @Option(names = "--site", paramLabel = "ID", required = true, description = "One home.")
    @Nullable String site;

    @Option(names = "--all", required = true, description = "All homes.")
    boolean all;
  }

  @ArgGroup(multiplicity = "0..1")
  Which which = new Which();

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the PDF files; made when it is not there.")
  @Nullable Path out;

  @Option(
      names = "--one-page",
      description = "Writes the one-page comparison of three sizes instead of the proposal.")
  boolean onePage;

  @Option(
      names = "--since",
      paramLabel = "PDF",
      description = "An earlier proposal for the same home: says what has changed since.")
  @Nullable Path since;

  @Option(
      names = "--prices",
      paramLabel = "JOBFOLDER",
      description = "With a proposal or a form: takes the price list and the dealer from here.")
  @Nullable Path prices;

  @Option(
      names = "--without-data",
      description = "Leaves out the data by which a proposal can be opened again.")
  boolean withoutData;

  @Option(
      names = "--unit",
      paramLabel = "ID",
      description = "A unit that the customer asked for, quoted beside the recommended one.")
  @Nullable String unit;

  @Option(names = "--dosage", paramLabel = "LB_PER_FT3", description = "With --unit: its dosage.")
  @Nullable String dosage;

  @Option(names = "--control", paramLabel = "CONTROL", description = "With --unit: its control.")
  @Nullable String control;

  @Mixin Dated dated = new Dated();

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Path from = Objects.requireNonNull(folder);
    if (which.site == null && !which.all && Files.isDirectory(from)) {
      throw new UsageException("name a home with --site, or write all with --all");
    }
    JobInput input = prices == null ? JobInput.open(from, err) : JobInput.open(from, prices, err);
    Refusals refusals = new Refusals();
    List<Written> written = which.site == null ? all(input, refusals) : one(input, which.site);
    if (!input.hadHomes()) {
      err.println("Nothing was written.");
      return 1;
    }
    written.stream().filter(Written::failed).map(Written::line).forEach(err::println);
    return finish(input, refusals, written);
  }

  private List<Written> all(JobInput input, Refusals refusals) {
    List<Batch> begun = new ArrayList<>();
    input.each(
        row -> {
          if (begun.isEmpty()) {
            begun.add(batch(input.shared(), row.home(), input.rows()));
          }
          begun.get(0).add(row);
        },
        refusals::add);
    return begun.isEmpty() ? List.of() : begun.get(0).end();
  }

  private List<Written> one(JobInput input, String site) {
    OneHome wanted = new OneHome(site);
    input.each(wanted::look);
    if (!input.hadHomes()) {
      return List.of();
    }
    Batch batch = batch(input.shared(), wanted.found().home(), 1);
    batch.add(wanted.found());
    return batch.end();
  }

  /** Begins when it is sure that there is something to write. */
  private Batch batch(Job job, QuotedHome first, int homes) {
    Proposals proposals = proposals(job, first, homes);
    Path target = Objects.requireNonNull(out);
    createFolder(target);
    try {
      return new Batch(proposals, job, target, dated.day(), new Progress(homes, which.all));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private int finish(JobInput input, Refusals refusals, List<Written> written) throws IOException {
    Path target = Objects.requireNonNull(out);
    Dealer dealer = input.shared().dealer();
    List<HomeOutcome> outcomes =
        Stream.concat(refusals.outcomes(dealer), written.stream().map(Written::outcome)).toList();
    boolean summed = which.all && outcomes.size() > 1;
    if (summed) {
      Batch.summarize(new BatchSummary(outcomes, dealer, dated.day()), target);
    }
    report(written, target, input.count().refused(), summed);
    boolean failed = written.stream().anyMatch(Written::failed);
    return (input.clean() || which.site != null) && !failed ? 0 : 1;
  }

  private void report(List<Written> written, Path target, int refused, boolean summed) {
    List<String> lines =
        written.stream().filter(each -> !each.failed()).map(Written::line).toList();
    long unchanged = written.stream().filter(Written::unchanged).count();
    PrintWriter out = spec.commandLine().getOut();
    lines.forEach(out::println);
    out.println(
        (onePage ? "Pages" : "Proposals")
            + " written to "
            + target
            + ": "
            + (lines.size() - unchanged)
            + (unchanged == 0 ? "" : "; unchanged: " + unchanged)
            + (refused == 0 ? "" : "; homes refused: " + refused)
            + (summed ? "; all at a glance in " + BatchSummary.PDF : ""));
  }

  /** The documents asked for. */
  private Proposals proposals(Job job, QuotedHome first, int homes) {
    Proposals proposals = Proposals.of(job);
    if (onePage) {
      proposals = proposals.onePage();
    }
    if (withoutData) {
      proposals = proposals.withoutData();
    }
    if (unit != null) {
      proposals = proposals.wishing(wish(job, unit));
    } else if (dosage != null || control != null) {
      throw new UsageException("--dosage and --control go with --unit; name the unit");
    }
    if (since == null) {
      return proposals;
    }
    if (homes > 1) {
      throw new UsageException("--since is about one home; name it with --site");
    }
    return proposals.since(JobInput.earlier(since, first, spec.commandLine().getErr()));
  }

  private CandidateChoice wish(Job job, String wished) {
    if (onePage) {
      throw new UsageException("--unit goes with proposals, not with --one-page; leave one out");
    }
    if (job.prices().offer(wished).isEmpty()) {
      throw UnitChoice.notFound(wished, job);
    }
    return UnitChoice.choice(wished, dosage, control);
  }

  private static void createFolder(Path target) {
    try {
      Files.createDirectories(target);
      SafeFile.sweep(target);
    } catch (IOException failure) {
      throw new UsageException(target + " cannot be made a folder; " + Failures.inWords(failure));
    }
  }
}
