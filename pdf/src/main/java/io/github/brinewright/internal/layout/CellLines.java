package io.github.brinewright.internal.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A cell, measured. Without a part it is drawn as an ornament, as in a repeated header. */
record CellLines(Cell cell, @Nullable Part part, double left, double width, List<String> lines) {
  int count() {
    return lines.size();
  }

  double height(int count) {
    return cell.style().leading() * Math.min(count, lines.size());
  }

  void drawFromBottom(Pen pen, double x, double bottom) {
    draw(pen, x, bottom - height(lines.size()), 0, lines.size());
  }

  void draw(Pen pen, double x, double top, int from, int to) {
    List<String> shown = lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
    boolean nothing = shown.stream().allMatch(String::isEmpty);
    if (part == null) {
      pen.ornament(() -> write(pen, x, top, shown));
    } else if (nothing) {
      pen.empty(part);
    } else {
      pen.tagged(part, () -> write(pen, x, top, shown));
    }
  }

  private void write(Pen pen, double x, double top, List<String> shown) {
    double baseline = top + cell.style().leading() * TextBlock.ASCENT;
    for (String line : shown) {
      pen.canvas().text(x + left + offset(line), baseline, line, cell.style());
      baseline += cell.style().leading();
    }
  }

  private double offset(String line) {
    return cell.align() == Cell.Align.RIGHT ? width - cell.style().width(line.stripTrailing()) : 0;
  }
}
