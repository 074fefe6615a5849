package io.github.brinewright.internal.section;

import io.github.brinewright.model.Items;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Topic;
import java.util.stream.IntStream;

/**
 * What happens next, in four steps.
 *
 * @param subject of the document
 */
record NextSteps(Subject subject) {
  private static final int STEPS = 4;

  Topic topic() {
    return Topic.of(
        "next.heading",
        new Items(IntStream.rangeClosed(1, STEPS).mapToObj(this::step).toList(), true));
  }

  private Phrase step(int number) {
    String key = "next." + number;
    if (number == 1 && !subject.signs()) {
      boolean tests = !subject.comparison().verdict().permitsSignature();
      return Phrase.text(tests ? "next.tests" : "next.forms");
    }
    return Phrase.text(number == 2 && subject.keeps() ? key + ".keep" : key);
  }
}
