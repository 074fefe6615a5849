package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What candidates are compared by: a line of a table, with its cell for each candidate and for the
 * softener that is in the house.
 */
enum CandidateRow {
  BED(
      "compare.bed",
      o -> new Phrase.Bed(o.resin()),
      now -> new Phrase.Bed(now.found().resinVolume())),
  CONTROL(
      "compare.control",
      CandidateRow::control,
      now -> control(now.found().control(), now.asFound().bed().weekdays())),
  METHOD(
      "compare.method",
      o -> Phrase.of(o.design().basis().method()),
      now -> Phrase.of(CapacityBasis.Method.DOSAGE_CURVE)),
  USABLE(
      "compare.usable",
      o -> Phrase.of(Figure.of(o.design().basis().usable())),
      now -> now.found(found -> Figure.of(found.usable()))),
  FULL(
      "compare.full",
      CandidateRow::full,
      now -> now.found(found -> Figure.of(found.designDays(), 1))),
  EXPECTED(
      "compare.expected",
      o -> year(o, y -> Figure.of(y.daysBetween(), 1)),
      now -> now.year(year -> Figure.of(year.daysBetweenRegenerations(), 1))),
  SALT(
      "compare.salt",
      o -> Phrase.of(Figure.of(o.salt(), 1)),
      now -> now.year(year -> Figure.of(year.saltPerRegeneration(), 1))),
  REFILL(
      "compare.refill",
      o -> new Phrase.Bare(Figure.of(o.design().refill().set(), 1)),
      now -> new Phrase.Bare(Figure.of(now.found().refill().set(), 1))),
  SALT_YEAR(
      "compare.saltYear",
      o -> year(o, y -> Figure.of(y.salt(), 0)),
      now -> now.year(year -> Figure.of(year.salt(), 0))),
  FILLINGS("compare.fillings", CandidateRow::fillings, now -> PresentColumn.NONE),
  CHLORIDE(
      "compare.chloride",
      o -> year(o, y -> Figure.of(y.chloride(), 0)),
      now -> now.year(year -> Figure.of(chloride(now, year), 0))),
  WATER_YEAR(
      "compare.waterYear",
      o -> year(o, y -> Figure.of(y.water())),
      now -> now.year(year -> Figure.of(year.water()))),
  HARD("compare.hard", CandidateRow::hard, PresentColumn::hard),
  SERVICE("compare.service", o -> service(o.softener()), PresentColumn::service),
  /** Of a valve that nobody measured nothing is known. */
  LOSS("compare.loss", o -> loss(o.design().flow().pressureLoss()), now -> PresentColumn.NONE),
  EFFICIENCY(
      "compare.efficiency",
      o -> Phrase.of(Figure.of(o.design().efficiency().salt())),
      now -> now.year(year -> Figure.of(year.saltPerRegeneration().per(now.found().usable())))),
  PRICE("compare.price", o -> Phrase.of(Figure.of(o.quote().total())), now -> PresentColumn.NONE),
  YEARLY(
      "compare.yearly",
      o -> served(o, () -> Figure.about(o.yearly().total())),
      now -> now.year(year -> Figure.about(year.cost()))),
  LIFE("compare.life", o -> served(o, () -> Figure.about(o.life().total())), PresentColumn::life),
  LIMITS("compare.limits", CandidateRow::limits, now -> PresentColumn.NONE),
  MARGINS("compare.margins", CandidateRow::margins, now -> PresentColumn.NONE);

  private static final Phrase NONE = PresentColumn.NONE;

  private final String key;
  private final Function<Candidate, Phrase> cell;
  private final Function<PresentColumn, Phrase> now;

  CandidateRow(String key, Function<Candidate, Phrase> cell, Function<PresentColumn, Phrase> now) {
    this.key = key;
    this.cell = cell;
    this.now = now;
  }

  /** The line of a table; the cost over the years sums up what stands above it. */
  Table.Line line(Optional<PresentColumn> present, List<Candidate> candidates) {
    int years = candidates.get(0).life().years();
    Phrase label = this == LIFE ? Phrase.text(key, Phrase.of(Figure.of(years))) : Phrase.text(key);
    List<Phrase> cells =
        Stream.concat(present.map(now).stream(), candidates.stream().map(cell)).toList();
    Table.Line line = Table.Line.of(key, label, cells);
    return this == LIFE ? line.summing() : line;
  }

  /** A clock on weekdays with the weekdays. */
  static Phrase control(Candidate candidate) {
    return candidate.design().schedule() instanceof WeekdaySchedule week && week.feasible()
        ? control(candidate.setup().control(), week.weekdays())
        : Phrase.of(candidate.setup().control());
  }

  private static Phrase control(Control control, Set<DayOfWeek> days) {
    Phrase name = Phrase.of(control);
    return days.isEmpty()
        ? name
        : Phrase.text("compare.weekdays", name, Phrase.of(Figure.of(days)));
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

  static Phrase service(Softener softener) {
    return new Phrase.Joined(
        List.of(
            new Phrase.Bare(Figure.of(softener.serviceFlow())),
            Phrase.of(Figure.of(softener.peakServiceFlow()))),
        " / ");
  }

  private static Mass chloride(PresentColumn now, ServiceOption year) {
    return now.found().present().regenerant().chlorideIn(year.salt());
  }

  private static Phrase loss(Range<Pressure> range) {
    return new Phrase.Span(Figure.of(range.low()), Figure.of(range.high()));
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
        .map(hard -> HardWaterText.of(hard, candidate.design().home()))
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
