package io.github.brinewright.internal.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.font.encoding.WinAnsiEncoding;

/**
 * The font that a reader types with in a field: our regular weight with the letters of Western
 * European languages, all of them, since nobody knows beforehand what will be typed; so its name
 * does not mark it as cut down to a text, for then programs would not type with it. Parsed once for
 * each thread, as {@link Typeface}.
 */
final class FieldFont {
  /** Tables to keep; kerning and substitution would treble the size. */
  private static final List<String> TABLES =
      List.of(
          "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2",
          "post", "prep");

  private static final ThreadLocal<TrueTypeFont> PARSED = ThreadLocal.withInitial(FieldFont::parse);

  private FieldFont() {}

  /**
   * The font for use in one document. Programs set what is typed by the height of its letters,
   * which the smaller file does not tell.
   */
  static PDFont of(PDDocument document) throws IOException {
    PDFont font = PDTrueTypeFont.load(document, PARSED.get(), WinAnsiEncoding.INSTANCE);
    Typeface regular = Typeface.Weight.REGULAR.typeface();
    font.getFontDescriptor().setCapHeight(regular.capHeight());
    font.getFontDescriptor().setXHeight(regular.smallHeight());
    return font;
  }

  /** Made once for all threads, when the first field is drawn. */
  private static final class Letters {
    static final byte[] FONT = letters();
  }

  private static byte[] letters() {
    Typeface regular = Typeface.Weight.REGULAR.typeface();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try {
      TTFSubsetter subset = new TTFSubsetter(regular.font(), TABLES);
      WinAnsiEncoding.INSTANCE.getCodeToNameMap().values().stream()
          .map(name -> GlyphList.getAdobeGlyphList().toUnicode(name))
          .filter(text -> text != null)
          .mapToInt(text -> text.codePointAt(0))
          .filter(regular::has)
          .sorted()
          .forEach(subset::add);
      subset.writeToStream(bytes);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return bytes.toByteArray();
  }

  private static TrueTypeFont parse() {
    try {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Letters.FONT));
      font.setEnableGsub(false);
      return font;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
