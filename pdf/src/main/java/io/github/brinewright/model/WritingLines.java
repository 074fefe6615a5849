package io.github.brinewright.model;

import java.util.List;

/**
 * Lines to write on, side by side.
 *
 * @param lines from left to right
 */
public record WritingLines(List<Line> lines) implements Element {
  /**
   * A line to write on.
   *
   * @param field above it
   * @param caption below it; shorter than the field's label, which is read aloud for itself
   */
  public record Line(Field field, Phrase caption) {}

  /**
   * Keeps its own copy of {@code lines}.
   *
   * @param lines from left to right
   */
  public WritingLines {
    lines = List.copyOf(lines);
  }
}
