package io.github.brinewright.comparison;

import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Sizes and dosages side by side under one control: a row is one softener, by volume of its bed; a
 * column is one salt dosage. Made by {@link Comparison#grid}. Immutable; equal when its cells are.
 *
 * <pre>{@code
 * for (Grid.Row row : comparison.grid(Control.METERED_AT_NIGHT).rows()) {
 *   row.candidates().forEach(cell -> show(row.resin(), cell.dosage(), comparison.marks(cell)));
 * }
 * }</pre>
 */
public final class Grid {
  private static final Comparator<Softener> BY_SIZE =
      Comparator.comparing(Softener::resinVolume).thenComparing(Softener::id);

  private final Control control;
  private final List<SaltDosage> dosages;
  private final List<Row> rows;

  private Grid(Control control, List<SaltDosage> dosages, List<Row> rows) {
    this.control = control;
    this.dosages = List.copyOf(dosages);
    this.rows = List.copyOf(rows);
  }

  static Grid of(Control control, List<Candidate> all) {
    List<Candidate> under =
        all.stream().filter(candidate -> candidate.setup().control() == control).toList();
    List<SaltDosage> dosages =
        under.stream()
            .filter(candidate -> !candidate.byRating())
            .map(Candidate::statedDosage)
            .distinct()
            .sorted()
            .toList();
    Map<Softener, List<Candidate>> byUnit = new TreeMap<>(BY_SIZE);
    under.forEach(
        one -> byUnit.computeIfAbsent(one.softener(), unit -> new ArrayList<>()).add(one));
    List<Row> rows =
        byUnit.entrySet().stream()
            .map(unit -> row(unit.getKey(), unit.getValue(), dosages))
            .toList();
    return new Grid(control, dosages, rows);
  }

  private static Row row(Softener softener, List<Candidate> own, List<SaltDosage> dosages) {
    if (own.get(0).byRating()) {
      return new Row(
          softener,
          dosages.stream().map(d -> Optional.<Candidate>empty()).toList(),
          Optional.of(own.get(0)));
    }
    Map<SaltDosage, Candidate> byDosage = new LinkedHashMap<>();
    own.forEach(one -> byDosage.put(one.statedDosage(), one));
    return new Row(
        softener,
        dosages.stream().map(dosage -> Optional.ofNullable(byDosage.get(dosage))).toList(),
        Optional.empty());
  }

  /** {@return the control} */
  public Control control() {
    return control;
  }

  /** {@return the columns, by rising dosage} */
  public List<SaltDosage> dosages() {
    return dosages;
  }

  /** {@return the rows, by rising volume of the bed} */
  public List<Row> rows() {
    return rows;
  }

  /** {@return every candidate, row by row} */
  public Stream<Candidate> all() {
    return rows.stream().flatMap(row -> row.candidates().stream());
  }

  /** {@return whether no softener is sold with the control} */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * One softener.
   *
   * @param softener which
   * @param cells a candidate for each column of the grid; empty where it is not sold with that
   *     dosage
   * @param byRating the only candidate of a softener of which a rating alone is known; it belongs
   *     to no column
   */
  public record Row(
      Softener softener, List<Optional<Candidate>> cells, Optional<Candidate> byRating) {
    /**
     * Keeps its own copy of {@code cells}.
     *
     * @param softener which
     * @param cells a candidate for each column of the grid; empty where it is not sold with that
     *     dosage
     * @param byRating the only candidate of a softener of which a rating alone is known; it belongs
     *     to no column
     */
    public Row {
      cells = List.copyOf(cells);
    }

    /** {@return the volume of its bed} */
    public Volume resin() {
      return softener.resinVolume();
    }

    /** {@return its candidates by rising dosage} */
    public List<Candidate> candidates() {
      List<Candidate> all = new ArrayList<>(cells.stream().flatMap(Optional::stream).toList());
      byRating.ifPresent(all::add);
      return all;
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Grid grid && control == grid.control && rows.equals(grid.rows);
  }

  @Override
  public int hashCode() {
    return rows.hashCode();
  }

  @Override
  public String toString() {
    return "Grid of " + rows.size() + " softeners and dosages " + dosages + " under " + control;
  }
}
