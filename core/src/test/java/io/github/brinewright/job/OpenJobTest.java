package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Homes that are read one by one. */
class OpenJobTest {
  private static final String HEADER = "site_id,customer,hardness_gpg,people\n";

  @TempDir Path folder;
  private final List<HomeRow> homes = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private OpenJob open(String sites) throws IOException {
    Files.writeString(folder.resolve("sites.csv"), sites);
    return JobFolder.open(JobFiles.in(folder));
  }

  private OpenJob.Count read(OpenJob job) {
    return job.each(homes::add, problems::add);
  }

  private List<String> ids() {
    return homes.stream().map(row -> row.home().site().id()).toList();
  }

  private static String rows(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> "N" + i + ",x,18,3\n")
        .collect(Collectors.joining("", HEADER, ""));
  }

  @Test
  void homesComeInTheirOrderAndAreThoseOfTheWholeReading() throws IOException {
    OpenJob job = open(rows(500));

    assertThat(read(job)).isEqualTo(new OpenJob.Count(500, 0));
    assertThat(job.rows()).isEqualTo(500);
    assertThat(homes.stream().map(HomeRow::home).toList())
        .isEqualTo(JobFolder.read(folder).job().orElseThrow().homes());
    assertThat(homes.get(7).cells())
        .containsEntry("site_id", "N7")
        .containsEntry("hardness_gpg", "18")
        .hasSize(4);
  }

  @Test
  void anIdThatStandsTwiceIsFoundHoweverFarApartAndInWhateverLetters() throws IOException {
    OpenJob job = open(rows(3_000) + "n17,x,18,3\nN3000,x,18,3\nN17,x,18,3\n");

    assertThat(read(job)).isEqualTo(new OpenJob.Count(3_001, 2));
    assertThat(problems)
        .extracting(Problem::code, Problem::row, Problem::value)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(ProblemCode.ID_TWICE, 3_002, "n17"),
            org.assertj.core.groups.Tuple.tuple(ProblemCode.ID_TWICE, 3_004, "N17"));
  }

  @Test
  void problemsComeRowByRowAndTheOtherHomesAreRead() throws IOException {
    OpenJob job = open(HEADER + "A,x,18,0\nB,x,18\nC,x,18,3\nD,x,0,3\n");

    assertThat(read(job)).isEqualTo(new OpenJob.Count(1, 3));
    assertThat(ids()).containsExactly("C");
    assertThat(problems).extracting(Problem::row).containsExactly(2, 3, 5);
  }

  private static void append(Path file) throws IOException {
    Files.writeString(file, Files.readString(file) + "Z,x,18,3\n");
  }

  private static void touch(Path file) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
  }

  /** Something that happens to a file. */
  private interface Change {
    void to(Path file) throws IOException;
  }

  private void changedMeanwhile(Change change) throws IOException {
    OpenJob job = open(rows(10));
    Consumer<HomeRow> taker =
        row -> {
          homes.add(row);
          if (homes.size() == 5) {
            try {
              change.to(folder.resolve("sites.csv"));
            } catch (IOException failure) {
              throw new java.io.UncheckedIOException(failure);
            }
          }
        };
    job.each(taker, problems::add);
    assertThat(problems).extracting(Problem::code).contains(ProblemCode.FILE_CHANGED);
  }

  @Test
  void aFileThatGrowsIsAProblem() throws IOException {
    changedMeanwhile(OpenJobTest::append);
  }

  @Test
  void aFileOfTheSameSizeThatWasChangedIsAProblem() throws IOException {
    changedMeanwhile(OpenJobTest::touch);
  }

  @Test
  void aFileThatIsGoneIsAProblem() throws IOException {
    changedMeanwhile(Files::delete);
  }

  @Test
  void whatAllHomesShareIsCarriedAsItWasRead() throws IOException {
    Files.writeString(folder.resolve("dealer.properties"), "name=First\n");
    OpenJob job = open(rows(2));
    Files.writeString(folder.resolve("dealer.properties"), "name=Second\n");
    read(job);

    Job one = job.shared().orElseThrow().only(homes.get(1));
    var carried = JobExcerpt.of(one.files(), one.dealer(), homes.get(1).home());
    assertThat(carried).containsEntry("dealer.properties", "name=First\n");
    assertThat(carried.get("sites.csv")).contains("N1").doesNotContain("N0");
    assertThat(JobFolder.read(JobFiles.of(carried)).job()).contains(one);
  }

  @Test
  void aByteThatIsNoUtf8StopsEverythingBeforeTheFirstHome() throws IOException {
    byte[] text = rows(4_000).getBytes(StandardCharsets.UTF_8);
    int at = rows(3_210).length();
    text[at + 3] = (byte) 0xE9;
    Files.write(folder.resolve("sites.csv"), text);
    OpenJob job = JobFolder.open(JobFiles.in(folder));

    read(job);
    assertThat(homes).isEmpty();
    assertThat(problems).extracting(Problem::code).containsExactly(ProblemCode.NOT_UTF_8);
    assertThat(problems.get(0).row()).isEqualTo(3_212);
  }

  @Test
  void aLetterBetweenTwoPiecesOfTheFileIsOne() throws IOException {
    String name = "é".repeat(40);
    String rows =
        IntStream.range(0, 1_000)
            .mapToObj(i -> "N" + i + "," + name + ",18,3\n")
            .collect(Collectors.joining("", "\uFEFF" + HEADER, ""));
    OpenJob job = open(rows);

    assertThat(read(job).homes()).isEqualTo(1_000);
    assertThat(homes).allMatch(row -> row.home().site().contact().name().equals(name));
  }

  @Test
  void aFileCutWithinALetterIsNoUtf8() throws IOException {
    byte[] text = (HEADER + "A,é").getBytes(StandardCharsets.UTF_8);
    Files.write(folder.resolve("sites.csv"), java.util.Arrays.copyOf(text, text.length - 1));
    read(JobFolder.open(JobFiles.in(folder)));

    assertThat(problems).extracting(Problem::code).containsExactly(ProblemCode.NOT_UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sites.csv", "units.csv"})
  void aLineWithoutEndIsNoRow(String file) throws IOException {
    Files.writeString(folder.resolve("sites.csv"), rows(1));
    Files.writeString(folder.resolve(file), ",".repeat(TextReader.LONGEST_LINE + 1));
    OpenJob job = JobFolder.open(JobFiles.in(folder));

    read(job);
    problems.addAll(job.problems());
    assertThat(problems).extracting(Problem::code).containsExactly(ProblemCode.LINE_TOO_LONG);
    assertThat(problems.get(0))
        .hasToString(
            file
                + ", row 1: has more than 1500000 characters; no row of a job is that long,"
                + " so see whether this is the right file");
  }

  @Test
  void aHeaderOfThousandsOfColumnsIsOneProblem() throws IOException {
    read(open("a,".repeat(5_000) + "a\n"));

    assertThat(problems)
        .singleElement()
        .hasToString(
            "sites.csv: has 5001 columns, but may have 1000 at most;"
                + " see whether this is the right file");
  }

  @Test
  void aFileThatOnlyClaimsToBeHugeIsNotOpened() throws IOException {
    Path sites = folder.resolve("sites.csv");
    try (var file = new java.io.RandomAccessFile(sites.toFile(), "rw")) {
      file.setLength(2_000_000_001L);
    }
    read(JobFolder.open(JobFiles.in(folder)));

    assertThat(problems)
        .singleElement()
        .hasToString("sites.csv: is larger than 2000 MB; split the job into several folders");
  }
}
