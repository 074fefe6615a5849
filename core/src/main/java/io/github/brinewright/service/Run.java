package io.github.brinewright.service;

import io.github.brinewright.cost.CostKind;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceOption.Paybacks;
import io.github.brinewright.simulation.SimulatedYears;
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

  ServiceOption option(Map<Kind, Run> all) {
    return new ServiceOption(way, years, lines, drawn, paybacks(all));
  }

  private Paybacks paybacks(Map<Kind, Run> all) {
    if (way.price().isEmpty()) {
      return Paybacks.NONE;
    }
    Optional<Run> right = Optional.ofNullable(all.get(Kind.SET_RIGHT));
    Run found = all.get(Kind.AS_FOUND);
    return new Paybacks(
        right.filter(run -> !run.way.sameAs(way)).map(this::against), Optional.of(against(found)));
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
