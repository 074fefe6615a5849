package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Table.Kind;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes blocks of tables and labelled rows.
 *
 * @param words in the reader's language
 * @param padding above and below the text of a cell, as a share of its leading
 */
record Tables(Wording words, double padding) {
  private record Style(TextStyle text, List<Kind> kinds) {
    Cell label(String text, boolean total) {
      return Cell.of(text, total ? this.text.bold() : this.text);
    }

    /** A cell of a column by its number. */
    Cell cell(int column, String text, boolean bold) {
      Kind kind = kinds.get(column);
      boolean strong = bold || kind == Kind.MAIN || kind == Kind.CHOSEN;
      Cell cell = Cell.of(text, strong ? this.text.bold() : this.text);
      return kind == Kind.TEXT ? cell : cell.right();
    }
  }

  /** Most columns of values that are set in full size. */
  private static final int MOST_IN_FULL_SIZE = 5;

  /** A table; one of texts or of many columns is set small. */
  Block table(Table table, Part within) {
    List<Kind> kinds = table.columns().stream().map(Table.Column::kind).toList();
    boolean small = kinds.contains(Kind.TEXT) || kinds.size() > MOST_IN_FULL_SIZE;
    Style style = new Style(small ? TextStyle.TINY : TextStyle.SMALL, kinds);
    List<Phrase> heads = new ArrayList<>(List.of(table.corner()));
    table.columns().forEach(column -> heads.add(column.head()));
    List<List<Cell>> rows = table.lines().stream().map(line -> line(style, line)).toList();
    List<Cell> header = header(style, heads);
    for (int i = 0; i < table.columns().size(); i++) {
      header.set(i + 1, header.get(i + 1).with(field(table.columns().get(i).field())));
    }
    return block(within, style, header, rows);
  }

  private @Nullable Field field(io.github.brinewright.model.@Nullable Field chosen) {
    return chosen == null ? null : new FieldBlocks(words).field(chosen);
  }

  private List<Cell> line(Style style, Table.Line line) {
    List<Cell> row = row(style, line.label(), line.cells(), line.total());
    row.set(0, row.get(0).with(field(line.field())));
    line.marked()
        .forEach(
            i -> {
              Cell strong = style.cell(i, row.get(i + 1).text(), true);
              row.set(i + 1, strong.withRule());
            });
    return row;
  }

  /** Labelled rows; where one sums up the others, it alone stands out. */
  Block rows(Rows rows, Part within) {
    boolean summed = rows.rows().stream().anyMatch(Row::total);
    List<Kind> kinds = new ArrayList<>(List.of(summed ? Kind.VALUES : Kind.MAIN));
    boolean noted = rows.heads().size() > 2;
    if (noted) {
      kinds.add(Kind.TEXT);
    }
    Style style = new Style(TextStyle.SMALL, kinds);
    List<List<Cell>> cells =
        rows.rows().stream()
            .map(
                row ->
                    row(
                        style,
                        row.label(),
                        noted ? List.of(row.value(), row.note()) : List.of(row.value()),
                        row.total()))
            .toList();
    return block(within, style, header(style, rows.heads()), cells);
  }

  private List<Cell> row(Style style, Phrase label, List<Phrase> cells, boolean total) {
    List<Cell> row = new ArrayList<>(List.of(style.label(label.in(words), total)));
    for (int i = 0; i < cells.size(); i++) {
      row.add(style.cell(i, cells.get(i).in(words), total));
    }
    return row;
  }

  private List<Cell> header(Style style, List<Phrase> heads) {
    List<Cell> header = new ArrayList<>(List.of(style.label(heads.get(0).in(words), true)));
    for (int i = 1; i < heads.size(); i++) {
      header.add(style.cell(i - 1, heads.get(i).in(words), true));
    }
    return header;
  }

  private Block block(Part within, Style style, List<Cell> header, List<List<Cell>> rows) {
    List<List<Cell>> all = new ArrayList<>(List.of(header));
    all.addAll(rows);
    Part part = within.child(Tag.Role.TABLE);
    int marked = style.kinds().indexOf(Kind.CHOSEN) + 1;
    return width ->
        new TableBlock(
                part,
                padding * header.get(0).style().leading(),
                new ColumnShares(style.kinds(), all, width).shares(),
                header,
                rows,
                marked == 0 ? -1 : marked)
            .slices(width);
  }
}
