package io.github.brinewright.internal.layout;

import java.util.List;

/** Slices one below the other as one slice. */
final class Pile {
  private Pile() {}

  static Slice of(List<Slice> slices) {
    if (slices.isEmpty()) {
      return Slice.of(0, 0, (canvas, x, y) -> {});
    }
    double height = 0;
    for (int i = 0; i < slices.size(); i++) {
      height += (i == 0 ? 0 : slices.get(i).gap()) + slices.get(i).height();
    }
    return Slice.of(
        slices.get(0).gap(),
        height,
        (canvas, x, y) -> {
          double top = y;
          for (int i = 0; i < slices.size(); i++) {
            top += i == 0 ? 0 : slices.get(i).gap();
            slices.get(i).painter().paint(canvas, x, top);
            top += slices.get(i).height();
          }
        });
  }
}
