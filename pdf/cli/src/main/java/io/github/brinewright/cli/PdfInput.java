package io.github.brinewright.cli;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.PdfReader;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.FilledVisit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A job that came with a PDF: with a proposal, or with the form of a site visit.
 *
 * @param path of the PDF
 * @param job that it carries
 * @param visit what was filled in, when it is a form
 */
record PdfInput(Path path, CarriedJob job, Optional<FilledVisit> visit) {
  static PdfInput read(Path path) {
    try {
      byte[] pdf = Files.readAllBytes(path);
      if (!new String(pdf, 0, Math.min(1024, pdf.length), StandardCharsets.ISO_8859_1)
          .contains("%PDF-")) {
        throw new UsageException(path + " " + JobInput.NO_JOB);
      }
      CarriedJob job =
          CarriedJob.fromJson(
              PdfReader.attachment(pdf, CarriedJob.FILE)
                  .orElseThrow(() -> new UsageException(path + " " + JobInput.NO_JOB)));
      return job.site().isPresent()
          ? new PdfInput(path, job, Optional.empty())
          : new PdfInput(path, job, Optional.of(filled(path, pdf)));
    } catch (IOException unreadable) {
      throw new UsageException(path + " cannot be opened: " + unreadable.getMessage());
    }
  }

  private static FilledVisit filled(Path path, byte[] pdf) throws IOException {
    return FilledVisit.read(pdf)
        .orElseThrow(
            () ->
                new UsageException(
                    path
                        + " has lost its fields, as after printing to a new file;"
                        + " save the filled form itself"));
  }

  /** Id of the home that it is about; empty where a form has none. */
  String site() {
    return job.site().or(() -> visit.map(filled -> filled.cells().get("site_id"))).orElse("");
  }

  LocalDate date() {
    return job.date();
  }

  JobFiles files() {
    return JobFiles.of(job.files()).with(SiteCells.FILE, sites());
  }

  /** The text of sites.csv with the home. */
  String sites() {
    return visit
        .map(FilledVisit::csv)
        .orElseGet(() -> job.files().getOrDefault(SiteCells.FILE, ""));
  }

  /** A problem in the words of the document that it came with. */
  String describe(Problem problem) {
    String file = String.valueOf(path.getFileName());
    return visit.map(filled -> filled.describe(problem, file)).orElse(problem.toString());
  }

  /** What to know about the prices. */
  Optional<String> note() {
    return visit.map(
        filled ->
            "note: prices are those that the form brought, of "
                + date()
                + "; take today's with --prices JOBFOLDER");
  }
}
