package io.github.brinewright.cli;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The ways to go on with a present softener side by side, for a terminal. */
final class WayLines {
  private static final int LABEL = 20;
  private static final int CELL = 18;
  private static final String NONE = "-";

  private final ServiceStudy study;
  private final Wording words;
  private final List<ServiceOption> options;
  private final List<String> lines = new ArrayList<>();

  private WayLines(ServiceStudy study, Wording words) {
    this.study = study;
    this.words = words;
    options = study.distinctOptions();
  }

  static List<String> of(ServiceStudy study, Wording words) {
    WayLines ways = new WayLines(study, words);
    ways.head();
    ways.settings();
    ways.year();
    ways.money();
    return ways.lines;
  }

  private void head() {
    row("", this::name);
    row("", option -> study.advice().way() == option.kind() ? "ADVISED" : "");
  }

  private String name(ServiceOption option) {
    return switch (option.kind()) {
      case AS_FOUND -> "as found";
      case SET_RIGHT -> "set right";
      case METERED -> "with a meter";
      case REPLACED -> "replaced by " + option.candidate().orElseThrow().softener().name();
    };
  }

  private void settings() {
    row("set to", option -> SettingText.of(option.bed(), words));
    row("time of day", option -> SettingText.hour(option.bed(), words));
    row("refill", option -> words.figure(Figure.of(refill(option).set())));
    row("salt each time", option -> words.figure(Figure.of(option.saltPerRegeneration(), 1)));
  }

  private BrineRefill refill(ServiceOption option) {
    return option
        .candidate()
        .map(each -> each.design().refill())
        .orElseGet(() -> study.found().refill());
  }

  private void year() {
    row(
        "mean interval",
        option -> words.figure(Figure.roughDays(option.daysBetweenRegenerations())));
    spread("salt", ServiceOption::saltPounds, pounds -> Figure.roughly(Mass.ofPounds(pounds)));
    spread("water to drain", ServiceOption::waterGallons, WayLines::gallons);
    spread("out of soft water", ServiceOption::runOutDays, Figure::roughDays);
    spread("hard water", ServiceOption::hardGallons, WayLines::gallons);
  }

  private static Figure gallons(double gallons) {
    return Figure.roughly(Volume.ofGallons(gallons));
  }

  private void money() {
    spread("cost to run", ServiceOption::costs, this::units);
    row("price, once", this::price);
    if (options.stream().anyMatch(option -> option.kind() == Kind.SET_RIGHT)) {
      row("earned back, against set right", option -> returned(option.payback()));
    }
    row("earned back, against as found", option -> returned(option.paybackAgainstFound()));
  }

  private Figure units(double units) {
    Money like = study.asFound().cost();
    return Figure.about(Money.of(like.getCurrencyUnit(), units, RoundingMode.HALF_UP));
  }

  private String price(ServiceOption option) {
    String unknown = option.kind() == Kind.AS_FOUND ? NONE : "not stated";
    return option.price().map(Money::toBigMoney).map(words::money).orElse(unknown);
  }

  private String returned(Optional<Payback> payback) {
    return payback.map(words::payback).orElse(NONE);
  }

  private void spread(
      String label, Function<ServiceOption, Spread> spread, DoubleFunction<Figure> figure) {
    row(label, option -> words.figure(figure.apply(spread.apply(option).mean())));
    row(
        "",
        option -> {
          Spread ends = spread.apply(option);
          String low = words.number(figure.apply(ends.low()));
          String high = words.number(figure.apply(ends.high()));
          return ends.isNarrow() || low.equals(high) ? "" : "(" + low + "-" + high + ")";
        });
  }

  /** A line, or several where a cell or the label does not fit in one. */
  private void row(String label, Function<ServiceOption, String> cell) {
    List<String> names = Folded.lines(label, LABEL);
    List<List<String>> cells =
        options.stream().map(option -> Folded.lines(cell.apply(option), CELL)).toList();
    int tallest =
        Stream.concat(Stream.of(names), cells.stream()).mapToInt(List::size).max().orElse(1);
    for (int i = 0; i < tallest; i++) {
      int line = i;
      add(part(names, line), cells.stream().map(all -> part(all, line)).toList());
    }
  }

  private static String part(List<String> lines, int line) {
    return line < lines.size() ? lines.get(line) : "";
  }

  private void add(String label, List<String> cells) {
    StringBuilder line = new StringBuilder(Folded.padded(label, LABEL, false));
    cells.forEach(cell -> line.append("  ").append(Folded.padded(cell, CELL, true)));
    lines.add(line.toString().stripTrailing());
  }
}
