package io.github.brinewright.simulation;

/**
 * A meter that waits for the night. Its first day loses what passes during the regeneration, which
 * is as if the bed held that much more.
 *
 * @param moments of the days
 * @param table up to the longest interval
 * @param capacity of the bed
 * @param set volume whose night regenerates; not above the capacity
 * @param hardShare share of a day's use that passes during a regeneration
 */
record NightMeter(
    DayMoments moments, ReachingTable table, double capacity, double set, double hardShare)
    implements Meter {

  @Override
  public Interval interval(double factor) {
    double reached = set / factor + hardShare;
    double held = capacity / factor + hardShare;
    double heavy = table.heavy(reached);
    double shift = heavy * table.carriedOn();
    Overflow over = table.overflow(reached - shift, held - shift, heavy);
    double cycle = hardShare * (moments.mean() + heavy * table.carriedToNext());
    return new Interval(
        table.days(reached - shift), over.chance(), factor * over.volume(), factor * cycle);
  }

  @Override
  public int longest() {
    return table.longest();
  }

  @Override
  public double waiting(int days) {
    return table.below(days, set + hardShare);
  }
}
