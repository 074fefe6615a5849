package io.github.brinewright.service;

import io.github.brinewright.cost.CostKind;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceOption.Paybacks;
import io.github.brinewright.simulation.SimulatedYears;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One way with its years.
 *
 * @param way how to go on
 * @param years what came of it
 * @param lines what a year costs
 * @param drawn the same over the draws
 */
record Run(Way way, SimulatedYears years, Map<CostKind, Money> lines, Drawn drawn) {

  ServiceOption option(List<Run> all) {
    return new ServiceOption(way, years, lines, drawn, paybacks(all));
  }

  private Paybacks paybacks(List<Run> all) {
    if (way.price().isEmpty() || way.kind() == Kind.AS_FOUND) {
      return Paybacks.NONE;
    }
    Optional<Payback> right =
        way.kind() == Kind.SET_RIGHT ? Optional.empty() : against(all, Kind.SET_RIGHT);
    return new Paybacks(right, against(all, Kind.AS_FOUND));
  }

  private Optional<Payback> against(List<Run> all, Kind kind) {
    return all.stream().filter(run -> run.way.kind() == kind).findFirst().map(this::against);
  }

  private Payback against(Run other) {
    double saved = other.cost() - cost();
    double price = way.price().orElseThrow().getAmount().doubleValue();
    return Payback.of(price, saved, drawn.savedAgainst(other.drawn));
  }

  private double cost() {
    return Money.total(lines.values()).getAmount().doubleValue();
  }
}
