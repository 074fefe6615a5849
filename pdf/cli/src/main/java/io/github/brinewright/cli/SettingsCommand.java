package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.softener.Control;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
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
      description = "clock, metered_at_once or metered_at_night (default: the best).")
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
    QuotedHome quoted = input.homes(home).get(0);
    Comparison comparison = input.job().compare(quoted);
    var candidate =
        comparison.candidates().stream()
            .filter(each -> each.softener().id().equals(unit))
            .filter(wanted())
            .findFirst()
            .orElseThrow(() -> new UsageException(notFound(comparison)));
    SettingsSheet sheet =
        new SettingsSheet(comparison, candidate, input.job().dealer(), dated.day());
    spec.commandLine().getOut().println("Settings sheet written to " + file.write(sheet.toPdf()));
    return 0;
  }

  private Predicate<io.github.brinewright.comparison.Candidate> wanted() {
    return candidate ->
        (control == null || candidate.setup().control() == control)
            && (dosage == null
                || candidate
                    .setup()
                    .dosage()
                    .filter(d -> Math.abs(d.poundsPerCubicFoot() - dosage) < 1e-6)
                    .isPresent());
  }

  private String notFound(Comparison comparison) {
    String known =
        comparison.bestOfEachUnit().stream()
            .map(candidate -> candidate.softener().id())
            .sorted()
            .collect(Collectors.joining(", "));
    return "there is no unit \""
        + unit
        + "\" with that dosage and control; units are: "
        + known
        + ", with the dosages and controls that units.csv gives them";
  }
}
