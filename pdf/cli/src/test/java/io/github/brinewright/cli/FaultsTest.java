package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What may go wrong around the program is said in words, and ends it with a code that is not 0. */
class FaultsTest extends CommandTest {
  private int runMain(Writer to, String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(to, true));
    line.setErr(new PrintWriter(err, true));
    return Main.run(line, args);
  }

  @Test
  void whatCannotBePrintedIsAnError() {
    Writer full =
        new java.io.OutputStreamWriter(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("no space left");
              }
            });

    assertThat(runMain(full, "check", folder.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("what is printed could not be written");
    assertThat(runMain(new StringWriter(), "check", folder.toString())).isZero();
  }

  @Test
  void manyProblemsOfAKindAreCountedNotListed() throws IOException {
    String rows =
        IntStream.range(0, 120)
            .mapToObj(i -> "H" + i + ",x,18,0")
            .collect(Collectors.joining("\n"));
    Files.writeString(folder.resolve("sites.csv"), SITES + rows + "\nC3,,0,2\n");

    assertThat(run("check", folder.toString())).isEqualTo(1);
    assertThat(out.toString()).contains("Problems: 121; homes that cannot be done: 121");
    assertThat(err.toString().lines().filter(line -> line.contains("column people: \"0\"")))
        .hasSize(ProblemList.MOST_OF_A_KIND);
    assertThat(err.toString())
        .contains("sites.csv, column people: and 100 more of this kind")
        .contains("column hardness_gpg: \"0\"");
  }

  @Test
  void ofManyKnownNamesTheNearestAreTold() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), "site_id,people,zzzzzzzzzz\nA1,2,3\n");

    run("check", folder.toString());
    assertThat(err.toString()).containsPattern("of \\d+ known the nearest are: (\\w+, ){4}\\w+");
  }

  @Test
  void errorsOfOtherHomesDoNotSpoilTheOneAskedFor() throws IOException {
    Files.writeString(folder.resolve("sites.csv"), SITES + "C3,Cyd,0,4\n");
    String to = folder.resolve("to").toString();

    assertThat(run("compare", folder.toString(), "--site", "A1")).isZero();
    assertThat(run("propose", folder.toString(), "--site", "A1", "--out", to)).isZero();
    assertThat(err.toString()).contains("sites.csv, row 4");
    assertThat(run("compare", folder.toString())).isEqualTo(1);
    assertThat(run("compare", folder.toString(), "--site", "C3")).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "compare --hardness 20gpg --people 2 --simulate 0 | --simulate is 0, but must be from 1",
        "compare --hardness 20gpg --people 2 --site A1 | --site is a home of a JOBFOLDER",
        "form . --out x.pdf --date 2026-2-30 | is no day; write year, month and day",
        "check nowhere/at/all | there is no file or folder nowhere/at/all",
        "form . --out x.pdf --date 0000-01-01 | must be of the years 1900 to 2199"
      })
  void wrongUseIsNamed(String args, String said) {
    assertThat(run(args.split(" "))).isEqualTo(2);
    assertThat(err.toString()).contains(said);
  }

  @Test
  void aDayOfNoLivingMemoryIsRefused() throws IOException {
    Files.writeString(
        folder.resolve("sites.csv"),
        "site_id,people,hardness_gpg,tested_on\nA1,2,9,0000-01-01\nA2,2,9,2026-01-01\n");

    run("check", folder.toString());
    assertThat(err.toString()).contains("row 2, column tested_on").doesNotContain("row 3");
  }

  @Test
  void whatKilledRunsLeftIsRemovedAndWhatLivingOnesWriteIsNot() throws IOException {
    String tail = "-00000000-0000-0000-0000-000000000000";
    Path dead = Files.createFile(folder.resolve(".brinewright-999999999999" + tail));
    Path alive =
        Files.createFile(folder.resolve(".brinewright-" + ProcessHandle.current().pid() + tail));

    assertThat(run("form", folder.toString(), "--out", folder.resolve("f.pdf").toString()))
        .isZero();
    assertThat(dead).doesNotExist();
    assertThat(alive).exists();
  }

  @Test
  void whatSteersATerminalIsPrintedAsDots() throws IOException {
    StringWriter seen = new StringWriter();
    try (PrintWriter writer = new PrintWriter(new CleanWriter(seen))) {
      writer.print("a\u001B[31mb\u202Ec\u009Bd\u2066\te");
      writer.print('\u0007');
      writer.println();
    }
    assertThat(seen.toString())
        .isEqualTo("a\u00B7[31mb\u00B7c\u00B7d\u00B7\te\u00B7" + System.lineSeparator());
  }

  @Test
  void failuresAreWordsAndFaultsOfTheProgramSayThatTheyAre() throws IOException {
    assertThat(Failures.inWords(new UncheckedIOException(new AccessDeniedException("/a/b"))))
        .isEqualTo("/a/b: it may not be read or written with the rights that you have here");
    assertThat(Failures.inWords(new OutOfMemoryError())).contains("needs more memory", "-Xmx");
    String fault = Failures.inWords(new NullPointerException());
    assertThat(fault).contains("a fault of the program, not of what you gave it");
    Path kept = Path.of(fault.substring(fault.lastIndexOf(' ') + 1));
    assertThat(Files.readString(kept)).contains("NullPointerException");
    Files.delete(kept);
  }
}
