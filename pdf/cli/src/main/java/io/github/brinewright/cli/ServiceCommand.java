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
import java.util.stream.Collectors;
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
    JobInput input = JobInput.read(folder, spec.commandLine().getErr());
    if (!input.hasHomes()) {
      return 1;
    }
    String wanted = input.siteOr(site);
    if (wanted == null) {
      throw new UsageException("name a home with --site" + known(input.job()));
    }
    return study(prices.over(input.job()), input.homes(wanted).get(0));
  }

  /** Writes and prints only when all of it is worked out. */
  private int study(Job job, QuotedHome home) throws IOException {
    if (home.site().present().isEmpty()) {
      throw new UsageException(
          "nothing is known of a softener at home \""
              + home.site().id()
              + "\"; fill present_control and present_rated_grains of its row"
              + known(job));
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

  private static String known(Job job) {
    String homes =
        job.homes().stream()
            .map(QuotedHome::site)
            .filter(each -> each.present().isPresent())
            .map(each -> each.id())
            .collect(Collectors.joining(", "));
    return homes.isEmpty() ? "" : "; homes with a softener are: " + homes;
  }
}
