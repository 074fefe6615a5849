package io.github.brinewright.simulation;

import io.github.brinewright.softener.Control;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One of the simulated years, day by day: that in which a chosen control regenerates as often as in
 * the middle of all years. The control is a metered one, since a clock regenerates the same number
 * of times every year.
 *
 * @param regenerations of each of its 365 days, under each control
 */
public record TypicalYear(Map<Control, List<Integer>> regenerations) {
  private static final int MONTHS = 12;

  /** Keeps its own copies of the lists. */
  public TypicalYear {
    Map<Control, List<Integer>> copy = new EnumMap<>(Control.class);
    regenerations.forEach((control, days) -> copy.put(control, List.copyOf(days)));
    regenerations = copy;
  }

  public static TypicalYear of(
      YearSimulation simulation, List<SimulatedYears> outcomes, Control chosen) {
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
      days.put(beds.get(i).control(), IntStream.of(counts.get(i)).boxed().toList());
    }
    return new TypicalYear(days);
  }

  /** Regenerations of the whole year. */
  public int total(Control control) {
    return days(control).stream().mapToInt(Integer::intValue).sum();
  }

  /** Regenerations of each twelfth of the year. */
  public List<Integer> byMonth(Control control) {
    List<Integer> days = days(control);
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
}
