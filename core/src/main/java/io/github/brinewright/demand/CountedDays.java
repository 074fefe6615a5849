package io.github.brinewright.demand;

import io.github.brinewright.quantity.CalendarYear;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.List;

/** Where the days of some readings lie, in the week and in the year. */
final class CountedDays {
  private int days;
  private double weekdays;
  private double sines;
  private double cosines;
  private final BitSet ofYear = new BitSet();

  /**
   * @param read what was read
   * @param weekdays factors of Monday to Sunday
   */
  CountedDays(List<ReadInterval> read, List<Double> weekdays) {
    double mean = weekdays.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    read.stream()
        .flatMap(ReadInterval::dates)
        .forEach(date -> add(date, weekdays.get(date.getDayOfWeek().ordinal()) / mean));
  }

  private void add(LocalDate date, double factor) {
    double angle = 2 * Math.PI * date.toEpochDay() / CalendarYear.DAYS;
    days++;
    weekdays += factor;
    sines += Math.sin(angle);
    cosines += Math.cos(angle);
    ofYear.set(Math.min(CalendarYear.DAYS, date.getDayOfYear()));
  }

  /** How many there are. */
  int days() {
    return days;
  }

  /** As many ordinary days as they use together: the sum of their weekday factors. */
  double ofMeanWeek() {
    return weekdays;
  }

  /** Share of a season's swing that their mean keeps: 1 for one day, 0 for a whole year. */
  double seasonKept() {
    return Math.hypot(sines, cosines) / days;
  }

  /** Share of the days of the year that are among them; 0 to 1. */
  double shareOfYear() {
    return (double) ofYear.cardinality() / CalendarYear.DAYS;
  }
}
