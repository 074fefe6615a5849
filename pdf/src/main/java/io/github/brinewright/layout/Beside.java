package io.github.brinewright.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A label in a narrow left column, its matter in the wide one beside it.
 *
 * @param label short
 * @param matter of any length
 * @param labelWidth of the left column, with the gutter
 */
public record Beside(Block label, Block matter, double labelWidth) implements Block {
  private static final double GUTTER = 14;

  @Override
  public List<Slice> slices(double width) {
    Slice left = Pile.of(label.slices(labelWidth - GUTTER));
    List<Slice> right = new ArrayList<>(matter.indented(labelWidth).slices(width));
    int covered = 1;
    double height = right.get(0).height();
    while (height < left.height() && covered < right.size()) {
      height += right.get(covered).gap() + right.get(covered).height();
      covered++;
    }
    Slice top = Pile.of(right.subList(0, covered));
    boolean kept = right.get(covered - 1).keepWithNext();
    Slice both =
        new Slice(
            top.gap(),
            Math.max(top.height(), left.height()),
            kept,
            null,
            (canvas, x, y) -> {
              left.painter().paint(canvas, x, y);
              top.painter().paint(canvas, x, y);
            });
    List<Slice> all = new ArrayList<>(List.of(both));
    all.addAll(right.subList(covered, right.size()));
    return all;
  }
}
