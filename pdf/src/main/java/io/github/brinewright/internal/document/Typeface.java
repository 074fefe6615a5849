package io.github.brinewright.internal.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A font of the family we embed, with its metrics. The file is parsed once for each thread: a
 * parsed font must not be read by two threads at once. Glyph substitution is switched off, for it
 * would run every string through regular expressions.
 */
public final class Typeface {
  /** The two weights in use. */
  public enum Weight {
    REGULAR("SourceSans3-Regular.ttf"),
    BOLD("SourceSans3-Semibold.ttf");

    private final String file;
    private final ThreadLocal<Typeface> typeface;

    Weight(String file) {
      this.file = file;
      typeface = ThreadLocal.withInitial(() -> new Typeface(this));
    }

    /** The typeface of this weight, for this thread. */
    public Typeface typeface() {
      return typeface.get();
    }
  }

  private static final char REPLACEMENT = '?';

  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final double unitsPerEm;
  private final Map<Integer, Double> advances = new HashMap<>();

  private Typeface(Weight weight) {
    try (InputStream in = Typeface.class.getResourceAsStream(weight.file)) {
      if (in == null) {
        throw new IllegalStateException("the font " + weight.file + " is not in the jar");
      }
      font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
      font.setEnableGsub(false);
      characters = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  /** Height of capital letters, in thousandths of the size. */
  float capHeight() {
    return thousandths(OS2WindowsMetricsTable::getCapHeight);
  }

  /** Height of letters as x, in thousandths of the size. */
  float smallHeight() {
    return thousandths(OS2WindowsMetricsTable::getHeight);
  }

  private float thousandths(ToIntFunction<OS2WindowsMetricsTable> height) {
    try {
      return (float) (1000 * height.applyAsInt(font.getOS2Windows()) / unitsPerEm);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Whether the font has a glyph for a character. */
  public boolean has(int codePoint) {
    return characters.getGlyphId(codePoint) != 0;
  }

  /**
   * The text with accents composed and control characters made spaces; a character that the font
   * lacks becomes a question mark.
   */
  public String printable(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    StringBuilder out = new StringBuilder(composed.length());
    composed
        .codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : c)
        .forEach(c -> out.appendCodePoint(has(c) ? c : REPLACEMENT));
    return out.toString();
  }

  /** Width of a text in points. */
  public double width(String text, double size) {
    double sum = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      sum += advances.computeIfAbsent(text.codePointAt(i), this::advance);
    }
    return sum * size;
  }

  private double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(characters.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
