package io.github.brinewright.cli;

import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.page.PageServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves a job folder as a page on this machine. */
@Command(
    name = "page",
    mixinStandardHelpOptions = true,
    description =
        "Serves a job folder as a page for a browser on this machine alone, until Ctrl-C: fill a"
            + " visit, compare sizes, take documents away.")
final class PageCommand implements Callable<Integer> {
  @Spec CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "JOBFOLDER",
      description = "Folder with the dealer's files; sites.csv need not be among them.")
  @Nullable Path folder;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "Port of 127.0.0.1, 1 to 65535 (default: any that is free).")
  int port;

  @Mixin Dated dated = new Dated();

  @Override
  public Integer call() throws IOException, InterruptedException {
    Path from = Objects.requireNonNull(folder);
    if (!Files.isDirectory(from)) {
      throw new UsageException(from + " is not a folder");
    }
    if (port < 0 || port > PageServer.HIGHEST_PORT) {
      throw new UsageException(
          "--port is " + port + ", but must be from 0 to " + PageServer.HIGHEST_PORT);
    }
    if (!usable(from)) {
      return 1;
    }
    dated.day();
    try (PageServer server = start(from)) {
      PrintWriter out = spec.commandLine().getOut();
      out.println(server.address());
      out.flush();
      // Until the process is ended, as by Ctrl-C.
      new CountDownLatch(1).await();
    }
    return 0;
  }

  private PageServer start(Path from) throws IOException {
    try {
      return PageServer.start(from, port, dated::day);
    } catch (java.net.BindException taken) {
      throw new UsageException(
          "port " + port + " cannot be used (" + taken.getMessage() + "); name another one");
    }
  }

  /** Says what is wrong; a page is served where what the homes share is free of errors. */
  private boolean usable(Path from) {
    JobReading all =
        Files.exists(from.resolve("sites.csv")) || Files.exists(from.resolve("sites.xlsx"))
            ? JobFolder.read(from)
            : JobFolder.readWithoutHomes(JobFiles.in(from));
    ProblemList.say(all.problems(), spec.commandLine().getErr());
    return all.job().isPresent();
  }
}
