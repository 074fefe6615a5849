package io.github.brinewright.internal.document;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/** What makes a file fit for an archive: XMP metadata and a colour profile. */
final class Archive {
  private static final String PROFILE = "sRGB IEC61966-2.1";

  private Archive() {}

  static void complete(PDDocument document, PdfDocument.Description description, String producer)
      throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(packet(description, producer).getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
    intent.setInfo(PROFILE);
    intent.setOutputCondition(PROFILE);
    intent.setOutputConditionIdentifier(PROFILE);
    intent.setRegistryName("http://www.color.org");
    document.getDocumentCatalog().addOutputIntent(intent);
  }

  private static String packet(PdfDocument.Description description, String producer)
      throws IOException {
    try (InputStream in = Archive.class.getResourceAsStream("xmp.xml")) {
      String template =
          new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return template
          .replace("{title}", escaped(description.title()))
          .replace("{author}", escaped(description.author()))
          .replace("{language}", description.language().toLanguageTag())
          .replace("{date}", description.date() + "T00:00:00Z")
          .replace("{producer}", producer);
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
