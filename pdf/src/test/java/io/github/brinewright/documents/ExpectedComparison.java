package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Grade;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.sizing.YearlyUse;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What tables and notes on candidates must say. */
abstract class ExpectedComparison extends Expected {
  final Comparison comparison;
  final Optional<ServiceStudy> service;

  ExpectedComparison(Comparison comparison, @Nullable ServiceStudy service, Wording words) {
    super(words);
    this.comparison = comparison;
    this.service = Optional.ofNullable(service);
  }

  /** What is said of the softener in the house, where there is one. */
  void present(Consumer<ExpectedPresent> said) {
    service.ifPresent(
        study -> {
          ExpectedPresent present = new ExpectedPresent(study, words);
          said.accept(present);
          values().putAll(present.values());
          labels().putAll(present.labels());
        });
  }

  boolean keeps() {
    return service.filter(study -> study.advice() != Advice.REPLACE).isPresent();
  }

  /** A clock on weekdays with the weekdays, where the bed serves the home. */
  String control(Candidate candidate) {
    String control = term(candidate.design().setup().control());
    return candidate
        .design()
        .bed()
        .map(BedSettings::weekdays)
        .filter(days -> !days.isEmpty())
        .map(days -> words.text("compare.weekdays", Figure.of(control), Figure.of(days)))
        .orElse(control);
  }

  /** The unit once; one figure alone where both are printed alike. */
  private static String range(String low, String high) {
    return low.equals(high) ? high : low.replaceAll("[ \u00A0\u202F].*", "") + "–" + high;
  }

  private Map<String, Function<Candidate, String>> lines() {
    Map<String, Function<Candidate, String>> lines = new LinkedHashMap<>();
    lines.put("compare.bed", c -> words.resin(c.design().basis().resin()));
    lines.put("compare.control", this::control);
    lines.put("compare.method", c -> term(c.design().basis().method()));
    lines.put("compare.usable", c -> words.figure(Figure.of(c.design().basis().usable())));
    lines.put(
        "compare.full",
        c ->
            ofYear(
                c,
                y ->
                    plain(
                        Math.min(
                            c.design().schedule().designDays(),
                            c.design().schedule().longestDays()),
                        1)));
    lines.put("compare.expected", c -> ofYear(c, y -> plain(y.daysBetween(), 1)));
    lines.put(
        "compare.salt", c -> words.figure(Figure.of(c.design().basis().saltPerRegeneration(), 1)));
    lines.put("compare.refill", c -> plain(Minutes.of(c.design().refill().set()), 1));
    lines.put("compare.saltYear", c -> ofYear(c, y -> words.figure(Figure.of(y.salt(), 0))));
    lines.put(
        "compare.fillings",
        c -> c.design().filling().map(filling -> plain(filling.months(), 1)).orElse("–"));
    lines.put("compare.chloride", c -> ofYear(c, y -> words.figure(Figure.of(y.chloride(), 0))));
    lines.put("compare.waterYear", c -> ofYear(c, y -> words.figure(Figure.of(y.water()))));
    lines.put("compare.hard", c -> ofYear(c, y -> hard(c.design().hardWater().orElseThrow())));
    lines.put(
        "compare.service",
        c ->
            words.number(Figure.of(c.softener().serviceFlow()))
                + " / "
                + words.figure(Figure.of(c.softener().peakServiceFlow())));
    lines.put(
        "compare.loss",
        c ->
            range(
                words.figure(Figure.of(c.design().flow().pressureLoss().low())),
                words.figure(Figure.of(c.design().flow().pressureLoss().high()))));
    lines.put("compare.efficiency", c -> words.figure(Figure.of(c.design().efficiency().salt())));
    lines.put("compare.price", c -> words.money(c.quote().total().toBigMoney()));
    lines.put("compare.yearly", c -> ofYear(c, y -> words.about(c.yearly().total())));
    lines.put("compare.life", c -> ofYear(c, y -> words.about(c.life().total())));
    lines.put(
        "compare.limits",
        c -> {
          int broken = c.broken().size();
          return broken == 0
              ? words.text("compare.keeps")
              : words.text("compare.breaks", Figure.of(broken));
        });
    lines.put("compare.margins", this::margins);
    return lines;
  }

  /** A dash where the bed cannot serve the home, so that nothing is known of a year. */
  String ofYear(Candidate candidate, Function<YearlyUse, String> text) {
    return candidate.design().year().map(text).orElse("–");
  }

  /** Gallons from all causes, and as days of mean use. */
  String hard(HardWater hard) {
    Volume all = hard.runOut().plus(hard.whileRegenerating());
    double days = all.gallons() / comparison.home().softenedExpected().gallons();
    return words.text("compare.hardOf", Figure.of(all, 0), Figure.days(days, 1));
  }

  private String margins(Candidate candidate) {
    long broken = graded(candidate, Grade.BROKEN);
    long near = graded(candidate, Grade.NEAR);
    if (candidate.margins().isEmpty()) {
      return "–";
    } else if (broken + near == 0) {
      return words.text("compare.keeps");
    }
    return Stream.of(counted("compare.marginsBroken", broken), counted("compare.marginsNear", near))
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static long graded(Candidate candidate, Grade grade) {
    return candidate.margins().stream().filter(check -> check.grade() == grade).count();
  }

  private String counted(String key, long number) {
    return number == 0 ? "" : words.text(key, Figure.of((int) number));
  }

  /** Units down, dosages across; those of some units, or of all. */
  void grid(String where, List<Candidate> of) {
    Control control = comparison.recommended().orElseThrow().setup().control();
    List<Candidate> cells =
        comparison.candidates().stream()
            .filter(c -> c.setup().control() == control)
            .filter(c -> of.stream().anyMatch(one -> one.softener().equals(c.softener())))
            .toList();
    TreeMap<String, String> columns = new TreeMap<>();
    cells.forEach(c -> columns.put(column(c), head(c)));
    columns.forEach((key, head) -> head(where + "/" + key, head));
    for (Candidate unit : cells) {
      String key = where + "/" + unit.softener().id() + "/";
      String label = words.resin(unit.resin()) + " · " + unit.softener().name();
      columns.keySet().forEach(column -> values().putIfAbsent(key + column, "–"));
      value(key + column(unit), label, cell(unit));
    }
  }

  private static String column(Candidate candidate) {
    return candidate
        .setup()
        .dosage()
        .map(d -> String.format(Locale.ROOT, "grid.dosage.%.2f", d.poundsPerCubicFoot()))
        .orElse("grid.rated");
  }

  private String head(Candidate candidate) {
    return candidate
        .setup()
        .dosage()
        .map(d -> words.figure(Figure.of(d)))
        .orElse(words.text("grid.rated"));
  }

  private String cell(Candidate candidate) {
    if (!candidate.feasible()) {
      return words.text("grid.breaks");
    }
    Money cost =
        candidate
            .yearly()
            .of(CostKind.SALT)
            .plus(candidate.yearly().of(CostKind.WATER))
            .plus(candidate.yearly().of(CostKind.SEWER));
    Figure days = Figure.days(candidate.design().year().orElseThrow().daysBetween(), 1);
    String figures = words.text("grid.cell", days, Figure.about(cost));
    boolean chosen = comparison.recommended().equals(Optional.of(candidate));
    boolean cheapest = comparison.cheapestThatFits().equals(Optional.of(candidate));
    String key = chosen && cheapest ? "both" : chosen ? "chosen" : cheapest ? "cheapest" : "";
    return key.isEmpty() ? figures : words.text("grid." + key, Figure.of(figures));
  }

  /** The table of candidates, with all of its lines or those named. */
  void candidates(String where, List<Candidate> candidates, String... only) {
    Map<String, Function<Candidate, String>> lines = lines();
    List<String> keys = only.length == 0 ? new ArrayList<>(lines.keySet()) : List.of(only);
    Figure years = Figure.of(candidates.get(0).life().years());
    for (String key : keys) {
      line(where + "/" + key, words.text(key, years), candidates, lines.get(key));
    }
    heads(where, candidates);
    present(now -> now.compared(where, only));
  }

  void heads(String where, List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      String name = candidate.softener().name();
      boolean best = comparison.recommended().equals(Optional.of(candidate));
      head(
          where + "/" + candidate.softener().id(),
          best ? words.text(keeps() ? "now.best" : "compare.recommended", Figure.of(name)) : name);
    }
  }

  String broken(Candidate candidate, int most) {
    return candidate.broken().stream()
        .limit(most)
        .map(words::finding)
        .collect(Collectors.joining(" "));
  }
}
