package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * Fields in rows, each below its label. A label of several lines pushes the fields of its row down
 * together.
 *
 * @param part that they are, of its own
 * @param columns of equal width
 * @param style of the labels
 * @param entries from left to right, row by row
 */
record FieldGrid(Part part, int columns, TextStyle style, List<Entry> entries) implements Block {
  /**
   * A field with what stands above it.
   *
   * @param field to fill; its label is printed
   * @param span columns it takes
   */
  record Entry(Field field, int span) {}

  private record Placed(Field field, CellLines label, Part form) {}

  private static final double GUTTER = 12;
  private static final double ROW_GAP = 5;
  private static final double FIELD_GAP = 1.5;
  private static final double FIELD = 18;

  @Override
  public List<Slice> slices(double width) {
    List<Slice> rows = new ArrayList<>();
    List<Placed> row = new ArrayList<>();
    int taken = 0;
    for (Entry entry : entries) {
      if (taken + entry.span() > columns) {
        rows.add(row(row));
        row = new ArrayList<>();
        taken = 0;
      }
      row.add(place(entry, taken, (width + GUTTER) / columns));
      taken += entry.span();
    }
    rows.add(row(row));
    return rows;
  }

  private Placed place(Entry entry, int column, double pitch) {
    double wide = entry.span() * pitch - GUTTER;
    Cell label = Cell.of(entry.field().label(), style);
    CellLines lines =
        new CellLines(
            label,
            part.child(Tag.Role.PARAGRAPH),
            column * pitch,
            wide,
            Lines.of(label.text(), style, wide));
    return new Placed(entry.field(), lines, part.child(Tag.Role.FORM));
  }

  private Slice row(List<Placed> row) {
    int lines = row.stream().mapToInt(placed -> placed.label().count()).max().orElse(1);
    double labels = lines * style.leading();
    return Slice.of(
        ROW_GAP,
        labels + FIELD_GAP + FIELD,
        (pen, x, y) -> row.forEach(placed -> draw(pen, placed, x, y + labels)));
  }

  private static void draw(Pen pen, Placed placed, double x, double middle) {
    CellLines label = placed.label();
    label.drawFromBottom(pen, x, middle);
    Box box = new Box(x + label.left(), middle + FIELD_GAP, label.width(), FIELD);
    pen.field(placed.form(), placed.field(), box);
  }
}
