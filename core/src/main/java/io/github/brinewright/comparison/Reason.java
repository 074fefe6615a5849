package io.github.brinewright.comparison;

import io.github.brinewright.finding.Finding;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Why a candidate is marked, as computed numbers; the words package makes a sentence of it. Made by
 * a {@link Comparison}. Immutable; equal reasons are equal.
 */
public final class Reason {
  /** The sentences there are. */
  public enum Kind {
    /** Lowest cost over the years among several units that keep every limit. */
    LOWEST_COST,
    /** As above, but the next is practically level. */
    LOWEST_COST_NARROWLY,
    /** It keeps every limit and nothing else was compared. */
    ONLY_COMPARED,
    /** The only unit that keeps every limit. */
    ONLY_FEASIBLE,
    /** No prices were entered, so only running costs decide. */
    LOWEST_RUNNING_COST,
    /** Costs less to buy and more over the years. */
    CHEAPER_TO_BUY,
    /** Costs less to buy and practically the same over the years. */
    CHEAPER_TO_BUY_THEN_LEVEL,
    /** Costs more to buy and practically the same over the years. */
    DEARER_TO_BUY_THEN_LEVEL,
    /** Costs more to buy and more over the years. */
    DEARER_TO_BUY,
    /** Costs the same to buy and more, or the same, over the years. */
    SAME_TO_BUY,
    /** Breaks a limit. */
    BREAKS_LIMIT
  }

  private final Values values;

  private Reason(Values values) {
    this.values = values;
  }

  static Reason of(Kind kind, Figure... figures) {
    return new Reason(new Values(kind, List.of(figures), null));
  }

  static Reason breaksLimit(Finding finding) {
    return new Reason(new Values(Kind.BREAKS_LIMIT, List.of(), finding));
  }

  /** Which sentence. */
  public Kind kind() {
    return values.kind;
  }

  /** Its numbers, in the order of its words. */
  public List<Figure> figures() {
    return values.figures;
  }

  /** The limit it breaks, when that is the reason. */
  public Optional<Finding> because() {
    return Optional.ofNullable(values.because);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reason reason && values.equals(reason.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Reason");
  }

  private record Values(Kind kind, List<Figure> figures, @Nullable Finding because) {}
}
