package io.github.brinewright.internal.layout;

import java.util.List;

/** Two piles of slices on one another, as one slice. */
final class Overlay {
  private Overlay() {}

  /** One slice, as tall as the taller pile. */
  static Slice of(List<Slice> below, List<Slice> above) {
    Slice first = Pile.of(below);
    Slice second = Pile.of(above);
    return Slice.of(
        second.gap(),
        Math.max(first.height(), second.height()),
        (pen, x, y) -> {
          first.painter().paint(pen, x, y);
          second.painter().paint(pen, x, y);
        });
  }
}
