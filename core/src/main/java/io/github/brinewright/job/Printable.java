package io.github.brinewright.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Which characters documents can print: letters of the Latin, Greek and Cyrillic scripts, with
 * figures and signs. They are those of the font that documents are set in.
 *
 * <pre>{@code
 * Printable.has('Ł');               // true
 * Printable.lacking("王 Wang");      // U+738B
 * }</pre>
 */
public final class Printable {
  private static final String FILE = "printable.txt";
  private static final int HEX = 16;
  private static final BitSet CHARACTERS = read();

  private Printable() {}

  private static BitSet read() {
    BitSet characters = new BitSet();
    for (String range : text().strip().split("\\s+")) {
      String[] ends = range.split("-");
      int first = Integer.parseInt(ends[0], HEX);
      characters.set(first, Integer.parseInt(ends[ends.length - 1], HEX) + 1);
    }
    return characters;
  }

  private static String text() {
    try (InputStream in = Printable.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException(FILE + " is not in the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.US_ASCII);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /**
   * {@return whether documents can print a character}
   *
   * @param codePoint of Unicode
   */
  public static boolean has(int codePoint) {
    return CHARACTERS.get(codePoint);
  }

  /**
   * {@return the characters of a text that documents cannot print, each once, in their order}
   * Accents written apart are taken together with their letters first.
   *
   * @param text of any script
   */
  public static List<Integer> lacking(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .filter(codePoint -> !has(codePoint))
        .distinct()
        .boxed()
        .toList();
  }

  /**
   * {@return whether a character cannot be seen, or turns the direction of writing: controls,
   * separators of lines, halves of characters, and those that Unicode assigns to nobody}
   *
   * @param codePoint of Unicode
   */
  static boolean isInvisible(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.PRIVATE_USE ->
          true;
      default -> false;
    };
  }

  /** Characters with their numbers, for a message: {@code 王 (U+738B)}. */
  static String named(List<Integer> codePoints) {
    return codePoints.stream().map(Printable::named).collect(Collectors.joining(", "));
  }

  private static String named(int codePoint) {
    String number = String.format("U+%04X", codePoint);
    return isInvisible(codePoint) ? number : Character.toString(codePoint) + " (" + number + ")";
  }
}
