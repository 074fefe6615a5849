package io.github.brinewright.document;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;

/** Reads back what a document carries. */
public final class PdfReader {
  private PdfReader() {}

  /**
   * The content of an attached file; empty when the document has none of this name.
   *
   * @throws IOException when the bytes are not a PDF
   */
  public static Optional<byte[]> attachment(byte[] pdf, String name) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      PDEmbeddedFilesNameTreeNode files = names == null ? null : names.getEmbeddedFiles();
      if (files == null || files.getNames() == null) {
        return Optional.empty();
      }
      PDComplexFileSpecification file = files.getNames().get(name);
      return file == null || file.getEmbeddedFile() == null
          ? Optional.empty()
          : Optional.of(file.getEmbeddedFile().toByteArray());
    }
  }
}
