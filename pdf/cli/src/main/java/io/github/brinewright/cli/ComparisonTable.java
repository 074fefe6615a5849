package io.github.brinewright.cli;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.Simulated;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A comparison as plain text for a terminal: the best setting of each unit, side by side. */
final class ComparisonTable {
  private static final int MOST_COLUMNS = 5;
  private static final int WIDEST = 16;
  private static final int WIDEST_SIMULATED = 20;
  private static final int NAME_LINES = 3;
  private static final String NONE = "-";

  private final Simulated simulated;
  private final Comparison comparison;
  private final Wording words;
  private final List<Candidate> candidates;
  private final StringBuilder out = new StringBuilder();

  private ComparisonTable(Simulated simulated, Wording words) {
    this.simulated = simulated;
    this.comparison = simulated.comparison();
    this.words = words;
    candidates = comparison.columns(MOST_COLUMNS);
  }

  /** The comparison of one home as lines of text. */
  static String of(Simulated comparison, Wording words) {
    return new ComparisonTable(comparison, words).text();
  }

  private String text() {
    var home = comparison.home();
    line(home.site().id() + ": " + home.site().contact().name());
    line(
        "compensated hardness "
            + figure(Figure.of(home.compensatedHardness()))
            + ", "
            + figure(Figure.of(home.use().design()))
            + " a day, "
            + figure(Figure.of(home.dailyLoad()))
            + " a day");
    VerdictLines.of(comparison, words).forEach(this::line);
    if (comparison.verdict().permitsRecommendation()) {
      options();
    }
    comparison.cautions().forEach(this::finding);
    notes().forEach(this::finding);
    return out.toString();
  }

  /** The options side by side, and which is recommended. */
  private void options() {
    line("");
    header();
    rows();
    if (simulated.years() > 0) {
      simulatedRows();
    }
    line("");
    ChoiceLines.of(comparison, words).forEach(this::line);
  }

  private List<Finding> notes() {
    Stream<Finding> ofChosen =
        comparison.recommended().stream().flatMap(candidate -> candidate.findings().stream());
    return Stream.concat(comparison.homeFindings().stream(), ofChosen)
        .filter(finding -> finding.severity() == Severity.NOTE)
        .toList();
  }

  private void header() {
    List<List<String>> names = candidates.stream().map(o -> folded(o.softener().name())).toList();
    int tallest = names.stream().mapToInt(List::size).max().orElse(1);
    for (int i = 0; i < tallest; i++) {
      int line = i;
      cells("", names.stream().map(name -> line < name.size() ? name.get(line) : "").toList());
    }
    row("", o -> comparison.recommends(o) ? "RECOMMENDED" : "");
  }

  private void year(String label, Function<YearlyUse, String> cell) {
    design(label, d -> d.year().map(cell).orElse(NONE));
  }

  private void rows() {
    design("control", d -> words.term(d.setup().control()));
    weekdays();
    row("salt dosage", o -> o.setup().dosage().map(d -> figure(Figure.of(d))).orElse("by rating"));
    design("usable capacity", d -> figure(Figure.of(d.basis().usable())));
    design("days, full use", d -> served(d, words.number(d.schedule().designDays(), 1)));
    year("days, expected", y -> words.number(y.daysBetween(), 1));
    row("salt each time", o -> figure(Figure.of(o.salt())));
    design("refill, exact", d -> words.number(Minutes.of(d.refill().exact()), 2) + " min");
    design("refill, set", d -> words.number(Minutes.of(d.refill().set()), 1) + " min");
    year("salt a year", y -> figure(Figure.of(y.salt(), 0)));
    year("water a year", y -> figure(Figure.of(y.water())));
    row(
        "hard water",
        o -> o.hardWater().map(each -> figure(Figure.of(each.total(), 0))).orElse(NONE));
    design("pressure loss", d -> figure(Figure.of(d.flow().pressureLoss().middle(), 1)));
    design("backwash", d -> figure(Figure.of(d.flow().backwash())));
    row(
        "price",
        o -> o.offer().isUnpriced() ? "not entered" : words.money(o.quote().total().toBigMoney()));
    row("first year", o -> served(o.design(), words.about(o.yearly().total())));
    row(
        "over " + candidates.get(0).life().years() + " years",
        o -> served(o.design(), words.about(o.life().total())));
    row("limits", o -> o.feasible() ? "keeps all" : "BREAKS A LIMIT");
    row("margins", ComparisonTable::margins);
  }

  /** Only where a clock on weekdays is shown. */
  private void weekdays() {
    if (candidates.stream().anyMatch(o -> o.setup().control() == Control.WEEKDAYS)) {
      design("weekdays", d -> weekdays(d.schedule()));
    }
  }

  private static String weekdays(Schedule schedule) {
    return schedule instanceof WeekdaySchedule week && week.feasible()
        ? weekdays(week.weekdays())
        : NONE;
  }

  private static String weekdays(Set<DayOfWeek> days) {
    return days.size() == DayOfWeek.values().length
        ? "every day"
        : days.stream().map(WeekdayClock::code).collect(Collectors.joining(" "));
  }

  /** What is not known of a bed that cannot serve the home is a dash. */
  private static String served(Design design, String text) {
    return design.feasible() ? text : NONE;
  }

  private static String margins(Candidate candidate) {
    if (candidate.margins().isEmpty()) {
      return NONE;
    }
    int broken = candidate.marginsBroken().size();
    int near = candidate.marginsNear().size();
    String missed =
        (broken == 0 ? "" : broken + " broken")
            + (broken > 0 && near > 0 ? ", " : "")
            + (near == 0 ? "" : near + " near");
    return missed.isEmpty() ? "keeps all" : missed;
  }

  private void simulatedRows() {
    line("");
    line(simulated.years() + " simulated years, mean and nine years of ten:");
    outcome("regenerations", SimulatedYears::regenerations);
    outcome("salt, lb", SimulatedYears::saltPounds);
    outcome("water, gal", SimulatedYears::waterGallons);
    outcome("days out of soft", SimulatedYears::hardDays);
    row("unused", o -> outcomeText(o, each -> figure(Figure.percent(each.unusedShare()))));
    row("not beaten", o -> simulated.undominated().contains(o) ? "yes" : "");
  }

  private void outcome(String name, Function<SimulatedYears, Spread> spread) {
    row(name, candidate -> outcomeText(candidate, outcome -> range(spread.apply(outcome))));
  }

  private String outcomeText(Candidate candidate, Function<SimulatedYears, String> text) {
    return simulated.outcome(candidate).map(text).orElse("");
  }

  private String range(Spread spread) {
    return words.number(spread.mean(), 0)
        + " ("
        + words.number(spread.low(), 0)
        + "-"
        + words.number(spread.high(), 0)
        + ")";
  }

  private void design(String name, Function<Design, String> text) {
    row(name, candidate -> text.apply(candidate.design()));
  }

  private void row(String name, Function<Candidate, String> text) {
    cells(name, candidates.stream().map(text).toList());
  }

  private void cells(String name, List<String> values) {
    int width = simulated.years() > 0 ? WIDEST_SIMULATED : WIDEST;
    StringBuilder line = new StringBuilder(Folded.padded(name, WIDEST, false));
    values.forEach(value -> line.append("  ").append(Folded.padded(value, width, true)));
    line(line.toString().stripTrailing());
  }

  /** A name over several lines, each no wider than a column. */
  private static List<String> folded(String name) {
    return Folded.lines(name, WIDEST).stream()
        .map(each -> each.length() > WIDEST ? each.substring(0, WIDEST - 1) + "…" : each)
        .limit(NAME_LINES)
        .toList();
  }

  private void finding(Finding finding) {
    line("- " + words.term(finding.severity()) + ": " + words.finding(finding));
  }

  private String figure(Figure figure) {
    return words.figure(figure);
  }

  private void line(String text) {
    out.append(text).append('\n');
  }
}
