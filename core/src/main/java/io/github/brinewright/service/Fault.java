package io.github.brinewright.service;

import io.github.brinewright.trace.Figure;
import java.util.List;

/**
 * One thing that is wrong with the softener of a house, with what comes of it.
 *
 * @param kind what it is
 * @param figures in the order that {@link FaultKind} names them
 */
public record Fault(FaultKind kind, List<Figure> figures) {
  /**
   * Keeps its own copy of {@code figures}.
   *
   * @param kind what it is
   * @param figures in the order that {@link FaultKind} names them
   */
  public Fault {
    figures = List.copyOf(figures);
  }

  static Fault of(FaultKind kind, Figure... figures) {
    return new Fault(kind, List.of(figures));
  }

  /** {@return its name in files, as {@code reserve-twice}} */
  public String code() {
    return kind.code();
  }
}
