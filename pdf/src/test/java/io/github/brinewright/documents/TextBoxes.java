package io.github.brinewright.documents;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where each run of text and each field of a document lies. */
final class TextBoxes extends PDFTextStripper {
  private static final double MARGIN = 30;
  private static final double SLACK = 1;

  private record Run(int page, String text, double left, double top, double right, double bottom) {
    boolean overlaps(Run other) {
      return page == other.page
          && Math.min(right, other.right) - Math.max(left, other.left) > SLACK
          && Math.min(bottom, other.bottom) - Math.max(top, other.top) > SLACK;
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "page %d (%.0f, %.0f) \"%s\"", page, left, top, text);
    }
  }

  private final List<Run> runs = new ArrayList<>();
  private double width;
  private double height;
  private int pages;

  private TextBoxes() {
    setSortByPosition(false);
    setSuppressDuplicateOverlappingText(false);
  }

  static TextBoxes of(byte[] pdf) throws IOException {
    TextBoxes boxes = new TextBoxes();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      boxes.width = document.getPage(0).getMediaBox().getWidth();
      boxes.height = document.getPage(0).getMediaBox().getHeight();
      boxes.getText(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        boxes.addFields(document.getPage(page), page + 1);
      }
      boxes.pages = document.getNumberOfPages();
    }
    return boxes;
  }

  private void addFields(PDPage page, int number) throws IOException {
    for (PDAnnotation field : page.getAnnotations()) {
      PDRectangle box = field.getRectangle();
      runs.add(
          new Run(
              number,
              "[" + field.getCOSObject().getString(COSName.T) + "]",
              box.getLowerLeftX(),
              height - box.getUpperRightY(),
              box.getUpperRightX(),
              height - box.getLowerLeftY()));
    }
  }

  int pages() {
    return pages;
  }

  /** A letter of a run; neighbours of one line are joined. */
  @Override
  protected void processTextPosition(TextPosition letter) {
    if (letter.getUnicode() == null || letter.getUnicode().isBlank()) {
      return;
    }
    double left = letter.getXDirAdj();
    double bottom = letter.getYDirAdj() + 0.1 * letter.getFontSizeInPt();
    double top = letter.getYDirAdj() - 0.6 * letter.getFontSizeInPt();
    double right = left + letter.getWidthDirAdj();
    Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
    boolean joins =
        last != null
            && last.page == getCurrentPageNo()
            && Math.abs(last.bottom - bottom) < 0.01
            && left >= last.right - 0.6
            && left - last.right < 6;
    if (joins) {
      runs.set(
          runs.size() - 1,
          new Run(
              last.page,
              last.text + letter.getUnicode(),
              last.left,
              Math.min(last.top, top),
              right,
              bottom));
    } else {
      runs.add(new Run(getCurrentPageNo(), letter.getUnicode(), left, top, right, bottom));
    }
  }

  int count() {
    return runs.size();
  }

  List<String> outsideTheMargins() {
    return runs.stream()
        .filter(
            run ->
                run.left < MARGIN
                    || run.right > width - MARGIN
                    || run.top < MARGIN
                    || run.bottom > height - 20)
        .map(Run::toString)
        .toList();
  }

  List<String> overlaps() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        if (runs.get(i).overlaps(runs.get(j))) {
          found.add(runs.get(i) + " and " + runs.get(j));
        }
      }
    }
    return found;
  }
}
