package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Canvas;
import io.github.brinewright.internal.document.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A cell, measured. Without a tag it is drawn as an ornament, as in a repeated header. */
record CellLines(Cell cell, @Nullable Tag tag, double left, double width, List<String> lines) {
  int count() {
    return lines.size();
  }

  double height(int count) {
    return cell.style().leading() * Math.min(count, lines.size());
  }

  void drawFromBottom(Canvas canvas, double x, double bottom) {
    draw(canvas, x, bottom - height(lines.size()), 0, lines.size());
  }

  void draw(Canvas canvas, double x, double top, int from, int to) {
    List<String> part = lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
    if (part.isEmpty() || part.stream().allMatch(String::isEmpty)) {
      return;
    }
    Runnable drawing =
        () -> {
          double baseline = top + cell.style().leading() * Paragraph.ASCENT;
          for (String line : part) {
            canvas.text(x + left + offset(line), baseline, line, cell.style());
            baseline += cell.style().leading();
          }
        };
    if (tag == null) {
      canvas.ornament(drawing);
    } else {
      canvas.tagged(tag, drawing);
    }
  }

  private double offset(String line) {
    return cell.align() == Cell.Align.RIGHT ? width - cell.style().width(line.stripTrailing()) : 0;
  }
}
