package io.github.brinewright.internal.document;

import java.util.Locale;

/**
 * A colour; each part from 0 to 1.
 *
 * @param red share of red light
 * @param green share of green light
 * @param blue share of blue light
 */
public record Ink(float red, float green, float blue) {
  /** Colour of running text. */
  public static final Ink TEXT = of("#22282B");

  /** Colour of captions and notes; still 4.5 : 1 on white. */
  public static final Ink QUIET = of("#5A6468");

  /** Between captions and hairlines, for fills. */
  public static final Ink MIDDLE = of("#879296");

  /** Colour of hairlines. */
  public static final Ink HAIRLINE = of("#C9CFD1");

  /** White. */
  public static final Ink PAPER = of("#FFFFFF");

  /**
   * A colour from # and six hexadecimal digits.
   *
   * @throws IllegalArgumentException when the text has another form
   */
  public static Ink of(String hex) {
    if (!hex.matches("#[0-9A-Fa-f]{6}")) {
      throw new IllegalArgumentException("\"" + hex + "\" is not # and six hexadecimal digits");
    }
    int value = Integer.parseInt(hex.substring(1).toLowerCase(Locale.ROOT), 16);
    return new Ink((value >> 16 & 0xFF) / 255f, (value >> 8 & 0xFF) / 255f, (value & 0xFF) / 255f);
  }

  /** As # and six hexadecimal digits. */
  public String hex() {
    return "#%02X%02X%02X"
        .formatted(Math.round(red * 255), Math.round(green * 255), Math.round(blue * 255));
  }

  /** Contrast with another colour by WCAG 2.1, 1 to 21; text needs at least 4.5. */
  public double contrastWith(Ink other) {
    double a = luminance() + 0.05;
    double b = other.luminance() + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(float part) {
    return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  /** This colour, darkened until text of it can be read on white. */
  public Ink readable() {
    Ink ink = this;
    while (ink.contrastWith(PAPER) < 4.5) {
      ink = new Ink(ink.red * 0.95f, ink.green * 0.95f, ink.blue * 0.95f);
    }
    return ink;
  }
}
