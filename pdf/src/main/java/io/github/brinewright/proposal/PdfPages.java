package io.github.brinewright.proposal;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Attachment;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;

/** What documents as PDF have in common. */
final class PdfPages {
  private PdfPages() {}

  /** The words of a dealer's documents. */
  static Wording words(Dealer dealer) {
    UnitSystem system = dealer.units() == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
    return DocumentTexts.words(dealer.locale(), system);
  }

  /** A job as a file that a document carries. */
  static Attachment attachment(CarriedJob job, String description) {
    return new Attachment(CarriedJob.FILE, "application/json", description, job.toJson());
  }
}
