package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What the labels of a document must say, written from what the library computes and from the
 * bundles alone.
 */
abstract class Expected {
  final Wording words;
  private final Map<String, String> values = new LinkedHashMap<>();
  private final Map<String, String> labels = new LinkedHashMap<>();

  Expected(Wording words) {
    this.words = words;
  }

  Map<String, String> values() {
    return values;
  }

  /** Labels of the keys that have one. */
  Map<String, String> labels() {
    return labels;
  }

  /** A value below a label that is the text of the last part of its key. */
  void value(String key, String value) {
    value(key, words.text(key.substring(key.lastIndexOf('/') + 1)), value);
  }

  void value(String key, String label, String value) {
    values.put(key, value);
    labels.put(key, label);
  }

  void figure(String key, Figure figure) {
    value(key, words.figure(figure));
  }

  void note(String key, String note) {
    if (!note.isEmpty()) {
      values.put(key + "/note", note);
    }
  }

  /** Heads of columns have no label. */
  void head(String key, String head) {
    values.put(key, head);
  }

  /** A line of a table with a cell for each candidate. */
  void line(
      String key, String label, List<Candidate> candidates, Function<Candidate, String> cell) {
    for (Candidate candidate : candidates) {
      value(key + "/" + candidate.softener().id(), label, cell.apply(candidate));
    }
  }

  String term(Enum<?> term) {
    return words.term(term);
  }

  String plain(double number, int decimals) {
    return words.number(number, decimals);
  }
}
