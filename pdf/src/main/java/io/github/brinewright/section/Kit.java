package io.github.brinewright.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.Tag;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.layout.Beside;
import io.github.brinewright.layout.Block;
import io.github.brinewright.layout.Cell;
import io.github.brinewright.layout.Paragraph;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import io.github.brinewright.year.Study;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What every section needs: the comparison, the dealer, the words, and the look of text.
 *
 * @param comparison what to show
 * @param study of a year in the home, when one was made
 * @param dealer who shows it
 * @param words in the reader's language
 * @param date of the proposal
 * @param root of the document's structure
 */
public record Kit(
    Comparison comparison,
    Optional<Study> study,
    Dealer dealer,
    Wording words,
    LocalDate date,
    Tag root) {
  /** Most options that a page has room for. */
  static final int MOST_COLUMNS = 5;

  private static final double LABEL_WIDTH = 128;

  /** Colour of the dealer, dark enough to read. */
  Ink accent() {
    return Ink.of(dealer.accent()).readable();
  }

  /** The options to show as columns. */
  List<Option> columns() {
    return comparison.columns(MOST_COLUMNS);
  }

  /**
   * The option to explain in full: the recommended one, or the best of those that break a limit.
   */
  Option explained() {
    return comparison.closest();
  }

  String text(String key, Figure... figures) {
    return words.text(key, figures);
  }

  Block heading(Tag section, String text) {
    return new Paragraph(section.child(Tag.Role.H2), text, TextStyle.HEADING).keptWithNext();
  }

  Block subheading(Tag section, String text) {
    return subheading(section, Tag.Role.H3, text);
  }

  /** A heading of the look of a subheading at another level. */
  Block subheading(Tag section, Tag.Role level, String text) {
    return new Paragraph(section.child(level), text, TextStyle.BODY.sized(11.5).bold().in(accent()))
        .keptWithNext();
  }

  Block body(Tag section, String text) {
    return new Paragraph(section.child(Tag.Role.PARAGRAPH), text, TextStyle.BODY);
  }

  Block quiet(Tag section, String text) {
    return new Paragraph(section.child(Tag.Role.PARAGRAPH), text, TextStyle.SMALL.in(Ink.QUIET));
  }

  /** Items of a list, each with room above it. */
  Block list(Tag section, List<String> items) {
    Tag list = section.child(Tag.Role.LIST);
    return Block.stack(
        items.stream()
            .map(
                item ->
                    new Paragraph(
                            list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY),
                            item,
                            TextStyle.BODY)
                        .whole()
                        .after(4))
            .toList());
  }

  /** A label on the left, matter on the right. */
  Block beside(Tag section, String label, Function<Tag, Block> matter) {
    Block left =
        new Paragraph(section.child(Tag.Role.H2), label, TextStyle.BODY.bold().in(accent()));
    return new Beside(left, matter.apply(section), LABEL_WIDTH);
  }

  Cell cell(String text) {
    return Cell.of(text, TextStyle.SMALL);
  }

  Cell strong(String text) {
    return Cell.of(text, TextStyle.SMALL.bold());
  }
}
