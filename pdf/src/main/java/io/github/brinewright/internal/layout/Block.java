package io.github.brinewright.internal.layout;

import java.util.ArrayList;
import java.util.List;

/** A part of a document, of any height. */
@FunctionalInterface
interface Block {
  /** Measures the block for a width and returns its pieces from top to bottom. */
  List<Slice> slices(double width);

  /** Blocks one below the other. */
  static Block stack(List<? extends Block> blocks) {
    return width -> {
      List<Slice> all = new ArrayList<>();
      blocks.forEach(block -> all.addAll(block.slices(width)));
      return all;
    };
  }

  /**
   * Blocks one below the other as one piece, unless that is taller than the given points; then the
   * last may be divided, and those above it stay with its beginning.
   */
  static Block together(List<? extends Block> blocks, double most) {
    int last = blocks.size() - 1;
    return width -> {
      List<Slice> above = stack(blocks.subList(0, last)).slices(width);
      List<Slice> below = blocks.get(last).slices(width);
      List<Slice> all = new ArrayList<>(above);
      all.addAll(below);
      Slice pile = Pile.of(all);
      if (pile.height() <= most) {
        return List.of(pile);
      }
      List<Slice> kept = new ArrayList<>(above.stream().map(Slice::kept).toList());
      kept.addAll(below);
      return kept;
    };
  }

  /** The block with more room above. */
  default Block after(double gap) {
    return width -> {
      List<Slice> slices = new ArrayList<>(slices(width));
      if (!slices.isEmpty()) {
        slices.set(0, slices.get(0).after(gap));
      }
      return slices;
    };
  }

  /** The block as one piece that no page break divides. */
  default Block whole() {
    return width -> List.of(Pile.of(slices(width)));
  }

  /** The block as one piece, unless it is taller than the given points. */
  default Block wholeUpTo(double most) {
    return width -> {
      List<Slice> slices = slices(width);
      Slice pile = Pile.of(slices);
      return pile.height() <= most ? List.of(pile) : slices;
    };
  }

  /** The block kept on the page of what follows it. */
  default Block keptWithNext() {
    return width -> slices(width).stream().map(Slice::kept).toList();
  }

  /** The block moved to the right, and so much narrower. */
  default Block indented(double left) {
    return width -> slices(width - left).stream().map(slice -> slice.shifted(left)).toList();
  }
}
