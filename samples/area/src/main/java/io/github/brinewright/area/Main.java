package io.github.brinewright.area;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Studies the softeners of a service area. */
@Command(
    name = "area",
    description = "What the softeners of a town take, and what would change it.",
    mixinStandardHelpOptions = true,
    subcommands = {StudyCommand.class, InventCommand.class, LoopCommand.class})
public final class Main implements Callable<Integer> {
  private static final int USAGE = 2;

  private Main() {}

  /**
   * Runs a command.
   *
   * @param arguments its name and options
   */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  static int run(String... arguments) {
    return new CommandLine(new Main())
        .registerConverter(Locale.class, Locale::forLanguageTag)
        .setExecutionExceptionHandler(
            (failed, line, parsed) -> {
              if (failed instanceof IllegalArgumentException || failed instanceof IOException) {
                line.getErr().println(failed.getMessage());
                return USAGE;
              }
              throw failed;
            })
        .execute(arguments);
  }

  @Override
  public Integer call() {
    CommandLine.usage(this, System.err);
    return USAGE;
  }
}
