package io.github.brinewright.proposal;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Attachment;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;

/** What documents as PDF have in common. */
final class PdfPages {
  private static final String TEXTS = "io.github.brinewright.internal.section.texts";

  private PdfPages() {}

  /** The words of a dealer's documents. */
  static Wording words(Dealer dealer) {
    UnitSystem system = dealer.units() == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
    return new Wording(dealer.locale(), system, TEXTS);
  }

  /** A job as a file that a document carries. */
  static Attachment attachment(CarriedJob job, String description) {
    try {
      return new Attachment(CarriedJob.FILE, "application/json", description, job.toJson());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
