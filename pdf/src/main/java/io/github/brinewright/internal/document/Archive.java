package io.github.brinewright.internal.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/** What makes a file fit for an archive: XMP metadata and a colour profile. */
final class Archive {
  private static final String PROFILE = "sRGB IEC61966-2.1";
  private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

  /** Our own: those of Java differ from version to version. */
  private static final byte[] COLOURS = file("srgb.icc");

  private static final String TEMPLATE = new String(file("xmp.xml"), StandardCharsets.UTF_8);

  private Archive() {}

  private static byte[] file(String name) {
    try (InputStream in = Archive.class.getResourceAsStream(name)) {
      return Objects.requireNonNull(in, name).readAllBytes();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static void complete(PDDocument document, PdfDocument.Description description, String producer)
      throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(packet(description, producer).getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
    PDOutputIntent intent = new PDOutputIntent(intent(document));
    intent.setInfo(PROFILE);
    intent.setOutputCondition(PROFILE);
    intent.setOutputConditionIdentifier(PROFILE);
    intent.setRegistryName("http://www.color.org");
    document.getDocumentCatalog().addOutputIntent(intent);
  }

  /** By hand: the usual way would have Java write the profile anew, each version in its way. */
  private static COSDictionary intent(PDDocument document) throws IOException {
    PDStream profile =
        new PDStream(document, new ByteArrayInputStream(COLOURS), COSName.FLATE_DECODE);
    profile.getCOSObject().setInt(COSName.N, PDDeviceRGB.INSTANCE.getNumberOfComponents());
    COSDictionary intent = new COSDictionary();
    intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
    intent.setItem(COSName.S, COSName.GTS_PDFA1);
    intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
    return intent;
  }

  private static String packet(PdfDocument.Description description, String producer) {
    Map<String, String> values =
        Map.of(
            "title", description.title(),
            "author", description.author(),
            "language", description.language().toLanguageTag(),
            "date", description.date() + "T00:00:00Z",
            "producer", producer);
    return PLACE.matcher(TEMPLATE).replaceAll(place -> value(values, place));
  }

  private static String value(Map<String, String> values, MatchResult place) {
    String value = Objects.requireNonNull(values.get(place.group(1)), place.group());
    return Matcher.quoteReplacement(
        value.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
  }
}
