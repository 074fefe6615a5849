package io.github.brinewright.finding;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import java.util.List;

/**
 * Something a careful practitioner would say about the home or the candidate.
 *
 * @param code stable name; also names its words
 * @param severity what it means
 * @param figures the values its words speak of, in their order
 * @param source who says so
 */
public record Finding(String code, Severity severity, List<Figure> figures, Source source) {
  /** Keeps its own copy of {@code figures}. */
  public Finding {
    figures = List.copyOf(figures);
  }

  /** Whether this forbids the candidate. */
  public boolean stops() {
    return severity == Severity.STOP;
  }
}
