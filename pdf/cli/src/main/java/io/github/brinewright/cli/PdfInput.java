package io.github.brinewright.cli;

import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.Problem;
import io.github.brinewright.proposal.Reopened;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A job that came with a PDF: with a proposal, or with the form of a site visit.
 *
 * @param path of the PDF
 * @param content what it carries
 */
record PdfInput(Path path, Reopened content) {
  private static final long LARGEST = 100_000_000;

  static PdfInput read(Path path) {
    try {
      if (Files.size(path) > LARGEST) {
        throw new UsageException(
            path + " is larger than " + LARGEST / 1_000_000 + " MB; no document of ours is");
      }
      return new PdfInput(path, Reopened.read(Files.readAllBytes(path)));
    } catch (IOException unreadable) {
      throw new UsageException("cannot be opened: " + Failures.inWords(unreadable));
    } catch (ReopenException refused) {
      throw new UsageException(path + " " + inWords(refused));
    }
  }

  /** Why a document stays closed, after its path. */
  static String inWords(ReopenException refused) {
    return switch (refused.reason()) {
      case NOT_A_PDF, NO_DATA -> JobInput.NO_JOB;
      case DAMAGED ->
          "cannot be opened: it is cut off, locked or damaged (" + refused.getMessage() + ")";
      case FIELDS_LOST ->
          "has lost its fields, as after printing to a new file; save the filled form itself";
      case NEWER_VERSION ->
          "was written by a newer version of this program ("
              + refused.getMessage()
              + "); open it with that one";
      case MALFORMED_DATA ->
          "carries data that cannot be read ("
              + refused.getMessage()
              + "); write it again from its job folder";
    };
  }

  /** The same home at the prices of a job folder. */
  PdfInput at(Path prices) {
    return new PdfInput(path, content.atPricesOf(JobFiles.in(prices)));
  }

  /** A problem in the words of the document that it came with. */
  String describe(Problem problem) {
    return content.describe(problem, String.valueOf(path.getFileName()));
  }

  /** Whether it is a filled form. */
  boolean isForm() {
    return content.visit().isPresent();
  }
}
