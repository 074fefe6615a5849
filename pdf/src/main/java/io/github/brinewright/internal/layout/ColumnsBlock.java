package io.github.brinewright.internal.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Blocks side by side, each column of the same width, as one piece.
 *
 * @param blocks from left to right
 * @param gutter between columns, in points
 */
record ColumnsBlock(List<? extends Block> blocks, double gutter) implements Block {
  @Override
  public List<Slice> slices(double width) {
    double each = (width - gutter * (blocks.size() - 1)) / blocks.size();
    List<Slice> piles = new ArrayList<>();
    for (Block block : blocks) {
      piles.add(Pile.of(block.slices(each)));
    }
    double height = piles.stream().mapToDouble(Slice::height).max().orElse(0);
    return List.of(
        Slice.of(
            0,
            height,
            (pen, x, y) -> {
              for (int i = 0; i < piles.size(); i++) {
                piles.get(i).painter().paint(pen, x + i * (each + gutter), y);
              }
            }));
  }
}
