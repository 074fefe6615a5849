package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table whose header row stands again on each page. The first cell of each row heads it. A row
 * taller than {@link #MOST_LINES} lines is divided, so that no row can outgrow a page.
 *
 * @param part that it is
 * @param padding above and below the text of a cell, in points
 * @param shares of the width, one for each column
 * @param header the header row
 * @param rows below it
 * @param marked number of the column marked by heavier rules, or −1
 */
record TableBlock(
    Part part,
    double padding,
    List<Double> shares,
    List<Cell> header,
    List<List<Cell>> rows,
    int marked)
    implements Block {
  static final int MOST_LINES = 14;

  /** Room between columns, in points. */
  static final double GUTTER = 8;

  private static final double HAIRLINE = 0.5;
  private static final double HEAVY = 2.2;

  @Override
  public List<Slice> slices(double width) {
    Slice top = header(width, part.child(Tag.Role.ROW)).kept();
    Slice again = header(width, null);
    List<Slice> slices = new ArrayList<>(List.of(top));
    for (List<Cell> row : rows) {
      for (Slice piece : row(row, width)) {
        slices.add(new Slice(0, piece.height(), false, again, piece.painter()));
      }
    }
    if (slices.size() > 2) {
      int lastButOne = slices.size() - 2;
      slices.set(lastButOne, slices.get(lastButOne).kept());
    }
    return slices;
  }

  private Slice header(double width, @Nullable Part row) {
    List<CellLines> cells = measure(header, width, row, Tag.Scope.COLUMN);
    int lines = cells.stream().mapToInt(CellLines::count).max().orElse(1);
    double height = cells.stream().mapToDouble(c -> c.height(lines)).max().orElse(0) + 2 * padding;
    return Slice.of(
        0,
        height,
        (pen, x, y) -> {
          cells.forEach(cell -> cell.drawFromBottom(pen, x, y + height - padding));
          pen.ornament(() -> headerRules(pen.canvas(), new Box(x, y, width, height)));
        });
  }

  private void headerRules(Canvas canvas, Box box) {
    canvas.rule(box.x(), box.bottom(), box.width(), 1, Ink.TEXT);
    if (marked >= 0) {
      double left = box.x() + left(marked, box.width()) + GUTTER / 2;
      canvas.rule(left, box.y(), shares.get(marked) * box.width() - GUTTER / 2, HEAVY, Ink.TEXT);
    }
  }

  private double left(int column, double width) {
    return shares.subList(0, column).stream().mapToDouble(share -> share * width).sum();
  }

  private List<Slice> row(List<Cell> row, double width) {
    List<CellLines> cells = measure(row, width, part.child(Tag.Role.ROW), Tag.Scope.ROW);
    int lines = cells.stream().mapToInt(CellLines::count).max().orElse(1);
    List<Slice> pieces = new ArrayList<>();
    for (int from = 0; from < lines; from += MOST_LINES) {
      pieces.add(piece(cells, from, Math.min(lines, from + MOST_LINES), width));
    }
    return pieces;
  }

  private Slice piece(List<CellLines> cells, int from, int to, double width) {
    double height =
        cells.stream().mapToDouble(c -> c.height(to - from)).max().orElse(0) + 2 * padding;
    return Slice.of(
        0,
        height,
        (pen, x, y) -> {
          cells.forEach(cell -> cell.draw(pen, x, y + padding, from, to));
          pen.ornament(() -> rowRules(pen.canvas(), cells, new Box(x, y, width, height)));
        });
  }

  private static void rowRules(Canvas canvas, List<CellLines> cells, Box box) {
    canvas.rule(box.x(), box.bottom(), box.width(), HAIRLINE, Ink.HAIRLINE);
    cells.stream()
        .filter(each -> each.cell().marked())
        .forEach(
            each ->
                canvas.rule(box.x() + each.left(), box.bottom(), each.width(), HEAVY, Ink.TEXT));
  }

  private List<CellLines> measure(
      List<Cell> row, double width, @Nullable Part own, Tag.Scope scope) {
    if (row.size() != shares.size()) {
      throw new IllegalArgumentException(
          "a row has " + row.size() + " cells, but the table has " + shares.size() + " columns");
    }
    List<CellLines> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      Cell cell = row.get(i);
      double inset = i == 0 ? 0 : GUTTER;
      double each = shares.get(i) * width - inset;
      boolean heads = scope == Tag.Scope.COLUMN || i == 0;
      cells.add(
          new CellLines(
              cell,
              own == null ? null : heads ? own.head(scope) : own.child(Tag.Role.DATA_CELL),
              left(i, width) + inset,
              each,
              Lines.of(cell.text(), cell.style(), each - cell.indent())));
    }
    return cells;
  }
}
