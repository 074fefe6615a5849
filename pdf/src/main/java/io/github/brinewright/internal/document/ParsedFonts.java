package io.github.brinewright.internal.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * Our fonts as PDFBox reads them, some 4 MB. A parsed font must not be read by two threads at once.
 * Glyph substitution is switched off, for it would run every string through regular expressions.
 */
final class ParsedFonts {
  private final Map<Typeface.Weight, TrueTypeFont> weights = new EnumMap<>(Typeface.Weight.class);
  private @Nullable TrueTypeFont letters;

  /** Parses the two weights. */
  ParsedFonts() {
    for (Typeface.Weight weight : Typeface.Weight.values()) {
      try (InputStream in = ParsedFonts.class.getResourceAsStream(weight.file())) {
        if (in == null) {
          throw new IllegalStateException("the font " + weight.file() + " is not in the jar");
        }
        weights.put(weight, parse(RandomAccessReadBuffer.createBufferFromStream(in)));
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }
  }

  private static TrueTypeFont parse(RandomAccessRead file) throws IOException {
    TrueTypeFont font = new TTFParser().parse(file);
    font.setEnableGsub(false);
    return font;
  }

  TrueTypeFont of(Typeface.Weight weight) {
    return Objects.requireNonNull(weights.get(weight));
  }

  /** The font of {@link FieldFont}, parsed when it is first asked for. */
  TrueTypeFont letters() throws IOException {
    if (letters == null) {
      letters = parse(new RandomAccessReadBuffer(FieldFont.letters(of(Typeface.Weight.REGULAR))));
    }
    return letters;
  }
}
