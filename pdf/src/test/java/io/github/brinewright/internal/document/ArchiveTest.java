package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/** What a document says of itself, whatever its title is. */
class ArchiveTest {
  private static byte[] document(String title) {
    var description =
        new PdfDocument.Description(title, "A {title} Dealer", Locale.US, LocalDate.EPOCH);
    try (PdfDocument document = new PdfDocument(description)) {
      document.addPage(100, 100);
      return document.finish(new Tag(Tag.Role.DOCUMENT));
    }
  }

  private static Document metadata(String title)
      throws IOException, ParserConfigurationException, SAXException {
    try (PDDocument pdf = Loader.loadPDF(document(title));
        InputStream xmp = pdf.getDocumentCatalog().getMetadata().createInputStream()) {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(xmp.readAllBytes()));
    }
  }

  private static String text(Document metadata, String element) {
    return metadata.getElementsByTagName(element).item(0).getTextContent();
  }

  @Test
  void bracesOfATitleAreLeftAlone() throws Exception {
    Document metadata = metadata("For {author} & <{date}> at $1");
    assertThat(text(metadata, "dc:title")).isEqualTo("For {author} & <{date}> at $1");
    assertThat(text(metadata, "dc:creator")).isEqualTo("A {title} Dealer");
  }

  /** Java would write its own name into it, and each version does so in its way. */
  @Test
  void theColourProfileIsEmbeddedAsItIs() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(document("A title"))) {
      byte[] embedded =
          pdf.getDocumentCatalog()
              .getOutputIntents()
              .get(0)
              .getDestOutputIntent()
              .createInputStream()
              .readAllBytes();
      assertThat(embedded).isEqualTo(SrgbProfile.bytes());
    }
  }

  /** Extensible Markup Language (XML) 1.0, production 2: Char. */
  @ParameterizedTest
  @ValueSource(strings = {"\u0000", "\u0008", "\uFFFE", "\uFFFF", "\uD800"})
  void aCharacterThatXmlForbidsBecomesASpace(String forbidden) throws Exception {
    assertThat(text(metadata("a" + forbidden + "b"), "dc:title")).isEqualTo("a b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\uFFFD", "\uE000", "\uD83D\uDEBF"})
  void everyOtherCharacterStays(String allowed) throws Exception {
    assertThat(text(metadata("a" + allowed + "b"), "dc:title")).isEqualTo("a" + allowed + "b");
  }
}
