package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.Test;

/** What is attached to a stranger's document. */
class PdfReaderTest {
  private static byte[] carrying(int size) throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      var file = new PDComplexFileSpecification();
      var content = new ByteArrayInputStream(new byte[size]);
      file.setEmbeddedFile(new PDEmbeddedFile(document, content, COSName.FLATE_DECODE));
      var files = new PDEmbeddedFilesNameTreeNode();
      files.setNames(Map.of("a", file));
      var names = new PDDocumentNameDictionary(document.getDocumentCatalog());
      names.setEmbeddedFiles(files);
      document.getDocumentCatalog().setNames(names);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  @Test
  void aFewBytesThatUnfoldToMoreThanAJobAreRefused() throws IOException {
    assertThat(PdfReader.attachment(carrying(PdfReader.LARGEST_ATTACHMENT), "a").orElseThrow())
        .hasSize(PdfReader.LARGEST_ATTACHMENT);

    byte[] larger = carrying(PdfReader.LARGEST_ATTACHMENT + 1);
    assertThat(larger).hasSizeLessThan(200_000);
    assertThatThrownBy(() -> PdfReader.attachment(larger, "a"))
        .isInstanceOf(IOException.class)
        .hasMessage("its data unfold to more than 40 MB");
  }
}
