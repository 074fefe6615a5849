package io.github.brinewright.internal.section;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the control of a present softener is set to, as the visit found it.
 *
 * @param found the softener
 * @param start the day from which its days count
 */
record FoundValues(FoundSoftener found, LocalDate start) implements ControlValues {
  private static final Phrase NOT_KNOWN = Phrase.text("settings.notKnown");

  private PresentSoftener present() {
    return found.present();
  }

  @Override
  public Control control() {
    return found.control();
  }

  @Override
  public Softener softener() {
    return found.softener();
  }

  @Override
  public Cycle cycle() {
    return found.cycle();
  }

  @Override
  public BrineRefill refill() {
    return found.refill();
  }

  /** As it was read, or as usual. */
  @Override
  public LocalTime begins() {
    return LocalTime.of(present().hour().orElse(BedSettings.USUAL_HOUR), 0);
  }

  @Override
  public Figure standing() {
    return Figure.days(Schedule.LONGEST_DAYS, 0);
  }

  @Override
  public Map<String, Phrase> values() {
    Map<String, Phrase> values = asFound();
    if (waits()) {
      values.put("settings.clock", TimeOfDay.now(control()));
    }
    due()
        .ifPresent(
            day ->
                values.put(
                    control().metered() ? "settings.firstLatest" : "settings.first",
                    new Phrase.Day(day)));
    return values;
  }

  /** What was found, to stand beside what is to be set. */
  Map<String, Phrase> asFound() {
    Map<String, Phrase> values = new LinkedHashMap<>();
    values.put("settings.kind", Phrase.of(control()));
    if (waits()) {
      values.put("settings.hour", hour());
    }
    putInterval(values);
    putRefill(values);
    return values;
  }

  private Phrase hour() {
    return present().hour().isPresent() ? Phrase.of(Figure.of(begins())) : NOT_KNOWN;
  }

  private void putInterval(Map<String, Phrase> values) {
    if (present().control() instanceof PresentControl.Clock clock) {
      values.put("settings.days", Phrase.of(Figure.days(clock.days(), 0)));
    } else if (present().control() instanceof PresentControl.Weekdays weekly) {
      WeekdayClock week = new WeekdayClock(weekly.days());
      values.put("settings.weekdays", Phrase.of(Figure.of(week.days())));
      values.put("settings.gap", Phrase.of(Figure.days(week.longestGap(), 0)));
    } else if (present().control() instanceof PresentControl.Metered metered) {
      values.put(
          "settings.longest", known(metered.longestDays().map(days -> Figure.days(days, 0))));
    }
  }

  /** When it first regenerates, at the latest. */
  private Optional<LocalDate> due() {
    if (present().control() instanceof PresentControl.Weekdays weekly) {
      return Optional.of(new WeekdayClock(weekly.days()).firstAfter(start));
    } else if (present().control() instanceof PresentControl.Clock clock) {
      return Optional.of(start.plusDays(clock.days()));
    }
    return ((PresentControl.Metered) present().control()).longestDays().map(start::plusDays);
  }

  private void putRefill(Map<String, Phrase> values) {
    Optional<PresentSalt.Refill> refill =
        present()
            .salt()
            .filter(PresentSalt.Refill.class::isInstance)
            .map(PresentSalt.Refill.class::cast);
    Optional<Duration> time = refill.map(PresentSalt.Refill::time);
    values.put("settings.refillMinutes", known(time.map(SetMinutes::figure)));
    values.put(
        "settings.refillWater",
        known(
            refill
                .flatMap(PresentSalt.Refill::flow)
                .map(flow -> Figure.of(flow.during(time.orElseThrow()), 1))));
    values.put(
        "settings.refillSalt",
        known(
            Optional.of(found.saltPerRegeneration())
                .filter(salt -> found.saltKnown())
                .map(Figure::of)));
  }

  private static Phrase known(Optional<Figure> figure) {
    return figure.map(Phrase::of).orElse(NOT_KNOWN);
  }

  @Override
  public List<MeterColumn> meter() {
    return present().control() instanceof PresentControl.Metered metered
        ? List.of(new MeterColumn(column(Table.Kind.MAIN), meterValues(metered)))
        : List.of();
  }

  /** A column for what was found, beside what is to be set or alone. */
  static Table.Column column(Table.Kind kind) {
    return new Table.Column("settings.now", Phrase.text("settings.now"), kind);
  }

  private static Map<String, Phrase> meterValues(PresentControl.Metered metered) {
    Map<String, Phrase> values = new LinkedHashMap<>();
    if (metered instanceof PresentControl.ByVolume byVolume) {
      values.put(MeterColumn.VOLUME, Phrase.of(Figure.of(byVolume.set())));
    } else if (metered instanceof PresentControl.ByHardness told) {
      values.put(MeterColumn.HARDNESS, new Phrase.InUsUnitsToo(Figure.of(told.hardness())));
      values.put(
          MeterColumn.CAPACITY,
          told.capacity()
              .<Phrase>map(set -> new Phrase.InUsUnitsToo(Figure.of(set)))
              .orElse(NOT_KNOWN));
    }
    values.put(MeterColumn.RESERVE, known(metered.reserve().map(Figure::of)));
    return values;
  }
}
