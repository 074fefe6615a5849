package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.Proposals;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the form of a site visit. */
@Command(
    name = "form",
    mixinStandardHelpOptions = true,
    description = "Writes a form for a site visit as PDF; filled, it is taken for a job folder.")
final class FormCommand implements Callable<Integer> {
  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "JOBFOLDER",
      description = "Folder with the dealer's files; sites.csv need not be among them.")
  @Nullable Path folder;

  @Option(
      names = "--site",
      paramLabel = "ID",
      description = "A home of sites.csv that the form begins with (default: a blank form).")
  @Nullable String site;

  @Mixin OneFile file = new OneFile();

  @Mixin Dated dated = new Dated();

  @Override
  public Integer call() throws IOException {
    Path from = Objects.requireNonNull(folder);
    Optional<Job> job = JobInput.readWithoutHomes(from, spec.commandLine().getErr());
    if (job.isEmpty()) {
      return 1;
    }
    Map<String, String> cells = site == null ? Map.of() : JobInput.cells(from, site);
    byte[] form = Proposals.of(job.get()).form(cells, dated.day());
    spec.commandLine().getOut().println("Form written to " + file.write(form));
    return 0;
  }
}
