package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** What candidates are compared by: a line of a table, with its cell for each candidate. */
enum CandidateRow {
  BED("compare.bed", o -> new Phrase.Bed(o.resin())),
  CONTROL("compare.control", CandidateRow::control),
  METHOD("compare.method", o -> Phrase.of(o.design().basis().method())),
  USABLE("compare.usable", o -> Phrase.of(Figure.of(o.design().basis().usable()))),
  FULL("compare.full", CandidateRow::full),
  EXPECTED("compare.expected", o -> year(o, y -> Figure.of(y.daysBetween(), 1))),
  SALT("compare.salt", o -> Phrase.of(Figure.of(o.salt(), 1))),
  REFILL("compare.refill", o -> new Phrase.Bare(Figure.of(o.design().refill().set(), 1))),
  SALT_YEAR("compare.saltYear", o -> year(o, y -> Figure.of(y.salt(), 0))),
  FILLINGS("compare.fillings", CandidateRow::fillings),
  CHLORIDE("compare.chloride", o -> year(o, y -> Figure.of(y.chloride(), 0))),
  WATER_YEAR("compare.waterYear", o -> year(o, y -> Figure.of(y.water()))),
  HARD("compare.hard", CandidateRow::hard),
  SERVICE("compare.service", CandidateRow::service),
  LOSS("compare.loss", o -> loss(o.design().flow().pressureLoss())),
  EFFICIENCY("compare.efficiency", o -> Phrase.of(Figure.of(o.design().efficiency().salt()))),
  PRICE("compare.price", o -> Phrase.of(Figure.about(o.quote().total()))),
  YEARLY("compare.yearly", o -> served(o, () -> Figure.about(o.yearly().total()))),
  LIFE("compare.life", o -> served(o, () -> Figure.about(o.life().total()))),
  LIMITS("compare.limits", CandidateRow::limits),
  MARGINS("compare.margins", CandidateRow::margins);

  private static final Phrase NONE = Phrase.plain("–");

  private final String key;
  private final Function<Candidate, Phrase> cell;

  CandidateRow(String key, Function<Candidate, Phrase> cell) {
    this.key = key;
    this.cell = cell;
  }

  /** The line of a table; the cost over the years sums up what stands above it. */
  Table.Line line(List<Candidate> candidates) {
    int years = candidates.get(0).life().years();
    Phrase label = this == LIFE ? Phrase.text(key, Phrase.of(Figure.of(years))) : Phrase.text(key);
    Table.Line line = Table.Line.of(key, label, candidates.stream().map(cell).toList());
    return this == LIFE ? line.summing() : line;
  }

  /** A clock on weekdays with the weekdays. */
  private static Phrase control(Candidate candidate) {
    Phrase control = Phrase.of(candidate.setup().control());
    return candidate.design().schedule() instanceof WeekdaySchedule week && week.feasible()
        ? new Phrase.Joined(List.of(control, Phrase.of(Figure.of(week.weekdays()))), ": ")
        : control;
  }

  private static Phrase year(Candidate candidate, Function<YearlyUse, Figure> figure) {
    return candidate.design().year().map(year -> Phrase.of(figure.apply(year))).orElse(NONE);
  }

  private static Phrase fillings(Candidate candidate) {
    return candidate
        .design()
        .filling()
        .map(filling -> Phrase.of(Figure.of(filling.months(), 1)))
        .orElse(NONE);
  }

  private static Phrase service(Candidate candidate) {
    return new Phrase.Joined(
        List.of(
            new Phrase.Bare(Figure.of(candidate.softener().serviceFlow())),
            Phrase.of(Figure.of(candidate.softener().peakServiceFlow()))),
        " / ");
  }

  private static Phrase loss(Range<Pressure> range) {
    return new Phrase.Joined(
        List.of(new Phrase.Bare(Figure.of(range.low())), Phrase.of(Figure.of(range.high()))), "–");
  }

  /** A figure that is not known of a bed that cannot serve the home. */
  static Phrase served(Candidate candidate, Supplier<Figure> figure) {
    return candidate.design().feasible() ? Phrase.of(figure.get()) : NONE;
  }

  private static Phrase full(Candidate candidate) {
    Schedule schedule = candidate.design().schedule();
    return served(
        candidate, () -> Figure.of(Math.min(schedule.designDays(), schedule.longestDays()), 1));
  }

  /** Gallons, and the days of mean use that they are. */
  private static Phrase hard(Candidate candidate) {
    return candidate
        .hardWater()
        .<Phrase>map(
            hard ->
                Phrase.text(
                    "compare.hardOf",
                    Phrase.of(Figure.of(hard.total(), 0)),
                    Phrase.of(Figure.days(candidate.hardWaterDays().orElseThrow(), 1))))
        .orElse(NONE);
  }

  private static Phrase margins(Candidate candidate) {
    if (candidate.margins().isEmpty()) {
      return NONE;
    }
    Phrase missed =
        new Phrase.Joined(
            List.of(
                counted("compare.marginsBroken", candidate.marginsBroken().size()),
                counted("compare.marginsNear", candidate.marginsNear().size())),
            ", ");
    return missed.isEmpty() ? Phrase.text("compare.keeps") : missed;
  }

  private static Phrase counted(String key, int number) {
    return number == 0 ? Phrase.NONE : Phrase.text(key, Phrase.of(Figure.of(number)));
  }

  private static Phrase limits(Candidate candidate) {
    return candidate.feasible()
        ? Phrase.text("compare.keeps")
        : Phrase.text("compare.breaks", Phrase.of(Figure.of(candidate.limitsBroken())));
  }
}
