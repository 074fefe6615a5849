package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Attachment;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.PdfDocument;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Document;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plans the pages of a document, draws them with their footers, and makes the file. */
public final class Pages {
  private static final double FOOTER_BASELINE = 34;

  private final Dealer dealer;
  private final Wording words;
  private final LocalDate date;
  private final PageFrame frame;

  /**
   * Pages of a dealer.
   *
   * @param words in the reader's language
   * @param date of the file
   */
  public Pages(Dealer dealer, Wording words, LocalDate date) {
    this.dealer = dealer;
    this.words = words;
    this.date = date;
    frame = PageFrame.of(dealer.paper());
  }

  /**
   * The file.
   *
   * @throws IllegalArgumentException when the words lack a text, or two fields have one name
   */
  public byte[] write(Document model, @Nullable Attachment attachment) {
    String title = model.title().in(words);
    List<List<Planner.Placed>> pages = plan(model);
    var description =
        new PdfDocument.Description(title, model.letterhead().name(), words.locale(), date);
    try (PdfDocument document = new PdfDocument(description)) {
      Tags tags = new Tags();
      for (int i = 0; i < pages.size(); i++) {
        Pen pen = new Pen(document.addPage(frame.width(), frame.height()), tags);
        pages.get(i).forEach(placed -> placed.draw(pen, frame.text().x()));
        footer(pen.canvas(), title, i + 1, pages.size());
      }
      if (attachment != null) {
        document.attach(attachment);
      }
      return document.finish(tags.root());
    }
  }

  /**
   * How many pages it takes.
   *
   * @throws IllegalArgumentException when the words lack a text
   */
  public int count(Document model) {
    return plan(model).size();
  }

  private List<List<Planner.Placed>> plan(Document model) {
    Look look = Look.of(model.kind(), Ink.of(dealer.accent()));
    return Planner.plan(frame.text(), new DocumentBlocks(words, look).parts(model));
  }

  private void footer(Canvas canvas, String title, int page, int pages) {
    TextStyle style = TextStyle.SMALL.in(Ink.QUIET);
    String number = words.text("page", Figure.of(page), Figure.of(pages));
    double baseline = frame.height() - FOOTER_BASELINE;
    double width = frame.text().width();
    canvas.ornament(
        () -> {
          canvas.text(frame.text().x(), baseline, style.fitting(title, width * 0.75), style);
          canvas.text(frame.text().x() + width - style.width(number), baseline, number, style);
        });
  }
}
