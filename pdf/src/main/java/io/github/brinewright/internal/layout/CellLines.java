package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
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
    if (part != null && cell.field() != null && from == 0) {
      mark(pen, part, cell.field(), new Box(x, top, 0, 0));
    }
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

  /** A field beside the first line, to the left of the text wherever that begins. */
  private void mark(Pen pen, Part whole, Field field, Box corner) {
    double side = FieldBlocks.BOX;
    double before = lines.stream().mapToDouble(this::offset).min().orElse(0);
    double middle = corner.y() + cell.style().leading() / 2;
    Box box = new Box(corner.x() + left + before, middle - side / 2, side, side);
    FieldBox.put(pen, whole.child(Tag.Role.FORM), field, box);
  }

  private void write(Pen pen, double x, double top, List<String> shown) {
    double baseline = top + cell.style().leading() * TextBlock.ASCENT;
    for (String line : shown) {
      pen.canvas().text(x + left + cell.indent() + offset(line), baseline, line, cell.style());
      baseline += cell.style().leading();
    }
  }

  private double offset(String line) {
    return cell.align() == Cell.Align.RIGHT
        ? width - cell.indent() - cell.style().width(line.stripTrailing())
        : 0;
  }
}
