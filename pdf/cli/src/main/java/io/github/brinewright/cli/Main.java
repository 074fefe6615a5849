package io.github.brinewright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Entry of the command line. Exit codes: 0 done, 1 the job has errors, 2 wrong usage. */
@Command(
    name = "brinewright",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Sizes, quotes and sets up residential ion-exchange water softeners.",
    subcommands = {
      CompareCommand.class,
      ProposeCommand.class,
      ServiceCommand.class,
      SettingsCommand.class,
      FormCommand.class,
      CheckCommand.class,
      TableCommand.class,
      PageCommand.class
    },
    footer = {
      "",
      "Exit codes: 0 done, 1 the job has errors, 2 wrong usage.",
      "A job folder needs one file, sites.csv; the README lists its columns."
    })
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  Main() {
    spec = CommandSpec.create();
  }

  /** Version of the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"brinewright " + (version == null ? "(development)" : version)};
    }
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Name a command: compare, propose, service, settings, form, check, table or page.");
  }

  /**
   * Runs the command line and ends the process with its exit code.
   *
   * @param args as they are typed after the name of the command
   */
  public static void main(String[] args) {
    // What libraries log is not for whoever reads the screen.
    System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
    CommandLine line = commandLine();
    line.setOut(writer(FileDescriptor.out));
    line.setErr(writer(FileDescriptor.err));
    System.exit(run(line, args));
  }

  /** Runs a command and sees that all that it printed has reached its reader. */
  static int run(CommandLine line, String... args) {
    int code;
    try {
      code = line.execute(args);
    } catch (OutOfMemoryError | StackOverflowError exhausted) {
      code = Failures.report(exhausted, line.getErr());
    }
    boolean lost = line.getOut().checkError();
    if (lost) {
      line.getErr().println("brinewright: what is printed could not be written; is the disk full?");
    }
    line.getErr().flush();
    return lost && code == 0 ? CommandLine.ExitCode.SOFTWARE : code;
  }

  /** {@return the command line, for tests and for programs that run it within their own process} */
  public static CommandLine commandLine() {
    CommandLine line = new CommandLine(new Main());
    line.getSubcommands().values().forEach(Main::addColumns);
    line.registerConverter(LocalDate.class, Dated::parse);
    line.registerConverter(Path.class, Main::path);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (failure, args) -> {
          CommandLine command = failure.getCommandLine();
          command.getErr().println("brinewright: " + failure.getMessage());
          CommandLine.UnmatchedArgumentException.printSuggestions(failure, command.getErr());
          command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help.");
          return CommandLine.ExitCode.USAGE;
        });
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> Failures.report(failure, command.getErr()));
    return line;
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException noPath) {
      throw new CommandLine.TypeConversionException(Failures.inWords(noPath));
    }
  }

  private static void addColumns(CommandLine command) {
    if (command.getCommand() instanceof WithColumns columns) {
      columns.addTo(command.getCommandSpec());
    }
  }

  /** Straight to the system: its print streams would keep a failure to themselves. */
  private static PrintWriter writer(FileDescriptor to) {
    return new PrintWriter(
        new CleanWriter(new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8)),
        true);
  }
}
