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
    /** It costs least over the years among several units that keep every limit. */
    LOWEST_COST,
    /** As above, but the next is practically level. */
    LOWEST_COST_NARROWLY,
    /** It keeps every limit and nothing else was compared. */
    ONLY_COMPARED,
    /** The only unit that keeps every limit. */
    ONLY_FEASIBLE,
    /** No prices were entered, so only running costs decide. */
    LOWEST_RUNNING_COST,
    /** The cheapest that fits breaks a margin, or misses it by more. */
    KEEPS_MARGIN,
    /** Level with the cheapest and costs less to buy. */
    LEVEL_LOWER_PRICE,
    /** Level with the cheapest and lets less hard water pass. */
    LEVEL_LESS_HARD_WATER,
    /** Level with the cheapest and takes less salt. */
    LEVEL_LESS_SALT,
    /** Level with the cheapest and takes less water. */
    LEVEL_LESS_WATER,
    /** Equal to the cheapest in all that counts; the order of names decides. */
    LEVEL_FIRST_NAME,
    /** Costs less over the years, but breaks a margin, or misses it by more. */
    CHEAPER_BEYOND_MARGIN,
    /** Costs as much or more over the years, and breaks a margin, or misses it by more. */
    DEARER_BEYOND_MARGIN,
    /** Costs less to buy and more over the years. */
    CHEAPER_TO_BUY,
    /** Costs more to buy and more over the years. */
    DEARER_TO_BUY,
    /** Costs the same to buy and more over the years. */
    SAME_TO_BUY,
    /** Level over the years, but costs more to buy. */
    LEVEL_BUT_DEARER_TO_BUY,
    /** Level over the years, but lets more hard water pass. */
    LEVEL_BUT_MORE_HARD_WATER,
    /** Level over the years, but takes more salt. */
    LEVEL_BUT_MORE_SALT,
    /** Level over the years, but takes more water. */
    LEVEL_BUT_MORE_WATER,
    /** Equal in all that counts; the order of names decides. */
    LEVEL_BUT_LATER_NAME,
    /**
     * A margin that the recommended candidate breaks, as every other that keeps all limits does.
     */
    NONE_KEEPS_MARGIN,
    /** A margin that the recommended one breaks; those that keep it break more, or by more. */
    GIVES_MARGIN_UP,
    /** Capacities are compared across bases. */
    ACROSS_BASES,
    /** Breaks a limit. */
    BREAKS_LIMIT
  }

  private final Values values;

  private Reason(Values values) {
    this.values = values;
  }

  static Reason of(Kind kind, Figure... figures) {
    return new Reason(new Values(kind, List.of(figures), null, null));
  }

  static Reason of(Kind kind, MarginCheck margin, Figure... figures) {
    return new Reason(new Values(kind, List.of(figures), null, margin));
  }

  static Reason breaksLimit(Finding finding) {
    return new Reason(new Values(Kind.BREAKS_LIMIT, List.of(), finding, null));
  }

  /** {@return which sentence it is} */
  public Kind kind() {
    return values.kind;
  }

  /** {@return its numbers, in the order of its words} */
  public List<Figure> figures() {
    return values.figures;
  }

  /** {@return the limit it breaks, when that is the reason} */
  public Optional<Finding> because() {
    return Optional.ofNullable(values.because);
  }

  /** {@return the margin that decides, as the other candidate has it, when that is the reason} */
  public Optional<MarginCheck> margin() {
    return Optional.ofNullable(values.margin);
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

  private record Values(
      Kind kind, List<Figure> figures, @Nullable Finding because, @Nullable MarginCheck margin) {}
}
