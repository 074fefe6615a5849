package io.github.brinewright.internal.layout;

import java.util.List;

/** Slices one below the other as one slice. */
final class Pile {
  private Pile() {}

  static Slice of(List<Slice> slices) {
    if (slices.isEmpty()) {
      return Slice.of(0, 0, (pen, x, y) -> {});
    }
    double height = 0;
    for (int i = 0; i < slices.size(); i++) {
      height += (i == 0 ? 0 : slices.get(i).gap()) + slices.get(i).height();
    }
    return Slice.of(
        slices.get(0).gap(),
        height,
        (pen, x, y) -> {
          double top = y;
          for (int i = 0; i < slices.size(); i++) {
            top += i == 0 ? 0 : slices.get(i).gap();
            slices.get(i).painter().paint(pen, x, top);
            top += slices.get(i).height();
          }
        });
  }
}
