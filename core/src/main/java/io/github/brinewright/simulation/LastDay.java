package io.github.brinewright.simulation;

import io.github.brinewright.demand.UseTotal;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a day draws beyond what is left in the bed, tabulated; volumes are multiples of the mean.
 */
final class LastDay {
  private final double cellsPerDay;
  private final double mean;
  private final double[] excess;
  private final double[] beyond;
  private final double[] density;

  LastDay(DayMoments moments, double cellsPerDay, int cells) {
    this.cellsPerDay = cellsPerDay;
    mean = moments.mean();
    excess = new double[cells + 1];
    beyond = new double[cells + 1];
    density = new double[cells + 1];
    List<UseTotal> days = moments.daysFromEachWeekday(1);
    for (int i = 0; i <= cells; i++) {
      double use = i / cellsPerDay;
      excess[i] = mean(days, day -> day.excess(use));
      beyond[i] = mean(days, day -> day.beyond(use));
      density[i] = mean(days, day -> day.density(use));
    }
  }

  /** Mean over the weekdays. */
  static double mean(List<UseTotal> weekdays, ToDoubleFunction<UseTotal> figure) {
    return weekdays.stream().mapToDouble(figure).sum() / weekdays.size();
  }

  /** The most that a day may use. */
  double longest() {
    return (excess.length - 1) / cellsPerDay;
  }

  /** By how much a day that uses more than what is left is above the mean, times the chance. */
  double heavy(double left) {
    if (left >= longest()) {
      return 0;
    }
    double place = Math.max(0, left) * cellsPerDay;
    return at(excess, place) + (Math.max(0, left) - mean) * at(beyond, place);
  }

  /** Between two cells of a table, in proportion. */
  static double at(double[] values, double place) {
    int cell = Math.max(0, (int) place);
    return cell >= values.length - 1
        ? values[values.length - 1]
        : values[cell] + (values[cell + 1] - values[cell]) * Math.max(0, place - cell);
  }

  Sum sum() {
    return new Sum();
  }

  /** Adds up what runs over on all days on which an interval may end. */
  final class Sum {
    private double chance;
    private double volume;

    /**
     * Adds a day, whose use is scaled with its mean.
     *
     * @param weight chance that a day begins with so much left
     * @param more by how much that day's mean is above the usual one, times that chance
     * @param left in the bed
     */
    void add(double weight, double more, double left) {
      if (left >= longest()) {
        return;
      }
      double place = Math.max(0, left) * cellsPerDay;
      double over = at(excess, place);
      double likely = at(beyond, place);
      volume += weight * over + more * (over + left * likely);
      chance += weight * likely + more * left * at(density, place);
    }

    Overflow overflow() {
      return new Overflow(Math.min(1, Math.max(0, chance)), Math.max(0, volume));
    }
  }
}
