package io.github.brinewright.proposal;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Attachment;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.PdfDocument;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.PageFrame;
import io.github.brinewright.internal.layout.Planner;
import io.github.brinewright.internal.section.Stationery;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plans the pages of a document, draws them with their footers, and makes the file. */
final class PdfPages {
  private static final double FOOTER_BASELINE = 34;

  private final Stationery stationery;
  private final String title;
  private final PageFrame frame;

  PdfPages(Stationery stationery, String title) {
    this.stationery = stationery;
    this.title = title;
    frame = stationery.dealer().paper() == Dealer.Paper.A4 ? PageFrame.a4() : PageFrame.letter();
  }

  /** The words of a dealer's documents. */
  static Wording words(Dealer dealer) {
    UnitSystem system = dealer.units() == UnitSystem.METRIC ? UnitSystem.METRIC : UnitSystem.US;
    return DocumentTexts.words(dealer.locale(), system);
  }

  /** A job as a file that a document carries. */
  static Attachment attachment(CarriedJob job, String description) {
    return new Attachment(CarriedJob.FILE, "application/json", description, job.toJson());
  }

  /** The file; each part begins on a page of its own. */
  byte[] write(List<Block> parts, @Nullable Attachment attachment) {
    List<List<Planner.Placed>> pages = Planner.plan(frame.text(), parts);
    var description =
        new PdfDocument.Description(
            title, stationery.dealer().name(), stationery.dealer().locale(), stationery.date());
    try (PdfDocument document = new PdfDocument(description)) {
      for (int i = 0; i < pages.size(); i++) {
        Canvas canvas = document.addPage(frame.width(), frame.height());
        pages.get(i).forEach(placed -> draw(placed, canvas));
        footer(canvas, i + 1, pages.size());
      }
      if (attachment != null) {
        document.attach(attachment);
      }
      return document.finish(stationery.root());
    }
  }

  private void draw(Planner.Placed placed, Canvas canvas) {
    placed.slice().painter().paint(canvas, frame.text().x(), placed.y());
  }

  private void footer(Canvas canvas, int page, int pages) {
    TextStyle style = TextStyle.SMALL.in(Ink.QUIET);
    String number = stationery.words().text("page", Figure.of(page), Figure.of(pages));
    double baseline = frame.height() - FOOTER_BASELINE;
    double width = frame.text().width();
    canvas.ornament(
        () -> {
          canvas.text(frame.text().x(), baseline, style.fitting(title, width * 0.75), style);
          canvas.text(frame.text().x() + width - style.width(number), baseline, number, style);
        });
  }
}
