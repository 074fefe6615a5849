package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
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

  /** What is stated of the water after treatment, the last after "and". */
  final String treated(TreatedWater after) {
    List<String> all = new ArrayList<>();
    all.add(words.text("treated.hardness", Figure.of(after.hardness())));
    after.iron().ifPresent(left -> all.add(left("treated.iron", left)));
    after.manganese().ifPresent(left -> all.add(left("treated.manganese", left)));
    after.ph().ifPresent(ph -> all.add(words.text("treated.ph", Figure.of(ph, 1))));
    int last = all.size() - 1;
    return last == 0
        ? all.get(0)
        : String.join(", ", all.subList(0, last)) + " " + words.text("and") + " " + all.get(last);
  }

  private String left(String key, LabResult left) {
    return words.text(key, Figure.of(result(left, 2)));
  }

  final String result(LabResult result, int decimals) {
    Figure amount = Figure.of(result.atMost(), decimals);
    return switch (result.kind()) {
      case MEASURED -> words.figure(amount);
      case BELOW_REPORTING_LIMIT -> words.text("water.below", amount);
      case NOT_DETECTED -> words.text("water.notDetected");
    };
  }
}
