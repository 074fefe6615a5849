package io.github.brinewright.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Passes text to a terminal without what would steer it: control characters other than line ends
 * and tabs, and marks that turn the direction of writing, become dots. What is printed may come
 * from a stranger's file.
 */
final class CleanWriter extends FilterWriter {
  private static final char DOT = '\u00B7';

  CleanWriter(Writer out) {
    super(out);
  }

  @Override
  public void write(int character) throws IOException {
    out.write(clean((char) character));
  }

  @Override
  public void write(char[] text, int from, int count) throws IOException {
    char[] cleaned = new char[count];
    for (int i = 0; i < count; i++) {
      cleaned[i] = clean(text[from + i]);
    }
    out.write(cleaned, 0, count);
  }

  @Override
  public void write(String text, int from, int count) throws IOException {
    write(text.toCharArray(), from, count);
  }

  private static char clean(char character) {
    return steers(character) ? DOT : character;
  }

  private static boolean steers(char character) {
    boolean lays = character == '\n' || character == '\r' || character == '\t';
    boolean turns = character >= '\u202A' && character <= '\u202E';
    boolean isolates = character >= '\u2066' && character <= '\u2069';
    return Character.isISOControl(character) && !lays || turns || isolates;
  }
}
