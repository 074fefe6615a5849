package io.github.brinewright.documents;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/**
 * A document as a reader's program says it: by its structure, figures by their alternative text.
 */
final class ReadAloud {
  /**
   * A part of the structure that is said.
   *
   * @param role of it
   * @param text said
   * @param language of it, where it is not the document's
   * @param page that its end stands on, from 0
   */
  record Said(String role, String text, @Nullable String language, int page) {}

  /** Letters that stand on one line of any page. */
  private static final int SURELY_ONE_LINE = 80;

  private final Map<PDPage, Map<Integer, String>> texts = new HashMap<>();
  private final List<Said> said = new ArrayList<>();
  private final List<String> outOfOrder = new ArrayList<>();
  private final Map<PDPage, Integer> last = new HashMap<>();
  private final List<PDPage> pages = new ArrayList<>();
  private int page;

  private ReadAloud() {}

  static ReadAloud of(byte[] pdf) throws IOException {
    ReadAloud all = new ReadAloud();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        Map<Integer, String> byId = new HashMap<>();
        extractor
            .getMarkedContents()
            .forEach(content -> byId.put(content.getMCID(), text(content)));
        all.texts.put(page, byId);
        all.pages.add(page);
      }
      all.walk(document.getDocumentCatalog().getStructureTreeRoot());
    }
    return all;
  }

  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    for (Object part : content.getContents()) {
      if (part instanceof TextPosition letter) {
        text.append(letter.getUnicode());
      }
    }
    return text.toString();
  }

  private void walk(PDStructureNode node) throws IOException {
    StringBuilder text = new StringBuilder();
    String role = node instanceof PDStructureElement element ? element.getStructureType() : "";
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement child) {
        walk(child);
      } else if (kid instanceof PDMarkedContentReference run) {
        text.append(run(run));
      } else if (kid instanceof PDObjectReference object
          && object.getReferencedObject() instanceof PDAnnotation field) {
        text.append(field.getCOSObject().getString("TU"));
      }
    }
    if (node instanceof PDStructureElement element) {
      String instead = element.getAlternateDescription();
      String words = instead == null ? text.toString() : instead;
      if (!words.isBlank()) {
        said.add(new Said(role, words.strip(), element.getLanguage(), page));
      }
    }
  }

  private String run(PDMarkedContentReference run) {
    PDPage page = run.getPage();
    int id = run.getMCID();
    String text = texts.getOrDefault(page, Map.of()).getOrDefault(id, "");
    if (id < last.getOrDefault(page, -1)) {
      outOfOrder.add(text);
    }
    last.put(page, id);
    this.page = pages.indexOf(page);
    return text;
  }

  List<Said> said() {
    return said;
  }

  /**
   * Headings left alone above a page break, with no more than the lead of their table, or one line.
   */
  List<String> headingsLeftAlone() {
    List<String> alone = new ArrayList<>();
    for (int i = 0; i + 2 < said.size(); i++) {
      Said next = said.get(i + 1);
      Said third = said.get(i + 2);
      boolean line = next.text().length() < SURELY_ONE_LINE && third.role().equals("P");
      boolean leads = next.role().equals("P") && (line || third.role().equals("TH"));
      int with = leads ? third.page() : next.page();
      if (said.get(i).role().matches("H[1-3]") && with != said.get(i).page()) {
        alone.add(said.get(i).text());
      }
    }
    return alone;
  }

  /** What is read after something that is drawn below or beside it. */
  List<String> outOfOrder() {
    return outOfOrder;
  }

  @Override
  public String toString() {
    StringBuilder all = new StringBuilder();
    said.forEach(part -> all.append(part.role()).append(": ").append(part.text()).append('\n'));
    return all.toString();
  }
}
