package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What tables and notes on candidates must say. */
abstract class ExpectedComparison extends Expected {
  final Comparison comparison;

  ExpectedComparison(Comparison comparison, Wording words) {
    super(words);
    this.comparison = comparison;
  }

  private Map<String, Function<Candidate, String>> lines() {
    Map<String, Function<Candidate, String>> lines = new LinkedHashMap<>();
    lines.put("compare.bed", c -> words.resin(c.design().basis().resin()));
    lines.put("compare.control", c -> term(c.design().setup().control()));
    lines.put("compare.method", c -> term(c.design().basis().method()));
    lines.put("compare.usable", c -> words.figure(Figure.of(c.design().basis().usable())));
    lines.put("compare.full", c -> plain(c.design().schedule().designDays(), 1));
    lines.put("compare.expected", c -> plain(c.design().year().orElseThrow().daysBetween(), 1));
    lines.put(
        "compare.salt", c -> words.figure(Figure.of(c.design().basis().saltPerRegeneration(), 1)));
    lines.put("compare.refill", c -> plain(Minutes.of(c.design().refill().set()), 1));
    lines.put(
        "compare.saltYear",
        c -> words.figure(Figure.of(c.design().year().orElseThrow().salt(), 0)));
    lines.put(
        "compare.fillings",
        c -> c.design().filling().map(filling -> plain(filling.months(), 1)).orElse("–"));
    lines.put(
        "compare.chloride",
        c -> words.figure(Figure.of(c.design().year().orElseThrow().chloride(), 0)));
    lines.put(
        "compare.waterYear", c -> words.figure(Figure.of(c.design().year().orElseThrow().water())));
    lines.put(
        "compare.service",
        c ->
            words.number(Figure.of(c.softener().serviceFlow()))
                + " / "
                + words.figure(Figure.of(c.softener().peakServiceFlow())));
    lines.put(
        "compare.loss",
        c ->
            words.number(Figure.of(c.design().flow().pressureLoss().low()))
                + "–"
                + words.figure(Figure.of(c.design().flow().pressureLoss().high())));
    lines.put("compare.efficiency", c -> words.figure(Figure.of(c.design().efficiency().salt())));
    lines.put("compare.price", c -> words.about(c.quote().total()));
    lines.put("compare.yearly", c -> words.about(c.yearly().total()));
    lines.put("compare.life", c -> words.about(c.life().total()));
    lines.put(
        "compare.limits",
        c -> {
          int broken = c.broken().size();
          return broken == 0
              ? words.text("compare.keeps")
              : words.text("compare.breaks", Figure.of(broken));
        });
    return lines;
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
  }

  void heads(String where, List<Candidate> candidates) {
    for (Candidate candidate : candidates) {
      String name = candidate.softener().name();
      boolean best = candidate.feasible() && candidate.equals(comparison.candidates().get(0));
      head(
          where + "/" + candidate.softener().id(),
          best ? words.text("compare.recommended", Figure.of(name)) : name);
    }
  }

  String broken(Candidate candidate, int most) {
    return candidate.broken().stream()
        .limit(most)
        .map(words::finding)
        .collect(Collectors.joining(" "));
  }
}
