package io.github.brinewright.internal.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A label in a narrow left column, its matter in the wide one beside it.
 *
 * @param label short
 * @param matter of any length
 * @param labelWidth of the left column, with the gutter
 */
record Beside(Block label, Block matter, double labelWidth) implements Block {
  private static final double GUTTER = 14;

  @Override
  public List<Slice> slices(double width) {
    List<Slice> left = label.slices(labelWidth - GUTTER);
    double leftHeight = Pile.of(left).height();
    List<Slice> right = new ArrayList<>(matter.indented(labelWidth).slices(width));
    int covered = 1;
    double height = right.get(0).height();
    while (height < leftHeight && covered < right.size()) {
      height += right.get(covered).gap() + right.get(covered).height();
      covered++;
    }
    Slice both = Overlay.of(left, right.subList(0, covered));
    boolean kept = right.get(covered - 1).keepWithNext();
    List<Slice> all = new ArrayList<>(List.of(kept ? both.kept() : both));
    all.addAll(right.subList(covered, right.size()));
    return all;
  }
}
