package io.github.brinewright.internal.visit;

/** A cell of comma-separated text by RFC 4180: quoted where it must be, quotes doubled. */
final class CsvCell {
  private static final String QUOTE = "\"";

  private CsvCell() {}

  /** What a cell says. */
  static String value(String raw) {
    String inside = raw.strip();
    boolean quoted = inside.length() > 1 && inside.startsWith(QUOTE) && inside.endsWith(QUOTE);
    return quoted
        ? inside.substring(1, inside.length() - 1).replace(QUOTE + QUOTE, QUOTE).strip()
        : inside;
  }

  /** How a cell is written. */
  static String raw(String value) {
    boolean plain = value.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? value : QUOTE + value.replace(QUOTE, QUOTE + QUOTE) + QUOTE;
  }
}
