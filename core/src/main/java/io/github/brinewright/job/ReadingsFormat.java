package io.github.brinewright.job;

import io.github.brinewright.home.MeterReading;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a meter stood at, as in {@code 2026-01-03:12345 2026-04-02:18900}: at least two readings in
 * the order of their dates, the counter never falling.
 */
final class ReadingsFormat implements Format<List<MeterReading>> {
  private static final Pattern READING = Pattern.compile("(\\d{4}-\\d{2}-\\d{2}):([^:]+)");
  private static final Format<Volume> COUNTER =
      NumberFormats.of(Volume::ofGallons, Volume::gallons);

  private static final Format<List<MeterReading>> EACH =
      NumberFormats.listOf(
          new Format<MeterReading>() {
            @Override
            public Optional<MeterReading> read(Cell cell) {
              Matcher parts = READING.matcher(cell.text());
              return parts.matches()
                  ? reading(cell.part(parts.group(1)), cell.part(parts.group(2)))
                  : cell.refuse(ProblemCode.NOT_A_READING);
            }

            @Override
            public String write(MeterReading reading) {
              return reading.date() + ":" + COUNTER.write(reading.counter());
            }
          });

  private static Optional<MeterReading> reading(Cell date, Cell counter) {
    Optional<LocalDate> day = Formats.DATE.read(date);
    Optional<Volume> stood = COUNTER.read(counter);
    return day.flatMap(known -> stood.map(volume -> new MeterReading(known, volume)));
  }

  @Override
  public Optional<List<MeterReading>> read(Cell cell) {
    return EACH.read(cell).filter(readings -> rise(cell, readings));
  }

  private static boolean rise(Cell cell, List<MeterReading> readings) {
    if (readings.size() < 2) {
      cell.refuse(ProblemCode.READING_ALONE);
      return false;
    }
    boolean good = true;
    for (int i = 1; i < readings.size(); i++) {
      good &= rise(cell, readings.get(i - 1), readings.get(i));
    }
    return good;
  }

  private static boolean rise(Cell cell, MeterReading before, MeterReading after) {
    boolean later = after.date().isAfter(before.date());
    if (later && after.counter().compareTo(before.counter()) >= 0) {
      return true;
    }
    cell.part(EACH.write(List.of(after)))
        .refuse(
            later ? ProblemCode.READING_FALLS : ProblemCode.READINGS_UNORDERED,
            new Argument.Text(EACH.write(List.of(before))));
    return false;
  }

  @Override
  public String write(List<MeterReading> readings) {
    return EACH.write(readings);
  }
}
