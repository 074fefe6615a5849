package io.github.brinewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A job folder of two homes, and the command line to run in it. */
abstract class CommandTest {
  static final String SITES =
      "site_id,customer,hardness_gpg,people\n" + "A1,Ann,18,3\n" + "B2,Ben,27,5\n";

  @TempDir Path folder;
  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();

  @BeforeEach
  void writeJob() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), SITES);
  }

  int run(String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(args);
  }

  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** The names without those of the summary of all homes. */
  static List<String> documents(Path folder) throws IOException {
    return names(folder).stream().filter(name -> !name.startsWith("summary.")).toList();
  }
}
