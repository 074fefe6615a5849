package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Section;

/**
 * How a kind of document looks. All gaps in points.
 *
 * @param title its heading
 * @param aboveTitle gap above that
 * @param sectionTitle heading of a section
 * @param aboveSection gap above that
 * @param belowSectionTitle gap below that
 * @param aboveUntitled gap above a section without a title
 * @param cellPadding room above and below the text of a table's cells, as a share of its leading
 * @param accent colour of the dealer, dark enough to read
 */
record Look(
    TextStyle title,
    double aboveTitle,
    TextStyle sectionTitle,
    double aboveSection,
    double belowSectionTitle,
    double aboveUntitled,
    double cellPadding,
    Ink accent) {
  private static final double USUAL = 0.27;
  private static final double CLOSE = 0.13;

  static Look of(Document.Kind kind, Ink colour) {
    Ink accent = colour.readable();
    TextStyle small = partHeading(accent);
    TextStyle large = TextStyle.HEADING;
    return switch (kind) {
      case PROPOSAL -> new Look(large.sized(21), 14, large.sized(15.5), 18, 5, 13, 0.2, accent);
      case PAGE -> new Look(large.sized(20), 8, small, 9, 2, 5, USUAL, accent);
      case REPORT -> new Look(large.sized(20), 10, small, 13, 3, 8, USUAL, accent);
      case SHEET -> new Look(large.sized(21), 10, small, 12, 3, 8, CLOSE, accent);
      case FORM -> new Look(large.sized(21), 16, small, 11, 0, 8, USUAL, accent);
    };
  }

  /** Gap above a section. */
  double above(Section section) {
    return section.title().isEmpty() ? aboveUntitled : aboveSection;
  }

  TextStyle heading(Heading.Rank rank) {
    return rank == Heading.Rank.NAME ? TextStyle.HEADING.sized(19) : partHeading(accent);
  }

  private static TextStyle partHeading(Ink accent) {
    return TextStyle.BODY.sized(11.5).bold().in(accent);
  }

  TextStyle topic() {
    return TextStyle.BODY.bold().in(accent);
  }

  TextStyle dealer() {
    return TextStyle.BODY.sized(13).bold().in(accent);
  }

  static TextStyle text(Paragraph.Voice voice) {
    return switch (voice) {
      case PLAIN -> TextStyle.BODY;
      case STRONG -> TextStyle.BODY.bold();
      case QUIET -> TextStyle.SMALL.in(Ink.QUIET);
      case FINE -> TextStyle.TINY;
    };
  }
}
