package io.github.brinewright.internal.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * The metrics of a font of the family we embed: read once and shared by all threads, so that pages
 * are planned without a parsed font.
 */
public final class Typeface {
  /** The two weights in use. */
  public enum Weight {
    REGULAR("SourceSans3-Regular.ttf"),
    BOLD("SourceSans3-Semibold.ttf");

    private final String file;

    Weight(String file) {
      this.file = file;
    }

    String file() {
      return file;
    }

    /** The file of this weight. */
    public byte[] trueType() {
      try (InputStream in = Typeface.class.getResourceAsStream(file)) {
        return Objects.requireNonNull(in, file).readAllBytes();
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }

    /** The typeface of this weight. */
    public Typeface typeface() {
      return Objects.requireNonNull(ALL.get(this));
    }
  }

  private static final char REPLACEMENT = '?';
  private static final short NO_GLYPH = -1;

  /** No font of this family has letters beyond the second plane of Unicode. */
  private static final int CODE_POINTS = 0x20000;

  private static final Map<Weight, Typeface> ALL = read();

  /** In units of the em, by code point up to the last that has a glyph. */
  private final short[] advances;

  private final double unitsPerEm;
  private final float capHeight;
  private final float smallHeight;

  private Typeface(TrueTypeFont font) throws IOException {
    unitsPerEm = font.getUnitsPerEm();
    advances = advances(font);
    OS2WindowsMetricsTable heights = font.getOS2Windows();
    capHeight = thousandths(heights.getCapHeight());
    smallHeight = thousandths(heights.getHeight());
  }

  private static Map<Weight, Typeface> read() {
    Map<Weight, Typeface> all = new EnumMap<>(Weight.class);
    try {
      ParsedFonts fonts = new ParsedFonts();
      for (Weight weight : Weight.values()) {
        all.put(weight, new Typeface(fonts.of(weight)));
      }
      FontPool.SHARED.add(fonts);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return all;
  }

  private static short[] advances(TrueTypeFont font) throws IOException {
    CmapLookup characters = font.getUnicodeCmapLookup();
    short[] found = new short[CODE_POINTS];
    int end = 0;
    for (int codePoint = 0; codePoint < CODE_POINTS; codePoint++) {
      int glyph = characters.getGlyphId(codePoint);
      found[codePoint] = glyph == 0 ? NO_GLYPH : (short) font.getAdvanceWidth(glyph);
      end = glyph == 0 ? end : codePoint + 1;
    }
    return Arrays.copyOf(found, end);
  }

  private float thousandths(int units) {
    return (float) (1000 * units / unitsPerEm);
  }

  /** Height of capital letters, in thousandths of the size. */
  float capHeight() {
    return capHeight;
  }

  /** Height of letters as x, in thousandths of the size. */
  float smallHeight() {
    return smallHeight;
  }

  /** Whether the font has a glyph for a character. */
  public boolean has(int codePoint) {
    return codePoint < advances.length && advances[codePoint] != NO_GLYPH;
  }

  /**
   * The text with accents composed and control characters made spaces; a character that the font
   * lacks is printed as its number, {@code [U+6F22]}, so that it is not lost without a word.
   */
  public String printable(String text) {
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    StringBuilder out = new StringBuilder(composed.length());
    composed
        .codePoints()
        .map(c -> Character.isISOControl(c) ? ' ' : c)
        .forEach(c -> append(out, c));
    return out.toString();
  }

  private void append(StringBuilder out, int codePoint) {
    if (has(codePoint)) {
      out.appendCodePoint(codePoint);
    } else {
      out.append(String.format("[U+%04X]", codePoint));
    }
  }

  /** Width of a text in points; a character that the font lacks counts as its replacement. */
  public double width(String text, double size) {
    long units = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int codePoint = text.codePointAt(i);
      units += advances[has(codePoint) ? codePoint : REPLACEMENT];
    }
    return units / unitsPerEm * size;
  }
}
