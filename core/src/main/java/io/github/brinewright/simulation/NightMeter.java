package io.github.brinewright.simulation;

/**
 * A meter that waits for the night. Its first day loses what passes during the regeneration, which
 * is as if the bed held that much more.
 *
 * <p>Set to more than the bed holds, s &gt; c, it lets E[(S(N) − c)⁺] − E[(S(N) − s)⁺] pass hard
 * between the two, N being the longest interval, and what the last day draws beyond s. The bed has
 * run out in an interval with the chance P(S(N) &gt; c), on so many days as an interval of s is
 * longer than one of c, and on the one on which it runs out. Source: as of {@link ReachingTable}.
 *
 * @param moments of the days
 * @param table up to the longest interval
 * @param setting of the meter
 */
record NightMeter(DayMoments moments, ReachingTable table, MeterSetting setting) implements Meter {

  @Override
  public Interval interval(double factor) {
    double hardShare = setting.hardShare();
    double reached = setting.set() / factor + hardShare;
    double held = setting.capacity() / factor + hardShare;
    double heavy = table.heavy(reached);
    double shift = heavy * table.carriedOn();
    double days = table.days(reached - shift);
    Overflow over = table.overflow(reached - shift, Math.max(reached, held) - shift, heavy);
    Overflow between =
        Overflow.between(moments.days(table.longest()), held - shift, reached - shift);
    double cycle = hardShare * (moments.mean() + heavy * table.carriedToNext());
    double more = setting.beyondBed() ? days - table.days(held - shift) : 0;
    double chance = setting.beyondBed() ? between.chance() : over.chance();
    return new Interval(
        days, chance, chance + more, factor * (over.volume() + between.volume()), factor * cycle);
  }

  @Override
  public int longest() {
    return table.longest();
  }

  @Override
  public double waiting(int days) {
    return table.below(days, setting.set() + setting.hardShare());
  }

  @Override
  public double waitingHard(int days) {
    return Math.max(0, waiting(days) - table.below(days, setting.capacity() + setting.hardShare()));
  }
}
