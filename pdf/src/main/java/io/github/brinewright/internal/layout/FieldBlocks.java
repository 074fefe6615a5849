package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.words.Wording;
import java.util.List;

/** Makes blocks of fields to fill. */
record FieldBlocks(Wording words) {
  private static final double LINE_ROOM = 18;
  private static final double GUTTER = 20;

  /** Side of a box to tick, in points. */
  static final double BOX = 9.5;

  private static final double TEXT_AFTER_BOX = 17;

  /** Fields in rows below their labels. */
  Block fields(Fields fields, Part within) {
    List<FieldGrid.Entry> entries =
        fields.entries().stream()
            .map(entry -> new FieldGrid.Entry(field(entry.field()), entry.span()))
            .toList();
    Part part = within.child(Tag.Role.DIVISION);
    return new FieldGrid(part, fields.columns(), TextStyle.SMALL, entries);
  }

  /** Lines to write on, side by side. */
  Block lines(WritingLines lines, Part within) {
    return new ColumnsBlock(
        lines.lines().stream().map(line -> line(line, within)).toList(), GUTTER);
  }

  /** A line to write on, with a field above it and what belongs there below. */
  private Block line(WritingLines.Line line, Part within) {
    Block box = new FieldBox(within.child(Tag.Role.FORM), field(line.field()).open(), LINE_ROOM);
    Block below =
        new TextBlock(
            within.child(Tag.Role.PARAGRAPH),
            line.caption().in(words),
            Look.text(Paragraph.Voice.QUIET));
    return Block.stack(List.of(box, FigureBlock.rule(0.8, Ink.TEXT), below.after(3)));
  }

  /** A list to tick off. */
  Block ticks(Ticks ticks, Part within) {
    Part list = within.child(Tag.Role.LIST);
    return Block.stack(
        ticks.fields().stream().map(each -> tick(field(each), list).after(3)).toList());
  }

  private static Block tick(Field field, Part list) {
    Part item = list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY);
    Block box = new FieldBox(item.child(Tag.Role.FORM), field, BOX);
    Block text =
        new TextBlock(item, field.label(), TextStyle.SMALL).indented(TEXT_AFTER_BOX).whole();
    return width -> List.of(Overlay.of(box.slices(BOX), text.slices(width)));
  }

  Field field(io.github.brinewright.model.Field field) {
    String label = field.label().in(words);
    Field made =
        switch (field.kind()) {
          case TEXT -> Field.text(field.name(), label);
          case CHOICE -> Field.choice(field.name(), label, choices(field));
          case TICK -> Field.tick(field.name(), label);
          case ONE_OF -> Field.oneOf(field.name(), label, field.value());
          case SIGNATURE -> Field.signature(field.name(), label);
        };
    Field filled = made.containing(field.value());
    return field.needed() ? filled.mandatory() : filled;
  }

  private List<Field.Choice> choices(io.github.brinewright.model.Field field) {
    return field.choices().stream()
        .map(choice -> new Field.Choice(choice.value(), choice.name().in(words)))
        .toList();
  }
}
