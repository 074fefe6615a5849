package io.github.brinewright.cli;

import io.github.brinewright.exchange.ServiceJson;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Studies the softener that is already in a house. */
@Command(
    name = "service",
    mixinStandardHelpOptions = true,
    description = {
      "Says what the softener in a house does, what is wrong with it, and what comes of setting it"
          + " right, putting a meter on it or replacing it: of a job folder, or of a home"
          + " described by options."
    })
final class ServiceCommand implements Callable<Integer>, WithColumns {
  /** Forms of the output on the screen. */
  enum Format {
    TABLE,
    JSON
  }

  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "JOBFOLDER",
      description = "Folder with sites.csv, a proposal, or a filled form.")
  @Nullable Path folder;

  @Option(
      names = "--site",
      paramLabel = "ID",
      description = "The home; not needed with a PDF, which is about one.")
  @Nullable String site;

  @Option(
      names = "--format",
      description = "table or json, on the screen (default: table, or nothing with --out).")
  @Nullable Format format;

  @Option(names = "--out", paramLabel = "FILE", description = "The report to write, as PDF.")
  @Nullable Path out;

  @Mixin Dated dated = new Dated();

  private final QuickVisit quick = new QuickVisit();
  private final ServicePriceOptions prices = new ServicePriceOptions();

  @Override
  public void addTo(CommandSpec command) {
    quick.addTo(command);
    prices.addTo(command);
  }

  @Override
  public Integer call() throws IOException {
    if (folder == null) {
      if (site != null) {
        throw new UsageException("--site is a home of a JOBFOLDER; name that too");
      }
      Job job = quick.job(prices.files(), prices.names());
      return study(job, job.homes().get(0));
    }
    if (quick.given()) {
      throw new UsageException("give either a JOBFOLDER or options of a home, not both");
    }
    return ofJob(JobInput.open(folder, spec.commandLine().getErr()));
  }

  private int ofJob(JobInput input) throws IOException {
    String wanted = input.siteOr(site);
    OneHome one = new OneHome(wanted == null ? "" : wanted);
    Names withSoftener = new Names();
    input.each(
        row -> {
          one.look(row);
          row.home().site().present().ifPresent(bed -> withSoftener.add(row.home().site().id()));
        });
    if (!input.hadHomes()) {
      return 1;
    }
    if (wanted == null) {
      throw new UsageException("name a home with --site" + known(withSoftener));
    }
    QuotedHome home = one.found().home();
    if (home.site().present().isEmpty()) {
      throw without(home, withSoftener);
    }
    return study(prices.over(input.shared().only(one.found())), home);
  }

  private static UsageException without(QuotedHome home, Names others) {
    return new UsageException(
        "nothing is known of a softener at home \""
            + home.site().id()
            + "\"; fill present_control and present_rated_grains of its row"
            + known(others));
  }

  /** Writes and prints only when all of it is worked out. */
  private int study(Job job, QuotedHome home) throws IOException {
    if (home.site().present().isEmpty()) {
      throw without(home, new Names());
    }
    byte @Nullable [] report =
        out == null ? null : Proposals.of(job).serviceReport(home, dated.day()).pdf();
    String text = text(job, home);
    if (report != null && out != null) {
      written(OneFile.write(out, report));
    }
    spec.commandLine().getOut().print(text);
    spec.commandLine().getOut().flush();
    return 0;
  }

  /** Beside what is printed for another program, it is said where that does not read. */
  private void written(Path target) {
    var line = spec.commandLine();
    (format == null ? line.getOut() : line.getErr()).println("Service report written to " + target);
  }

  private String text(Job job, QuotedHome home) {
    if (format == null && out != null) {
      return "";
    }
    ServiceStudy study = job.service(home);
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    return format == Format.JSON
        ? ServiceJson.one(study, words) + System.lineSeparator()
        : ServiceTable.of(study, words);
  }

  private static String known(Names homes) {
    return homes.isEmpty() ? "" : "; homes with a softener are: " + homes;
  }
}
