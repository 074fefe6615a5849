package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Notes;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Picture;
import io.github.brinewright.model.References;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.Topic;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes blocks of the elements of one section.
 *
 * @param words in the reader's language
 * @param look of the document
 * @param part that the section is
 * @param level of headings within it
 */
record Elements(Wording words, Look look, Part part, Tag.Role level) {
  /** What is no taller, in points, is not divided over pages. */
  private static final double MOST_WHOLE = 520;

  private static final Box PICTURE = new Box(0, 0, 440, 380);

  private static final double LABEL_WIDTH = 128;
  private static final double ITEM_GAP = 3;
  private static final double GUTTER = 20;

  /** Elements from top to bottom, with room between them. */
  Block stack(List<Element> elements) {
    return Block.stack(blocks(elements));
  }

  private List<Block> blocks(List<Element> elements) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < elements.size(); i++) {
      Block block = block(elements.get(i));
      block = leadsIn(elements, i) ? withFollowing(block, elements.get(i + 1)) : block;
      blocks.add(i == 0 ? block : block.after(Gaps.between(elements.get(i - 1), elements.get(i))));
    }
    return blocks;
  }

  /** Whether it is the paragraph below a heading, which might be left alone above a page break. */
  private static boolean leadsIn(List<Element> elements, int i) {
    boolean first = i == 0 || elements.get(i - 1) instanceof Heading;
    return first && i + 1 < elements.size() && elements.get(i) instanceof Paragraph;
  }

  /** The lead of a table with that; of other matter where it is a single line. */
  private static Block withFollowing(Block lead, Element following) {
    boolean table = following instanceof Table || following instanceof Rows;
    return width -> {
      List<Slice> lines = lead.slices(width);
      return table || lines.size() == 1 ? lines.stream().map(Slice::kept).toList() : lines;
    };
  }

  private Block block(Element element) {
    if (element instanceof Heading heading) {
      return text(level, heading.text(), look.heading(heading.rank())).keptWithNext();
    } else if (element instanceof Paragraph paragraph) {
      return text(paragraph.text(), Look.text(paragraph.voice()));
    } else if (element instanceof Items items) {
      return items(items);
    } else if (element instanceof Rows rows) {
      return new Tables(words, look.cellPadding()).rows(rows, part).wholeUpTo(MOST_WHOLE);
    } else if (element instanceof Table table) {
      return new Tables(words, look.cellPadding()).table(table, part).wholeUpTo(MOST_WHOLE);
    } else if (element instanceof Chart chart) {
      return new Charts(words, look.accent()).chart(chart, part);
    } else if (element instanceof Picture picture) {
      return FigureBlock.of(
          part.figure(picture.alternative().in(words)), picture.picture(), PICTURE);
    } else if (element instanceof Together together) {
      return Block.together(blocks(together.elements()), MOST_WHOLE);
    } else {
      return arranged(element);
    }
  }

  /** What stands side by side, or is to be filled. */
  private Block arranged(Element element) {
    if (element instanceof Topic topic) {
      return topic(topic);
    } else if (element instanceof Facts facts) {
      return new ColumnsBlock(facts.rows().stream().map(this::fact).toList(), 16);
    } else if (element instanceof Notes notes) {
      return notes(notes.rows());
    } else if (element instanceof Columns columns) {
      return new ColumnsBlock(columns.columns().stream().map(this::stack).toList(), 18);
    } else if (element instanceof References references) {
      return references(references);
    } else if (element instanceof Fields fields) {
      return new FieldBlocks(words).fields(fields, part);
    } else if (element instanceof WritingLines lines) {
      return new FieldBlocks(words).lines(lines, part);
    } else if (element instanceof Ticks ticks) {
      return new FieldBlocks(words).ticks(ticks, part);
    }
    throw new IllegalStateException("no way to draw " + element);
  }

  private Block text(Phrase text, TextStyle style) {
    return text(Tag.Role.PARAGRAPH, text, style);
  }

  private Block text(Tag.Role role, Phrase text, TextStyle style) {
    return new TextBlock(part.child(role), text.in(words), style);
  }

  /** A list; a compact one small and in two columns. */
  private Block items(Items items) {
    Part list = part.child(Tag.Role.LIST);
    List<Phrase> all = items.items();
    if (!items.compact()) {
      return items(list, all, TextStyle.BODY);
    }
    int half = (all.size() + 1) / 2;
    return new ColumnsBlock(
        List.of(
            items(list, all.subList(0, half), TextStyle.SMALL),
            items(list, all.subList(half, all.size()), TextStyle.SMALL)),
        GUTTER);
  }

  private Block items(Part list, List<Phrase> items, TextStyle style) {
    return Block.stack(items.stream().map(item -> item(list, item, style)).toList());
  }

  private Block item(Part list, Phrase item, TextStyle style) {
    Part body = list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY);
    return new TextBlock(body, item.in(words), style).whole().after(ITEM_GAP);
  }

  private Block topic(Topic topic) {
    Block label = text(level, topic.label(), look.topic());
    Elements inner = new Elements(words, look, part, Tag.Role.H3);
    return new Beside(label, inner.stack(topic.matter()), LABEL_WIDTH);
  }

  private Block fact(Row row) {
    return Block.stack(
        List.of(
            FigureBlock.rule(0.8, Ink.HAIRLINE),
            text(row.value(), TextStyle.HEADING.sized(18)).after(6),
            text(row.label(), Look.text(Paragraph.Voice.QUIET))));
  }

  /** Three in a row, or else two. */
  private Block notes(List<Row> rows) {
    int across = rows.size() == 3 ? 3 : 2;
    List<Block> lines = new ArrayList<>();
    for (int i = 0; i < rows.size(); i += across) {
      List<Block> line = new ArrayList<>();
      rows.subList(i, Math.min(i + across, rows.size())).forEach(row -> line.add(note(row)));
      while (line.size() < across) {
        line.add(Block.stack(List.of()));
      }
      lines.add(new ColumnsBlock(line, GUTTER).after(i == 0 ? 0 : 7));
    }
    return Block.stack(lines);
  }

  private Block note(Row row) {
    return Block.stack(
        List.of(text(row.label(), TextStyle.SMALL.bold()), text(row.value(), TextStyle.SMALL)));
  }

  /** Sources are in the language of their publication, most often English. */
  private Block references(References references) {
    return Block.stack(
        IntStream.range(0, references.sources().size())
            .mapToObj(
                i ->
                    new TextBlock(
                        part.paragraph("en"),
                        (references.first() + i)
                            + "  "
                            + new Phrase.Cited(references.sources().get(i)).in(words),
                        TextStyle.TINY))
            .toList());
  }
}
