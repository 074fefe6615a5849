package io.github.brinewright.internal.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A PDF in the making. Not for use by several threads at once. */
public final class PdfDocument implements AutoCloseable {
  private static final String PRODUCER = "Brinewright";

  /**
   * What the document says of itself.
   *
   * @param title shown by the reader
   * @param author who makes the proposal
   * @param language of its text
   * @param date of the document
   */
  public record Description(String title, String author, Locale language, LocalDate date) {}

  private final PDDocument document = new PDDocument();
  private final Map<Typeface.Weight, PDFont> fonts = new EnumMap<>(Typeface.Weight.class);
  private final List<PDPage> pages = new ArrayList<>();
  private final List<Canvas> canvases = new ArrayList<>();
  private final PDDocumentOutline bookmarks = new PDDocumentOutline();
  private final Calendar date;
  private final Form form;

  /** An empty document. */
  public PdfDocument(Description description) {
    try {
      for (Typeface.Weight weight : Typeface.Weight.values()) {
        fonts.put(weight, PDType0Font.load(document, weight.typeface().font(), true));
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    PDFont regular = Objects.requireNonNull(fonts.get(Typeface.Weight.REGULAR));
    form = new Form(document, new FieldLook(document, regular));
    date = GregorianCalendar.from(description.date().atStartOfDay(ZoneOffset.UTC));
    date.setTimeZone(TimeZone.getTimeZone("UTC"));
    describe(description);
  }

  private void describe(Description description) {
    document.setVersion(1.7f);
    try {
      Archive.complete(document, description, PRODUCER);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(description.title());
    information.setAuthor(description.author());
    information.setProducer(PRODUCER);
    information.setCreationDate(date);
    information.setModificationDate(date);
    var catalog = document.getDocumentCatalog();
    catalog.setLanguage(description.language().toLanguageTag());
    PDMarkInfo marked = new PDMarkInfo();
    marked.setMarked(true);
    catalog.setMarkInfo(marked);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    catalog.setViewerPreferences(preferences);
    document.setDocumentId((long) description.hashCode());
  }

  private void bookmark(String text, PDPage page, double top) {
    PDPageXYZDestination destination = new PDPageXYZDestination();
    destination.setPage(page);
    destination.setTop((int) Math.round(top));
    PDOutlineItem item = new PDOutlineItem();
    item.setTitle(text);
    item.setDestination(destination);
    bookmarks.addLast(item);
  }

  /** Adds a file that the document carries; one at the most. */
  public void attach(Attachment attachment) {
    try {
      attachment.attachTo(document, date);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Adds a page of the given size in points. */
  public Canvas addPage(double width, double height) {
    PDPage page = new PDPage(new PDRectangle((float) width, (float) height));
    page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
    document.addPage(page);
    pages.add(page);
    try {
      PDPageContentStream out = new PDPageContentStream(document, page);
      Canvas canvas =
          new Canvas(
              document,
              out,
              fonts,
              new Canvas.Sheet(
                  pages.size() - 1, page, form, (text, top) -> bookmark(text, page, top)));
      canvases.add(canvas);
      return canvas;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The finished file, with the tags below {@code root} as its structure. */
  public byte[] finish(Tag root) {
    canvases.forEach(Canvas::close);
    document.getDocumentCatalog().setDocumentOutline(bookmarks);
    new StructureTree(document, pages).write(root);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try {
      form.write();
      document.save(bytes);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return bytes.toByteArray();
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
