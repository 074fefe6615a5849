package io.github.brinewright.internal.layout;

import java.util.List;

/** Two piles of slices on one another, as one slice. */
public final class Overlay {
  private Overlay() {}

  /** One slice, as tall as the taller pile. */
  public static Slice of(List<Slice> below, List<Slice> above) {
    Slice first = Pile.of(below);
    Slice second = Pile.of(above);
    return Slice.of(
        second.gap(),
        Math.max(first.height(), second.height()),
        (canvas, x, y) -> {
          first.painter().paint(canvas, x, y);
          second.painter().paint(canvas, x, y);
        });
  }
}
