package io.github.brinewright.comparison;

import io.github.brinewright.finding.Finding;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;

/**
 * Why a candidate is marked, as computed numbers; the words package makes a sentence of it.
 *
 * @param kind which sentence
 * @param figures its numbers
 * @param because the limit it breaks, when that is the reason
 */
public record Reason(Kind kind, List<Figure> figures, Optional<Finding> because) {
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
}
