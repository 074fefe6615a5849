package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.ReserveForm;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a control is set to, as it was worked out.
 *
 * @param design with its settings
 * @param options hour, day and form of the reserve
 */
record ComputedValues(Design design, ControlOptions options) implements ControlValues {
  ComputedValues(Candidate candidate, ControlOptions options) {
    this(candidate.design(), options);
  }

  @Override
  public Control control() {
    return design.setup().control();
  }

  @Override
  public Softener softener() {
    return design.softener();
  }

  @Override
  public Cycle cycle() {
    return design.cycle();
  }

  @Override
  public BrineRefill refill() {
    return design.refill();
  }

  @Override
  public LocalTime begins() {
    return options.begins();
  }

  private Schedule schedule() {
    return design.schedule();
  }

  @Override
  public Figure standing() {
    if (schedule() instanceof ClockSchedule clock) {
      return Figure.days(clock.longestAllowed(), 0);
    } else if (schedule() instanceof WeekdaySchedule week) {
      return Figure.days(week.fixedDays().longestAllowed(), 0);
    }
    return Figure.days(schedule().longestDays(), 0);
  }

  @Override
  public Map<String, Phrase> values() {
    Map<String, Phrase> values = new LinkedHashMap<>();
    values.put("settings.kind", Phrase.of(control()));
    if (waits()) {
      values.put("settings.clock", TimeOfDay.now(control()));
      values.put("settings.hour", Phrase.of(Figure.of(begins())));
    }
    putInterval(values);
    Phrase first = served(new Phrase.Day(schedule().firstDue(options.start())));
    values.put(control().metered() ? "settings.firstLatest" : "settings.first", first);
    values.putAll(RefillValues.of(refill()));
    return values;
  }

  private void putInterval(Map<String, Phrase> values) {
    Phrase longest = Phrase.of(Figure.days(schedule().longestDays(), 0));
    if (schedule() instanceof WeekdaySchedule week) {
      values.put("settings.weekdays", served(Phrase.of(Figure.of(week.weekdays()))));
      values.put("settings.gap", served(longest));
    } else if (control() == Control.CLOCK) {
      values.put("settings.days", served(longest));
    } else {
      values.put("settings.longest", longest);
    }
  }

  private Phrase served(Phrase value) {
    return schedule().feasible() ? value : NONE;
  }

  /** With a reserve both forms, the one in use marked; where there is none, one without it. */
  @Override
  public List<MeterColumn> meter() {
    if (!(schedule() instanceof MeteredSchedule meter)) {
      return List.of();
    }
    if (!meter.reserve().held().isPositive()) {
      Table.Column only =
          new Table.Column("settings.value", Phrase.text("settings.value"), Table.Kind.MAIN);
      return List.of(MeterColumn.of(only, meter.setting(ReserveForm.DEDUCTED)).withoutReserve());
    }
    return Stream.of(ReserveForm.values())
        .map(form -> MeterColumn.of(column(form), meter.setting(form)))
        .toList();
  }

  private Table.Column column(ReserveForm form) {
    String key = "settings.reserve." + form;
    Phrase head = Phrase.text(key);
    return form == options.reserve()
        ? new Table.Column(key, Phrase.text("settings.inUse", head), Table.Kind.CHOSEN)
        : new Table.Column(key, head, Table.Kind.VALUES);
  }
}
