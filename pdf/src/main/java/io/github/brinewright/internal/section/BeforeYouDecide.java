package io.github.brinewright.internal.section;

import io.github.brinewright.finding.Finding;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Topic;
import java.util.List;

/** The cautions that matter here, the same on every document about a candidate. */
final class BeforeYouDecide {
  private BeforeYouDecide() {}

  /**
   * The cautions as a topic.
   *
   * @param cautions on the home and on the candidate
   */
  static Topic topic(List<Finding> cautions) {
    return Topic.of(
        "opening.check",
        cautions.isEmpty() ? Paragraph.of(Phrase.text("opening.nothing")) : items(cautions, false));
  }

  /**
   * The cautions as a list.
   *
   * @param compact where there is little room
   */
  static Items items(List<Finding> cautions, boolean compact) {
    return new Items(cautions.stream().<Phrase>map(Phrase.Found::new).toList(), compact);
  }

  /** The cautions where there is little room: one alone takes a whole line. */
  static Element compact(List<Finding> cautions) {
    return cautions.size() == 1
        ? Paragraph.quiet(new Phrase.Found(cautions.get(0)))
        : items(cautions, true);
  }
}
