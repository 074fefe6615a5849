package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.ReadInterval;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.quantity.Volume;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;

/** The use of a home by the readings of a meter. */
final class MeterTold {
  private static final Volume NOTHING = Volume.ofGallons(0);
  private static final int ROUNDS = 30;

  private final PresentSoftener present;
  private final HomeLoad before;
  private final List<MeterReading> readings;
  private final double shareOfHome;

  MeterTold(PresentSoftener present, HomeLoad before) {
    this.present = present;
    this.before = before;
    readings = present.readings();
    shareOfHome =
        present.readMeter() == ReadMeter.SOFTENER
            ? 1 / before.softenedShare()
            : counted().isPositive() ? homeOf(daily()).ratioTo(daily()) : 0;
  }

  private MeterReading last() {
    return readings.get(readings.size() - 1);
  }

  private Volume counted() {
    return last().counter().minus(readings.get(0).counter());
  }

  /** Days from the first reading to the last. */
  long days() {
    return daysBetween(readings.get(0), last());
  }

  private static long daysBetween(MeterReading one, MeterReading next) {
    return ChronoUnit.DAYS.between(one.date(), next.date());
  }

  private Volume daily() {
    return counted().dividedBy(days());
  }

  /**
   * The use of a day in which the house's meter counts so much: what regenerations take goes off,
   * and how often a meter starts one depends on the use in turn.
   */
  private Volume homeOf(Volume house) {
    FoundSoftener found = FoundSoftener.of(present, before);
    Volume each = found.cycle().water();
    Volume home = house;
    for (int i = 0; i < ROUNDS; i++) {
      Volume throughBed = home.times(before.softenedShare());
      double often = found.regenerationsADay(throughBed, throughBed);
      home = house.minus(each.times(often)).max(NOTHING);
    }
    return home;
  }

  /** Whether the home has used anything. */
  boolean moved() {
    return counted().isPositive() && shareOfHome > 0;
  }

  /** The use of the home from one reading to the next. */
  List<ReadInterval> intervals() {
    return IntStream.range(1, readings.size())
        .mapToObj(i -> interval(readings.get(i - 1), readings.get(i)))
        .toList();
  }

  /** Of very many days the last stand for all. */
  private ReadInterval interval(MeterReading one, MeterReading next) {
    long all = daysBetween(one, next);
    int days = (int) Math.min(all, ReadInterval.DAYS.high());
    Volume used = next.counter().minus(one.counter()).times(shareOfHome * days / all);
    return new ReadInterval(next.date().minusDays(days), days, ReadInterval.USED.nearest(used));
  }
}
