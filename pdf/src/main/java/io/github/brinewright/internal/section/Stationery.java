package io.github.brinewright.internal.section;

import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Beside;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Drawing;
import io.github.brinewright.internal.layout.FieldBox;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What every document needs: the dealer, the words in the reader's language, the look of text. */
public class Stationery {
  private static final double LABEL_WIDTH = 128;
  private static final double LINE_ROOM = 24;

  private final Dealer dealer;
  private final Wording words;
  private final LocalDate date;
  private final Tag root;

  /**
   * Stationery of a dealer.
   *
   * @param words in the reader's language
   * @param date of the document
   * @param root of the document's structure
   */
  public Stationery(Dealer dealer, Wording words, LocalDate date, Tag root) {
    this.dealer = dealer;
    this.words = words;
    this.date = date;
    this.root = root;
  }

  /** Who makes the document. */
  public Dealer dealer() {
    return dealer;
  }

  /** Words in the reader's language. */
  public Wording words() {
    return words;
  }

  /** Date of the document. */
  public LocalDate date() {
    return date;
  }

  /** Root of the document's structure. */
  public Tag root() {
    return root;
  }

  /** Colour of the dealer, dark enough to read. */
  Ink accent() {
    return Ink.of(dealer.accent()).readable();
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

  /** What is there of some details, in one quiet line. */
  Block details(Tag section, Stream<String> parts) {
    return quiet(
        section, parts.filter(part -> !part.isEmpty()).collect(Collectors.joining("  ·  ")));
  }

  /** A list of its own. */
  Block list(Tag section, List<String> items) {
    return items(section.child(Tag.Role.LIST), items, TextStyle.BODY);
  }

  /** Items of a list, each with room above it. */
  Block items(Tag list, List<String> items, TextStyle style) {
    return Block.stack(
        items.stream()
            .map(
                item ->
                    new Paragraph(
                            list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY), item, style)
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

  /** A figure, after what was made before it. */
  Block drawing(Tag section, String alternative, Drawing.Artist artist) {
    return new Drawing(section.child(Tag.Role.FIGURE).alternative(alternative), artist);
  }

  /** A line to write on, with a field above it and what belongs there below. */
  Block line(Tag section, Field field, String label) {
    Block below = quiet(section, label).after(3);
    Tag form = section.child(Tag.Role.FORM);
    return Block.stack(
        List.of(new FieldBox(form, field.open(), LINE_ROOM), Drawing.rule(0.8, Ink.TEXT), below));
  }

  Cell cell(String text) {
    return Cell.of(text, TextStyle.SMALL);
  }

  Cell strong(String text) {
    return Cell.of(text, TextStyle.SMALL.bold());
  }
}
