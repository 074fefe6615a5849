package io.github.brinewright.internal.section;

import io.github.brinewright.model.Field;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.Together;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.softener.Control;
import java.util.ArrayList;
import java.util.List;

/** What is checked when a softener is set: a list to tick off, and what was measured. */
final class StartUp {
  private static final List<Integer> NEW = List.of(1, 2, 3, 4, 5, 6, 7, 8, 9);
  private static final List<Integer> PRESENT = List.of(3, 11, 12, 5, 7, 9);
  private static final int COUNTS = 10;
  private static final int METER_FITTED = 13;

  private final List<Integer> checks;

  private StartUp(List<Integer> checks) {
    this.checks = checks;
  }

  /** Of a softener that is fitted. */
  static Section fitted(Control control) {
    return new StartUp(with(NEW, control.metered() ? List.of(COUNTS) : List.of())).section();
  }

  /**
   * Of a softener that is there already.
   *
   * @param found control that it has
   * @param set control that it has then
   */
  static Section present(Control found, Control set) {
    List<Integer> more = new ArrayList<>();
    if (set.metered() && !found.metered()) {
      more.add(METER_FITTED);
    }
    if (set.metered()) {
      more.add(COUNTS);
    }
    return new StartUp(with(PRESENT, more)).section();
  }

  private static List<Integer> with(List<Integer> checks, List<Integer> more) {
    List<Integer> all = new ArrayList<>(checks);
    all.addAll(all.size() - 1, more);
    return all;
  }

  private Section section() {
    return SettingsSections.section(
        "settings.checks",
        Together.of(new Ticks(checks.stream().map(StartUp::check).toList()), measured()));
  }

  private static Field check(int number) {
    return Field.of(Field.Kind.TICK, "check_" + number, Phrase.text("settings.check" + number));
  }

  private static WritingLines measured() {
    return new WritingLines(
        List.of(
            line("hardness_before", "settings.hardnessBefore"),
            line("hardness_after", "settings.hardnessAfter"),
            line("installer", "settings.installer"),
            line("date", "accept.date")));
  }

  private static WritingLines.Line line(String name, String key) {
    Phrase label = Phrase.text(key);
    return new WritingLines.Line(Field.of(Field.Kind.TEXT, name, label), label);
  }
}
