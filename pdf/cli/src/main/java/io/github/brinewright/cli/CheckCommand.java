package io.github.brinewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Validates a job folder and prints all problems. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads a job folder and prints every problem in it.")
final class CheckCommand implements Callable<Integer> {
  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "JOBFOLDER",
      description = "Folder with sites.csv, a proposal, or a filled form.")
  @Nullable Path folder;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    JobInput input = JobInput.open(Objects.requireNonNull(folder), spec.commandLine().getErr());
    input.each(row -> {});
    if (input.clean()) {
      int units = input.shared().prices().offers().size();
      out.println("No problems: homes " + input.count().homes() + ", units " + units + ".");
      return 0;
    }
    out.println(
        "Problems: "
            + input.problems()
            + "; homes that cannot be done: "
            + input.count().refused()
            + ".");
    return 1;
  }
}
