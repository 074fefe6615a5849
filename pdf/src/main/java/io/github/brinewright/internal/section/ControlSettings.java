package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Ticks;
import io.github.brinewright.model.WritingLines;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the installer sets, fits and checks for one candidate. */
public final class ControlSettings {
  private static final int CHECKS = 9;

  private final Comparison comparison;
  private final Candidate candidate;
  private final Design design;

  /**
   * The sheet of a candidate.
   *
   * @param comparison that it belongs to
   * @param candidate to set up
   */
  public ControlSettings(Comparison comparison, Candidate candidate) {
    this.comparison = comparison;
    this.candidate = candidate;
    design = candidate.design();
  }

  /** The sections of the sheet. */
  public List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(new HomeVerdict(comparison).section());
    sections.add(cautions());
    if (!candidate.feasible()) {
      sections.add(warnings());
    }
    sections.add(section("settings.control", control()));
    sections.add(section("settings.cycle", new CycleSteps(design.cycle()).table()));
    sections.add(section("settings.fit", fit()));
    sections.add(checks().onOwnPage());
    if (design.setup().basis() instanceof DosageCurveBasis basis) {
      sections.add(new ResinCurve(candidate.softener(), basis).section());
    }
    return sections;
  }

  private static Section section(String key, Element... elements) {
    return Section.of(key, Phrase.text(key), elements);
  }

  private Section cautions() {
    return Section.of(
        "cautions", Phrase.NONE, BeforeYouDecide.topic(comparison.cautions(candidate)));
  }

  /** Limits that the candidate breaks: an installer must not set it up unasked. */
  private Section warnings() {
    List<Element> broken = new ArrayList<>();
    candidate
        .broken()
        .forEach(
            finding ->
                broken.add(
                    Paragraph.strong(
                        Phrase.text(
                            "settings.warning",
                            Phrase.of(Severity.STOP),
                            new Phrase.Found(finding)))));
    return new Section("settings.warnings", Phrase.NONE, broken, false);
  }

  private Rows control() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("settings.kind", Phrase.of(candidate.setup().control())));
    rows.add(Row.of("settings.hardness", Figure.of(design.home().compensatedHardness())));
    rows.add(interval(candidate.setup().control(), design.schedule()));
    String longest =
        design.schedule() instanceof WeekdaySchedule ? "settings.gap" : "settings.longest";
    rows.add(Row.of(longest, Figure.days(design.schedule().longestDays(), 0)));
    if (candidate.setup().control() != Control.METERED_AT_ONCE) {
      rows.add(Row.of("settings.hour", Phrase.text("settings.twoAtNight")));
    }
    rows.add(Row.of("settings.refillExact", Figure.of(design.refill().exact(), 2)));
    Phrase refill =
        Phrase.text(
            "settings.refillGives",
            Phrase.of(Figure.of(design.refill().set(), 1)),
            Phrase.of(Figure.of(design.refill().saltGiven())));
    rows.add(Row.of("settings.refillSet", refill));
    return rows("settings.setting", rows);
  }

  /** What sets the interval; a dash where the bed cannot serve the home. */
  private static Row interval(Control control, Schedule schedule) {
    String key =
        switch (control) {
          case CLOCK -> "settings.days";
          case WEEKDAYS -> "settings.weekdays";
          case METERED_AT_ONCE, METERED_AT_NIGHT -> "settings.volume";
        };
    return schedule.feasible() ? Row.of(key, set(schedule)) : Row.of(key, Phrase.plain("–"));
  }

  /** Days of a clock, weekdays of one that takes them, or volume of a meter. */
  private static Figure set(Schedule schedule) {
    if (schedule instanceof WeekdaySchedule week) {
      return Figure.of(week.weekdays());
    }
    return schedule
        .setVolume()
        .<Figure>map(Figure::of)
        .orElseGet(() -> Figure.days(schedule.designDays(), 0));
  }

  private Rows fit() {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of("settings.resin", new Phrase.Bed(candidate.resin())));
    rows.add(Row.of("settings.backwash", Figure.of(design.flow().backwash(), 1)));
    rows.add(Row.of("settings.drain", Figure.of(design.flow().drain().chosen(), 1)));
    rows.add(Row.of("settings.refillFlow", Figure.of(design.refill().rate(), 2)));
    rows.add(Row.of("settings.salt", Phrase.of(candidate.softener().regenerant())));
    candidate
        .softener()
        .brineTank()
        .map(tank -> Figure.of(tank.level(design.refill().water()), 1))
        .ifPresent(level -> rows.add(Row.of("settings.level", level)));
    Hardness target = design.home().site().target();
    if (target.isPositive()) {
      rows.add(Row.of("settings.blend", Figure.of(target)));
    }
    return rows("settings.part", rows);
  }

  private static Rows rows(String head, List<Row> rows) {
    return new Rows(head, List.of(Phrase.text(head), Phrase.text("settings.value")), rows);
  }

  private static Section checks() {
    List<Element> elements = new ArrayList<>();
    elements.add(new Ticks(IntStream.rangeClosed(1, CHECKS).mapToObj(i -> check(i)).toList()));
    elements.add(readings());
    Stream.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.DISCHARGE, Caution.OUTLET)
        .forEach(caution -> elements.add(Paragraph.quiet(new Phrase.Warned(caution))));
    return new Section("settings.checks", Phrase.text("settings.checks"), elements, false);
  }

  private static Field check(int number) {
    return Field.of(Field.Kind.TICK, "check_" + number, Phrase.text("settings.check" + number));
  }

  private static WritingLines readings() {
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
