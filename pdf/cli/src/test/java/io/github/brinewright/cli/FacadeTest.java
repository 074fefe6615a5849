package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The library gives exactly what the command line gives, which uses nothing below it. */
class FacadeTest extends CommandTest {
  private static final Path TOWN = Path.of("..", "..", "samples", "job");
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final Job JOB = JobFolder.read(TOWN).job().orElseThrow();

  private void assertWritten(Proposals proposals, String... options) throws IOException {
    Path target = folder.resolve("out");
    String[] args =
        Stream.concat(
                Stream.of("propose", TOWN.toString(), "--date", DAY.toString()),
                Stream.concat(Stream.of(options), Stream.of("--out", target.toString())))
            .toArray(String[]::new);
    assertThat(run(args)).as(err.toString()).isZero();
    for (String name : documents(target)) {
      String id = name.replaceAll("^[a-z]+-|\\.pdf$", "");
      QuotedHome home = JOB.home(id).orElseThrow();
      assertThat(Files.readAllBytes(target.resolve(name)))
          .as(name)
          .isEqualTo(proposals.write(home, DAY));
      assertThat(proposals.fileName(home)).isEqualTo(name);
    }
  }

  @Test
  void proposalsHaveTheBytesOfTheCommand() throws IOException {
    assertWritten(Proposals.of(JOB), "--all");
    assertThat(documents(folder.resolve("out"))).hasSameSizeAs(JOB.homes());
  }

  @Test
  void pagesHaveTheBytesOfTheCommand() throws IOException {
    assertWritten(Proposals.of(JOB).onePage(), "--all", "--one-page");
  }

  @Test
  void proposalsWithoutDataHaveTheBytesOfTheCommand() throws IOException {
    assertWritten(Proposals.of(JOB).withoutData(), "--all", "--without-data");
  }

  @Test
  void revisedProposalsHaveTheBytesOfTheCommand() throws Exception {
    Path sites = folder.resolve("sites.csv");
    Files.writeString(sites, "site_id,hardness_gpg,people\nH02,10,2\n");
    run("propose", folder.toString(), "--all", "--out", folder.toString());
    Path earlier = folder.resolve("proposal-H02.pdf");

    assertWritten(
        Proposals.of(JOB).since(Reopened.read(Files.readAllBytes(earlier))),
        "--site",
        "H02",
        "--since",
        earlier.toString());
  }

  @Test
  void settingsSheetsHaveTheBytesOfTheCommand() throws IOException {
    Path target = folder.resolve("sheet.pdf");
    for (QuotedHome home : JOB.homes()) {
      String unit = JOB.compare(home).closest().softener().id();
      run(
          "settings",
          TOWN.toString(),
          "--site",
          home.site().id(),
          "--unit",
          unit,
          "--out",
          target.toString(),
          "--date",
          DAY.toString());
      assertThat(Files.readAllBytes(target))
          .as(home.site().id())
          .isEqualTo(
              Proposals.of(JOB)
                  .settings(home, CandidateChoice.ofSoftener(unit), DAY)
                  .orElseThrow());
    }
  }

  @Test
  void formsHaveTheBytesOfTheCommand() throws IOException {
    Path target = folder.resolve("form.pdf");
    run("form", TOWN.toString(), "--out", target.toString(), "--date", DAY.toString());
    assertThat(Files.readAllBytes(target)).isEqualTo(Proposals.of(JOB).form(DAY));
    for (QuotedHome home : JOB.homes()) {
      String id = home.site().id();
      run(
          "form",
          TOWN.toString(),
          "--site",
          id,
          "--out",
          target.toString(),
          "--date",
          DAY.toString());
      assertThat(Files.readAllBytes(target))
          .as(id)
          .isEqualTo(
              Proposals.of(JOB).form(SiteCells.of(JobFiles.in(TOWN), id).orElseThrow(), DAY));
    }
  }

  @Test
  void theCommandLineUsesNothingInternal() throws IOException {
    try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
      assertThat(sources.filter(file -> file.toString().endsWith(".java")).toList())
          .isNotEmpty()
          .allSatisfy(
              file ->
                  assertThat(Files.readString(file))
                      .as(file.toString())
                      .doesNotContain("brinewright.internal"));
    }
  }
}
