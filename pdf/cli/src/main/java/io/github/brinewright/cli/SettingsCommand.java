package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.sizing.ControlOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the installer's settings sheet. */
@Command(
    name = "settings",
    mixinStandardHelpOptions = true,
    description =
        "Writes the settings sheet of a softener for the installer, as PDF: of one unit at one home,"
            + " of the softener that is already in the house, or without a job folder of any"
            + " softener described by options.")
final class SettingsCommand implements Callable<Integer>, WithColumns {
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

  @Option(names = "--unit", paramLabel = "ID", description = "The unit, of a job folder.")
  @Nullable String unit;

  @Option(
      names = "--present",
      description = "The softener that is already in the house, to be set right.")
  boolean present;

  @Option(
      names = "--with-meter",
      description = "With --present: as it is set once a meter is put on it.")
  boolean withMeter;

  @Mixin OneFile file = new OneFile();

  @Mixin Dated dated = new Dated();

  @Mixin HowSet how = new HowSet();

  private final QuickHome quick = new QuickHome();

  /** Adds an option for each entry of a visit. */
  @Override
  public void addTo(CommandSpec command) {
    quick.addTo(command);
  }

  @Override
  public Integer call() throws IOException {
    ControlOptions options = how.options(dated.day());
    if (folder != null) {
      return ofJob(folder, options);
    }
    if (present || withMeter || unit != null || site != null) {
      throw new UsageException(
          "--site, --unit, --present and --with-meter need a JOBFOLDER; or leave them out and"
              + " describe the home and the softener by options");
    }
    return write(new QuickSheet(quick).pdf(dated.day(), options));
  }

  private int ofJob(Path path, ControlOptions options) throws IOException {
    UnitChoice choice = new UnitChoice(quick, unit);
    choice.requireFits(present, withMeter);
    JobInput input = JobInput.open(path, spec.commandLine().getErr());
    String home = input.siteOr(site);
    if (home == null) {
      throw new UsageException("name a home with --site");
    }
    Optional<Job> job = input.only(home);
    return job.isEmpty() ? 1 : ofHome(job.get(), choice, options);
  }

  private int ofHome(Job job, UnitChoice choice, ControlOptions options) throws IOException {
    QuotedHome quoted = job.homes().get(0);
    Proposals documents = Proposals.of(job);
    return write(
        present
            ? ofPresent(documents, quoted, options)
            : documents
                .settings(quoted, choice.choice(), dated.day(), options)
                .orElseThrow(() -> choice.notFound(job)));
  }

  private byte[] ofPresent(Proposals documents, QuotedHome home, ControlOptions options) {
    if (home.site().present().isEmpty()) {
      throw new UsageException(
          "home \""
              + home.site().id()
              + "\" has no present softener; fill in present_control and what is known of it");
    }
    ServiceOption.Kind kind = withMeter ? ServiceOption.Kind.METERED : ServiceOption.Kind.SET_RIGHT;
    Optional<byte[]> sheet = documents.presentSettings(home, kind, dated.day(), options);
    return sheet.orElseThrow(
        () ->
            new UsageException(
                "no setting of the present softener serves home \""
                    + home.site().id()
                    + "\"; see what the service report advises"));
  }

  private int write(byte[] sheet) throws IOException {
    spec.commandLine().getOut().println("Settings sheet written to " + file.write(sheet));
    return 0;
  }
}
