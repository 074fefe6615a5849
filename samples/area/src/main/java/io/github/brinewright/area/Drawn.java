package io.github.brinewright.area;

import io.github.brinewright.area.Totals.Count;
import io.github.brinewright.simulation.Spread;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Sums of a district over the draws, as its mean and the ends of nine draws of ten; without draws
 * as stated.
 *
 * @param totals of the district
 */
record Drawn(Totals totals) {
  private static final double MILLION = 1e6;

  private Spread over(IntToDoubleFunction figure) {
    int first = Math.min(1, totals.draws());
    return Spread.of(IntStream.rangeClosed(first, totals.draws()).mapToDouble(figure).toArray());
  }

  Spread sum(Scenario scenario, Measure measure) {
    return over(draw -> totals.sum(draw, scenario, measure));
  }

  /** Of one softener: millionths and the like in whole units of a million. */
  Spread each(Scenario scenario, Measure measure) {
    return sum(scenario, measure).times(1 / (MILLION * softeners()));
  }

  double softeners() {
    return Math.max(1, totals.of(Count.SOFTENERS));
  }

  /** Against the softeners as found, in the same draw; 0 where nothing changes. */
  Spread change(Scenario scenario, Measure measure) {
    return over(
        draw -> {
          double found = totals.sum(draw, Scenario.AS_FOUND, measure);
          return found == 0 ? 0 : totals.sum(draw, scenario, measure) / found - 1;
        });
  }
}
