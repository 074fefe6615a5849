package io.github.brinewright.comparison;

import io.github.brinewright.trace.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a revised quote changes against an earlier one for the same home. Immutable; equal revisions
 * are equal.
 *
 * <pre>{@code
 * Revision revision = Revision.between(earlier, LocalDate.of(2026, 3, 1), now);
 * revision.changes().forEach(item -> show(item.kind(), item.before(), item.now()));
 * }</pre>
 */
public final class Revision {
  private final LocalDate since;
  private final int number;
  private final List<Item> changes;

  private Revision(LocalDate since, int number, List<Item> changes) {
    this.since = since;
    this.number = number;
    this.changes = List.copyOf(changes);
  }

  /** {@return the date of the earlier quote} */
  public LocalDate since() {
    return since;
  }

  /** {@return which revision the earlier quote was; empty where that is not known} */
  public OptionalInt number() {
    return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /**
   * {@return the same against an earlier quote of which the number is known}
   *
   * @param revision that the earlier quote was; 1 for the first
   */
  public Revision of(int revision) {
    return new Revision(since, revision, changes);
  }

  /** {@return what is different, in the order in which it is told; empty when nothing is} */
  public List<Item> changes() {
    return changes;
  }

  /** What may be different. */
  public enum Kind {
    /** Hardness as tested. */
    HARDNESS,
    /** Compensated hardness. */
    COMPENSATED_HARDNESS,
    /** People in the home. */
    PEOPLE,
    /** Load of the design day. */
    DAILY_LOAD,
    /** Name of the recommended unit. */
    RECOMMENDED_UNIT,
    /** Its control. */
    CONTROL,
    /** Its salt for each regeneration. */
    SALT_EACH_TIME,
    /** Its price with tax. */
    PRICE,
    /** Its cost of the first year. */
    FIRST_YEAR,
    /** Its cost over the years compared. */
    COST_OVER_YEARS
  }

  /**
   * One difference.
   *
   * @param kind what it is
   * @param before in the earlier quote
   * @param now in the revised one
   */
  public record Item(Kind kind, Figure before, Figure now) {
    /**
     * @param kind what it is
     * @param before in the earlier quote
     * @param now in the revised one
     * @throws IllegalArgumentException when both figures are the same
     */
    public Item {
      if (before.equals(now)) {
        throw new IllegalArgumentException(kind + " is " + now + " before and now");
      }
    }
  }

  /**
   * Compares two quotes.
   *
   * @param earlier the candidates as they were quoted
   * @param since date of the earlier one
   * @param now the candidates as they are quoted now
   * @return what is different
   */
  public static Revision between(Comparison earlier, LocalDate since, Comparison now) {
    Collector items = new Collector();
    items.add(Kind.HARDNESS, hardness(earlier), hardness(now));
    items.add(
        Kind.COMPENSATED_HARDNESS,
        Figure.of(earlier.home().compensatedHardness()),
        Figure.of(now.home().compensatedHardness()));
    items.add(Kind.PEOPLE, people(earlier), people(now));
    items.add(
        Kind.DAILY_LOAD, Figure.of(earlier.home().dailyLoad()), Figure.of(now.home().dailyLoad()));
    Optional<Candidate> before = earlier.recommended();
    Optional<Candidate> after = now.recommended();
    if (before.isPresent() && after.isPresent()) {
      items.addCandidates(before.get(), after.get());
    }
    return new Revision(since, 0, items.all);
  }

  private static Figure hardness(Comparison comparison) {
    return Figure.of(comparison.home().site().water().hardness());
  }

  private static Figure people(Comparison comparison) {
    return Figure.of(comparison.home().site().household().people());
  }

  /** Keeps what differs. */
  private static final class Collector {
    private final List<Item> all = new ArrayList<>();

    void add(Kind kind, Figure before, Figure now) {
      if (!before.equals(now)) {
        all.add(new Item(kind, before, now));
      }
    }

    void addCandidates(Candidate before, Candidate now) {
      add(
          Kind.RECOMMENDED_UNIT,
          Figure.of(before.softener().name()),
          Figure.of(now.softener().name()));
      add(Kind.CONTROL, Figure.of(before.setup().control()), Figure.of(now.setup().control()));
      add(Kind.SALT_EACH_TIME, Figure.of(before.salt(), 1), Figure.of(now.salt(), 1));
      add(Kind.PRICE, Figure.of(before.quote().total()), Figure.of(now.quote().total()));
      add(
          Kind.FIRST_YEAR,
          Figure.about(before.yearly().total()),
          Figure.about(now.yearly().total()));
      add(
          Kind.COST_OVER_YEARS,
          Figure.about(before.life().total()),
          Figure.about(now.life().total()));
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Revision revision
        && since.equals(revision.since)
        && changes.equals(revision.changes);
  }

  @Override
  public int hashCode() {
    return changes.hashCode();
  }

  @Override
  public String toString() {
    return "Revision since " + since + ": " + changes;
  }
}
