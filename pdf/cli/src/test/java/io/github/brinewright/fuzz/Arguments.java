package io.github.brinewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** A command line of a line for each argument; whatever it writes goes to one temporary file. */
final class Arguments {
  static final String SEED =
      "compare\n--hardness\n22gpg\n--people\n3\n--iron\n0.8\n--ph\n7.1\n--bathrooms\n2\n"
          + "--rated-grains\n32000\n--control\nclock\n--format\njson\n--grid";

  /** Other beginnings, of which an input takes one by its length. */
  static final List<String> OTHERS =
      List.of(
          "service\n--hardness\n24gpg\n--people\n4\n--rated-grains\n40000\n--control\nclock\n"
              + "--days\n7\n--refill-min\n10\n--refill-gpm\n0.5\n--meter-price\n260",
          "settings\n--hardness\n24gpg\n--people\n4\n--rated-grains\n40000\n--control\nclock\n"
              + "--hour\n2\n--out\nx.pdf",
          "check\n../../samples/job",
          "compare\n../../samples/job\n--site\nH01\n--format\ncsv",
          "propose\n../../samples/job\n--site\nH01\n--unit\nx\n--dosage\n6\n--date\n2026-05-02\n"
              + "--out\nx",
          "form\n../../samples/job\n--site\nH01\n--out\nx.pdf\n--date\n2026-05-02",
          "table\n../../samples/job/units.csv\n--out\nx.xlsx");

  private static final int MOST_DIGITS = 3;
  private static final Path PLACE = place();

  private Arguments() {}

  private static Path place() {
    try {
      return Files.createTempDirectory("fuzz");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static void run(String lines) {
    List<String> args = new ArrayList<>(List.of(lines.split("\n", -1)));
    for (int i = 0; i < args.size(); i++) {
      args.set(i, safe(i == 0 ? "" : args.get(i - 1), args.get(i)));
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    int code = line.execute(args.toArray(String[]::new));
    assertThat(code).as("%s: %s", args, err).isBetween(0, 2);
    assertThat(err.toString())
        .as("%s", args)
        .doesNotContain("fault of the program", "Exception", "null", "java.");
  }

  /** Nothing is written but in the temporary folder, and no years without end are asked for. */
  private static String safe(String before, String arg) {
    if (before.equals("--out") && !arg.startsWith("-")) {
      return PLACE.resolve("written").toString();
    }
    if (arg.startsWith("--out=") || arg.startsWith("@")) {
      return "--help";
    }
    boolean years = before.startsWith("--simulate") && arg.length() > MOST_DIGITS;
    return years || arg.matches("--simulate=.{4,}") ? "50" : arg;
  }
}
