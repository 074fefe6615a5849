package io.github.brinewright.service;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.SimulatedYears;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** Ways to go on with their years, all on the same days and over the same draws. */
final class Runs {
  private final Comparison comparison;
  private final HomeYears years;
  private final Map<Kind, Run> runs = new EnumMap<>(Kind.class);

  Runs(Comparison comparison, HomeYears years, List<Way> ways) {
    this.comparison = comparison;
    this.years = years;
    run(ways).forEach(this::put);
  }

  private Runs(Runs other) {
    comparison = other.comparison;
    years = other.years;
    runs.putAll(other.runs);
  }

  private void put(Run run) {
    runs.put(run.way().kind(), run);
  }

  private List<Run> run(List<Way> ways) {
    List<SimulatedYears> outcomes = years.of(ways.stream().map(Way::settings).toList());
    List<Drawn> drawn = new DrawnYears(comparison.home(), comparison.tariff()).of(ways);
    List<Run> all = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      Way way = ways.get(i);
      all.add(new Run(way, outcomes.get(i), lines(way, outcomes.get(i)), drawn.get(i)));
    }
    return all;
  }

  private Map<CostKind, Money> lines(Way way, SimulatedYears outcome) {
    return way.year(outcome).lines(comparison.tariff(), comparison.home().yearlyUse());
  }

  /** The same, with other ways in the place of those of their kinds. */
  Runs with(List<Way> ways) {
    Runs changed = new Runs(this);
    run(ways).forEach(changed::put);
    return changed;
  }

  /** What they come to, in the order of their kinds. */
  Map<Kind, ServiceOption> options() {
    Map<Kind, ServiceOption> options = new EnumMap<>(Kind.class);
    runs.forEach((kind, run) -> options.put(kind, run.option(runs)));
    return Collections.unmodifiableMap(options);
  }
}
