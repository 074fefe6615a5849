package io.github.brinewright.internal.document;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDChoice;
import org.apache.pdfbox.pdmodel.interactive.form.PDField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;

/** Reads back what a document carries and what was filled into it. */
public final class PdfReader {
  /**
   * A field that was filled.
   *
   * @param label read aloud for it
   * @param value what was filled in; of a choice the value, not the name that is shown
   */
  public record Filled(String label, String value) {}

  /**
   * The fields of a document.
   *
   * @param language of the document
   * @param fields by name, in the order of the document
   */
  public record FilledFields(Locale language, Map<String, Filled> fields) {}

  /** The tables and pictures of a job, with room to spare. */
  static final int LARGEST_ATTACHMENT = 40_000_000;

  private PdfReader() {}

  /** What is taken from a document. */
  private interface Taken<T> {
    T from(PDDocument document) throws IOException;
  }

  /** Whatever a damaged structure makes of the PDF library, it is the document that is damaged. */
  private static <T> T open(byte[] pdf, Taken<T> taken) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return taken.from(document);
    } catch (RuntimeException | StackOverflowError structure) {
      throw new IOException("its structure contradicts itself", structure);
    }
  }

  /**
   * The content of an attached file; empty when the document has none of this name.
   *
   * @throws IOException when the bytes are not a PDF
   */
  public static Optional<byte[]> attachment(byte[] pdf, String name) throws IOException {
    return open(pdf, document -> attachment(document, name));
  }

  private static Optional<byte[]> attachment(PDDocument document, String name) throws IOException {
    PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
    PDEmbeddedFilesNameTreeNode files = names == null ? null : names.getEmbeddedFiles();
    if (files == null || files.getNames() == null) {
      return Optional.empty();
    }
    PDComplexFileSpecification file = files.getNames().get(name);
    return file == null || file.getEmbeddedFile() == null
        ? Optional.empty()
        : Optional.of(content(file.getEmbeddedFile()));
  }

  /** Reads no more than may be there, whatever a few bytes claim to unfold to. */
  private static byte[] content(PDEmbeddedFile file) throws IOException {
    try (InputStream in = unfolding(file.getCOSObject())) {
      byte[] content = in.readNBytes(LARGEST_ATTACHMENT + 1);
      if (content.length > LARGEST_ATTACHMENT) {
        throw new IOException(
            "its data unfold to more than " + LARGEST_ATTACHMENT / 1_000_000 + " MB");
      }
      return content;
    }
  }

  /** Of what is deflated, as by us, no more is held than is read; the library would hold it all. */
  private static InputStream unfolding(COSStream file) throws IOException {
    return COSName.FLATE_DECODE.equals(file.getFilters())
        ? new InflaterInputStream(file.createRawInputStream())
        : file.createInputStream();
  }

  /**
   * The fields of a document that take text or a choice.
   *
   * @throws IOException when the bytes are not a PDF
   */
  public static FilledFields fields(byte[] pdf) throws IOException {
    return open(pdf, PdfReader::fields);
  }

  private static FilledFields fields(PDDocument document) {
    String language = document.getDocumentCatalog().getLanguage();
    // Without the usual repairs of a form, which would scan the fonts of the machine.
    PDAcroForm form = document.getDocumentCatalog().getAcroForm(null);
    Map<String, Filled> fields = new LinkedHashMap<>();
    if (form != null) {
      for (PDField field : form.getFieldTree()) {
        value(field)
            .ifPresent(
                value ->
                    fields.put(
                        field.getFullyQualifiedName(),
                        new Filled(Objects.toString(field.getAlternateFieldName(), ""), value)));
      }
    }
    return new FilledFields(
        language == null ? Locale.ROOT : Locale.forLanguageTag(language), fields);
  }

  private static Optional<String> value(PDField field) {
    if (field instanceof PDTextField text) {
      return Optional.of(text.getValue());
    }
    if (field instanceof PDChoice choice) {
      String value = choice.getValue().stream().findFirst().orElse("");
      int shown = choice.getOptionsDisplayValues().indexOf(value);
      boolean nameStored = shown >= 0 && !choice.getOptionsExportValues().contains(value);
      return Optional.of(nameStored ? choice.getOptionsExportValues().get(shown) : value);
    }
    return Optional.empty();
  }
}
