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
   * What the document says of itself. A character that XML does not allow becomes a space.
   *
   * @param title shown by the reader
   * @param author who makes the proposal
   * @param language of its text
   * @param date of the document
   */
  public record Description(String title, String author, Locale language, LocalDate date) {
    /** Cleans the texts. */
    public Description {
      title = clean(title);
      author = clean(author);
    }

    /** A number for the identifier of the file, the same for the same description in any Java. */
    long seed() {
      return String.join("\n", title, author, language.toLanguageTag(), date.toString()).hashCode();
    }

    private static String clean(String text) {
      return text.codePoints()
          .map(c -> allowed(c) ? c : ' ')
          .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
          .toString();
    }

    /** Extensible Markup Language (XML) 1.0, production 2: Char. */
    private static boolean allowed(int c) {
      return c == '\t'
          || c == '\n'
          || c == '\r'
          || c >= 0x20 && c <= 0xD7FF
          || c >= 0xE000 && c <= 0xFFFD
          || c >= 0x10000;
    }
  }

  private final PDDocument document = new PDDocument();
  private final Map<Typeface.Weight, PDFont> fonts = new EnumMap<>(Typeface.Weight.class);
  private final List<PDPage> pages = new ArrayList<>();
  private final List<Canvas> canvases = new ArrayList<>();
  private final PDDocumentOutline bookmarks = new PDDocumentOutline();
  private final FontPool.Loan loan;
  private final Calendar date;
  private final Form form;

  /** An empty document; it must be closed before the same thread makes another. */
  public PdfDocument(Description description) {
    date = GregorianCalendar.from(description.date().atStartOfDay(ZoneOffset.UTC));
    date.setTimeZone(TimeZone.getTimeZone("UTC"));
    loan = FontPool.SHARED.borrow();
    try {
      form = begin(description);
    } catch (IOException failure) {
      close();
      throw new UncheckedIOException(failure);
    } catch (RuntimeException failure) {
      close();
      throw failure;
    }
  }

  private Form begin(Description description) throws IOException {
    for (Typeface.Weight weight : Typeface.Weight.values()) {
      fonts.put(weight, PDType0Font.load(document, loan.fonts().of(weight), true));
    }
    describe(description);
    PDFont regular = Objects.requireNonNull(fonts.get(Typeface.Weight.REGULAR));
    return new Form(document, loan.fonts(), new FieldLook(document, regular));
  }

  private void describe(Description description) throws IOException {
    document.setVersion(1.7f);
    Archive.complete(document, description, PRODUCER);
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
    document.setDocumentId(description.seed());
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
    try (loan) {
      document.close();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
