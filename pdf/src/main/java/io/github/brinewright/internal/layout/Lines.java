package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.TextStyle;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Breaks text into lines that fit a width. */
final class Lines {
  private static final Pattern NUMBER = Pattern.compile("^[^ ]*\\d $");

  private Lines() {}

  /**
   * The lines of a text. A word wider than the width is broken within. A line ends with the space
   * that divides it from the next, so that text read aloud neither runs together nor falls apart.
   *
   * @param width more than zero, in points
   */
  static List<String> of(String text, TextStyle style, double width) {
    String printable = style.weight().typeface().printable(text);
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String part : withUnits(parts(printable), style, width)) {
      if (style.width((line + part).stripTrailing()) <= width) {
        line += part;
      } else {
        if (!line.isBlank()) {
          lines.add(line);
        }
        line = breakWord(part, style, width, lines);
      }
    }
    lines.add(line.stripTrailing());
    return lines;
  }

  private static List<String> parts(String text) {
    BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    breaks.setText(text);
    List<String> parts = new ArrayList<>();
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
      if (to == text.length() || !holds(text.charAt(to))) {
        parts.add(text.substring(from, to));
        from = to;
      }
    }
    return parts;
  }

  /** A space that holds what it stands between together, also after a sign of money. */
  private static boolean holds(char letter) {
    return letter == '\u00A0' || letter == '\u202F';
  }

  /** Keeps a number with the word after it, most often its unit, where both fit on a line. */
  private static List<String> withUnits(List<String> parts, TextStyle style, double width) {
    List<String> joined = new ArrayList<>();
    for (String part : parts) {
      int last = joined.size() - 1;
      if (last >= 0
          && NUMBER.matcher(joined.get(last)).find()
          && style.width((joined.get(last) + part).stripTrailing()) <= width) {
        joined.set(last, joined.get(last) + part);
      } else {
        joined.add(part);
      }
    }
    return joined;
  }

  /** Puts all but the last piece of an over-long word into lines; returns the last piece. */
  private static String breakWord(String word, TextStyle style, double width, List<String> lines) {
    String rest = word;
    while (style.width(rest.stripTrailing()) > width) {
      int end = rest.offsetByCodePoints(0, 1);
      while (end < rest.length()
          && style.width(rest.substring(0, rest.offsetByCodePoints(end, 1))) <= width) {
        end = rest.offsetByCodePoints(end, 1);
      }
      if (end >= rest.length()) {
        return rest;
      }
      lines.add(rest.substring(0, end));
      rest = rest.substring(end);
    }
    return rest;
  }
}
