package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Require;
import io.github.brinewright.softener.Control;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One of the simulated years, day by day: that in which a chosen control regenerates as often as in
 * the middle of all years. The control is a metered one, since a clock regenerates the same number
 * of times every year. Immutable; equal when every day is.
 */
public final class TypicalYear {
  private static final int MONTHS = 12;

  private final YearSimulation simulation;
  private final int year;
  private final Map<Control, List<Integer>> regenerations;

  private TypicalYear(
      YearSimulation simulation, int year, Map<Control, List<Integer>> regenerations) {
    this.simulation = simulation;
    this.year = year;
    this.regenerations = Collections.unmodifiableMap(regenerations);
  }

  /** {@return the regenerations of each of its 365 days, under each control} */
  public Map<Control, List<Integer>> regenerations() {
    return regenerations;
  }

  /**
   * {@return the middle year of a simulation, run once more}
   *
   * @param simulation that was run
   * @param outcomes what came of it, each of another control
   * @param chosen the control whose middle year it is; the first year when it is not among them
   * @throws IllegalArgumentException when the outcomes are of another number of years or two are of
   *     one control
   */
  public static TypicalYear of(
      YearSimulation simulation, List<SimulatedYears> outcomes, Control chosen) {
    outcomes.forEach(
        outcome ->
            Require.between(
                "simulated years", outcome.years(), simulation.years(), simulation.years()));
    int year =
        outcomes.stream()
            .filter(outcome -> outcome.bed().control() == chosen)
            .findFirst()
            .map(SimulatedYears::middleYear)
            .orElse(0);
    List<BedSettings> beds = outcomes.stream().map(SimulatedYears::bed).toList();
    List<int[]> counts = simulation.regenerations(beds, year);
    Map<Control, List<Integer>> days = new EnumMap<>(Control.class);
    for (int i = 0; i < beds.size(); i++) {
      Control control = beds.get(i).control();
      if (days.put(control, IntStream.of(counts.get(i)).boxed().toList()) != null) {
        throw new IllegalArgumentException("two of the beds have the control " + control);
      }
    }
    return new TypicalYear(simulation, year, days);
  }

  /**
   * {@return the regenerations that another bed would have on each of the same 365 days}
   *
   * @param bed that meets them
   */
  public List<Integer> regenerations(BedSettings bed) {
    int[] counts = simulation.regenerations(List.of(bed), year).get(0);
    return IntStream.of(counts).boxed().toList();
  }

  /**
   * {@return the regenerations of the whole year; 0 under a control that was not simulated}
   *
   * @param control what starts a regeneration
   */
  public int total(Control control) {
    return days(control).stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * {@return the regenerations of each twelfth of the year; all 0 under a control that was not
   * simulated}
   *
   * @param control what starts a regeneration
   */
  public List<Integer> byMonth(Control control) {
    return byMonth(days(control));
  }

  /**
   * {@return the regenerations of each twelfth of a year}
   *
   * @param days regenerations of each of its days
   */
  public static List<Integer> byMonth(List<Integer> days) {
    return IntStream.range(0, MONTHS)
        .map(
            month ->
                days.subList(start(month, days.size()), start(month + 1, days.size())).stream()
                    .mapToInt(Integer::intValue)
                    .sum())
        .boxed()
        .toList();
  }

  private static int start(int month, int days) {
    return month * days / MONTHS;
  }

  private List<Integer> days(Control control) {
    return regenerations.getOrDefault(control, List.of());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TypicalYear year && regenerations.equals(year.regenerations);
  }

  @Override
  public int hashCode() {
    return regenerations.hashCode();
  }

  @Override
  public String toString() {
    return "TypicalYear" + regenerations.keySet().stream().map(c -> c + " " + total(c)).toList();
  }
}
