package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.job.Logo;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Letterhead;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes blocks of a whole document.
 *
 * @param words in the reader's language
 * @param look of the document
 */
record DocumentBlocks(Wording words, Look look) {
  private static final Box LOGO = new Box(0, 0, 130, 42);
  private static final String BETWEEN_DETAILS = "  ·  ";

  /** The document in parts, each of which begins a page. */
  List<Block> parts(Document document) {
    List<Block> parts = new ArrayList<>();
    List<Block> part = new ArrayList<>(List.of(head(document)));
    for (Section section : document.sections()) {
      if (section.ownPage()) {
        parts.add(Block.stack(part));
        part = new ArrayList<>();
      }
      part.add(section(section).after(look.above(section)));
    }
    parts.add(Block.stack(part));
    return parts;
  }

  private Block head(Document document) {
    Part part = Part.of(Tag.Role.SECTION);
    Block heading =
        new TextBlock(part.child(Tag.Role.H1), document.heading().in(words), look.title());
    List<Block> blocks =
        new ArrayList<>(
            List.of(letterhead(document.letterhead(), part), heading.after(look.aboveTitle())));
    if (!document.details().isEmpty()) {
      blocks.add(details(document.details(), part).after(4));
    }
    return Block.stack(blocks);
  }

  private Block letterhead(Letterhead letterhead, Part part) {
    Block name = new TextBlock(part.child(Tag.Role.PARAGRAPH), letterhead.name(), look.dealer());
    List<Phrase> details = letterhead.details().stream().map(Phrase::plain).toList();
    Block text = Block.stack(List.of(name, details(details, part).after(2)));
    Logo logo = letterhead.logo();
    Block head = logo == null ? text : beside(text, logo);
    return Block.stack(List.of(head, FigureBlock.rule(1.2, look.accent()).after(7)));
  }

  private static Block beside(Block text, Logo logo) {
    return width ->
        List.of(
            Overlay.of(
                FigureBlock.atRight(logo, LOGO).slices(width),
                text.slices(width - LOGO.width() - 20)));
  }

  private Block details(List<Phrase> details, Part part) {
    String text = new Phrase.Joined(details, BETWEEN_DETAILS).in(words);
    return new TextBlock(part.child(Tag.Role.PARAGRAPH), text, Look.text(Paragraph.Voice.QUIET));
  }

  /** A section; headings within one that has no title of its own take the level of titles. */
  private Block section(Section section) {
    Part part = Part.of(Tag.Role.SECTION);
    if (section.title().isEmpty()) {
      return new Elements(words, look, part, Tag.Role.H2).stack(section.elements());
    }
    Block title =
        new TextBlock(part.child(Tag.Role.H2), section.title().in(words), look.sectionTitle())
            .keptWithNext();
    Block matter = new Elements(words, look, part, Tag.Role.H3).stack(section.elements());
    return Block.stack(List.of(title, matter.after(look.belowSectionTitle())));
  }
}
