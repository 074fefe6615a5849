package io.github.brinewright.sizing;

import io.github.brinewright.trace.Figure;
import java.util.List;

/**
 * One thing that is taken as so, because the visit did not find it.
 *
 * @param kind what it is about
 * @param figures in the order that {@link AssumptionKind} names them
 */
public record Assumption(AssumptionKind kind, List<Figure> figures) {
  /**
   * Keeps its own copy of {@code figures}.
   *
   * @param kind what it is about
   * @param figures in the order that {@link AssumptionKind} names them
   */
  public Assumption {
    figures = List.copyOf(figures);
  }

  static Assumption of(AssumptionKind kind, Figure... figures) {
    return new Assumption(kind, List.of(figures));
  }
}
