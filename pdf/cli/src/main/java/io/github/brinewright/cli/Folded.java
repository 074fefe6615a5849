package io.github.brinewright.cli;

import java.util.ArrayList;
import java.util.List;

/** Text over several lines of a terminal. */
final class Folded {
  /** Widest line of a sentence. */
  static final int WIDTH = 100;

  private Folded() {}

  /** Lines no wider than a width, parted between words; a longer word has a line of its own. */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
        lines.add(line);
        line = word;
      } else {
        line = line.isEmpty() ? word : line + " " + word;
      }
    }
    lines.add(line);
    return lines;
  }

  /** A sentence after a mark, its further lines set in as far as the mark is wide. */
  static List<String> item(String mark, String text) {
    List<String> lines = lines(text, WIDTH - mark.length());
    String margin = " ".repeat(mark.length());
    List<String> all = new ArrayList<>();
    for (String line : lines) {
      all.add((all.isEmpty() ? mark : margin) + line);
    }
    return all;
  }

  /** A text with blanks up to a width, on its left or its right. */
  static String padded(String text, int width, boolean right) {
    String pad = " ".repeat(Math.max(0, width - text.length()));
    return right ? pad + text : text + pad;
  }
}
