package io.github.brinewright.cost;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a candidate costs in its first year at today's prices. Each line is rounded once to the
 * cent; the total is the sum of the lines.
 */
public final class YearlyCost implements Explained {
  private final Design design;
  private final Tariff tariff;
  private final Map<CostKind, Money> lines = new EnumMap<>(CostKind.class);

  /** Prices a year of a design. */
  public YearlyCost(Design design, Offer offer, Tariff tariff) {
    this.design = design;
    this.tariff = tariff;
    Volume use = design.home().yearlyUse();
    Volume drain = design.year().water();
    put(CostKind.SALT, tariff.saltCost(design.basis().regenerant(), design.year().salt()));
    put(CostKind.WATER, tariff.waterCost(use, drain));
    put(CostKind.SEWER, tariff.sewerCost(use, drain));
    put(CostKind.ELECTRICITY, tariff.energyCost(design.year().electricity()));
    put(CostKind.SERVICE, offer.yearlyService().toBigMoney());
  }

  private BigMoney pricePerPound() {
    return tariff.perPound(design.basis().regenerant());
  }

  private void put(CostKind kind, BigMoney exact) {
    lines.put(kind, exact.toMoney(RoundingMode.HALF_EVEN));
  }

  /** The cost of one kind. */
  public Money of(CostKind kind) {
    return lines.get(kind);
  }

  /** All lines in their order. */
  public Map<CostKind, Money> lines() {
    return Collections.unmodifiableMap(lines);
  }

  /** The sum of the lines. */
  public Money total() {
    return Money.total(lines.values());
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Mass salt = design.year().salt();
    steps.add(step(StepKind.SALT_COST, CostKind.SALT, Figure.of(salt, 1), pricePerPound()));
    addBlockStep(steps, StepKind.WATER_COST, CostKind.WATER, tariff.water());
    addBlockStep(steps, StepKind.SEWER_COST, CostKind.SEWER, tariff.sewer());
    steps.add(
        step(
            StepKind.ELECTRICITY_COST,
            CostKind.ELECTRICITY,
            Figure.of(design.year().electricity(), 1),
            tariff.perKilowattHour()));
    steps.add(
        new Step(
            StepKind.YEARLY_COST,
            lines.values().stream().map(Figure::of).toList(),
            Figure.of(total()),
            Sources.DEFINITION));
    return steps;
  }

  private Step step(StepKind kind, CostKind line, Figure quantity, BigMoney price) {
    return new Step(kind, List.of(quantity, Figure.of(price)), Figure.of(of(line)), Sources.TARIFF);
  }

  /** Shows the mean price that the steps of the rate give for this water. */
  private void addBlockStep(List<Step> steps, StepKind kind, CostKind line, BlockRate rate) {
    Volume drain = design.year().water();
    BigMoney exact = rate.yearlyCostOf(design.home().yearlyUse(), drain);
    BigMoney perThousand =
        exact
            .withScale(8, RoundingMode.HALF_EVEN)
            .dividedBy(BigDecimal.valueOf(drain.gallons() / 1000), RoundingMode.HALF_EVEN)
            .withScale(4, RoundingMode.HALF_EVEN);
    steps.add(step(kind, line, Figure.of(drain, 0), perThousand));
  }
}
