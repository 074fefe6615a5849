package io.github.brinewright.job;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the known name that was probably meant. */
final class Nearest {
  private Nearest() {}

  /** The nearest of the known names, when it is near enough to be worth naming. */
  static Optional<String> to(String written, Collection<String> known) {
    return known.stream()
        .min(Comparator.comparingInt((String name) -> distance(written, name)))
        .filter(name -> distance(written, name) <= Math.max(2, name.length() / 2));
  }

  /** The nearest of the known names, however far, the nearest first. */
  static List<String> first(int most, String written, Collection<String> known) {
    return known.stream()
        .sorted(Comparator.comparingInt((String name) -> distance(written, name)))
        .limit(most)
        .toList();
  }

  /** Levenshtein's distance: insertions, deletions and replacements. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= Math.min(a.length(), 100); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
