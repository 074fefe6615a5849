package io.github.brinewright.internal.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.font.encoding.WinAnsiEncoding;
import org.jspecify.annotations.Nullable;

/**
 * The font that a reader types with in a field: our regular weight with the letters of Western
 * European languages, all of them, since nobody knows beforehand what will be typed; so its name
 * does not mark it as cut down to a text, for then programs would not type with it.
 */
final class FieldFont {
  /** Tables to keep; kerning and substitution would treble the size. */
  private static final List<String> TABLES =
      List.of(
          "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2",
          "post", "prep");

  private static byte @Nullable [] letters;

  private FieldFont() {}

  /**
   * The font for use in one document. Programs set what is typed by the height of its letters,
   * which the smaller file does not tell.
   */
  static PDFont of(PDDocument document, ParsedFonts fonts) throws IOException {
    PDFont font = PDTrueTypeFont.load(document, fonts.letters(), WinAnsiEncoding.INSTANCE);
    Typeface regular = Typeface.Weight.REGULAR.typeface();
    font.getFontDescriptor().setCapHeight(regular.capHeight());
    font.getFontDescriptor().setXHeight(regular.smallHeight());
    return font;
  }

  /** The file, cut from the regular weight once for all threads. */
  static synchronized byte[] letters(TrueTypeFont regular) throws IOException {
    if (letters == null) {
      letters = cut(regular);
    }
    return letters;
  }

  private static byte[] cut(TrueTypeFont regular) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    TTFSubsetter subset = new TTFSubsetter(regular, TABLES);
    WinAnsiEncoding.INSTANCE.getCodeToNameMap().values().stream()
        .map(name -> GlyphList.getAdobeGlyphList().toUnicode(name))
        .filter(text -> text != null)
        .mapToInt(text -> text.codePointAt(0))
        .filter(Typeface.Weight.REGULAR.typeface()::has)
        .sorted()
        .forEach(subset::add);
    subset.writeToStream(bytes);
    return bytes.toByteArray();
  }
}
