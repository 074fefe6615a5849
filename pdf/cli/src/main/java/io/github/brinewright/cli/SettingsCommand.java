package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.Control;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
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
    description = "Writes the settings sheet of one unit at one home for the installer, as PDF.")
final class SettingsCommand implements Callable<Integer> {
  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "JOBFOLDER",
      description = "Folder with sites.csv, a proposal, or a filled form.")
  @Nullable Path folder;

  @Option(
      names = "--site",
      paramLabel = "ID",
      description = "The home; not needed with a PDF, which is about one.")
  @Nullable String site;

  @Option(names = "--unit", required = true, paramLabel = "ID", description = "The unit.")
  @Nullable String unit;

  @Option(
      names = "--dosage",
      paramLabel = "LB",
      description = "Salt dosage, lb for each cubic foot (default: the best for this home).")
  @Nullable Double dosage;

  @Option(
      names = "--control",
      description = "clock, weekdays, metered_at_once or metered_at_night (default: the best).")
  @Nullable Control control;

  @Mixin OneFile file = new OneFile();

  @Mixin Dated dated = new Dated();

  @Override
  public Integer call() throws IOException {
    JobInput input = JobInput.read(Objects.requireNonNull(folder), spec.commandLine().getErr());
    if (!input.hasHomes()) {
      return 1;
    }
    String home = input.siteOr(site);
    if (home == null) {
      throw new UsageException("name a home with --site");
    }
    byte[] sheet =
        Proposals.of(input.job())
            .settings(input.homes(home).get(0), choice(), dated.day())
            .orElseThrow(() -> new UsageException(notFound(input.job())));
    spec.commandLine().getOut().println("Settings sheet written to " + file.write(sheet));
    return 0;
  }

  private CandidateChoice choice() {
    CandidateChoice choice = CandidateChoice.ofSoftener(Objects.requireNonNull(unit));
    if (control != null) {
      choice = choice.control(control);
    }
    return dosage == null ? choice : choice.dosage(saltDosage(dosage));
  }

  private static SaltDosage saltDosage(double pounds) {
    try {
      return SaltDosage.ofPoundsPerCubicFoot(pounds);
    } catch (IllegalArgumentException outOfRange) {
      throw new UsageException("--dosage is " + pounds + ": " + outOfRange.getMessage());
    }
  }

  private String notFound(Job job) {
    String known =
        job.prices().offers().stream()
            .map(offer -> offer.softener().id())
            .sorted()
            .collect(Collectors.joining(", "));
    return "there is no unit \""
        + unit
        + "\" with that dosage and control; units are: "
        + known
        + ", with the dosages and controls that units.csv gives them";
  }
}
