package io.github.brinewright.cost;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.YearlyUse;
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
 * smallest unit of the currency; the total is the sum of the lines. Equal when design, offer and
 * tariff are.
 */
public final class YearlyCost implements Explained {
  private static final int SPARE_DECIMALS = 6;

  private final Design design;
  private final Offer offer;
  private final Tariff tariff;
  private final List<Item> items;
  private final Map<CostKind, BigMoney> exact = new EnumMap<>(CostKind.class);
  private final Map<CostKind, Money> lines = new EnumMap<>(CostKind.class);

  private YearlyCost(Design design, Offer offer, Tariff tariff, List<Item> items) {
    this.design = design;
    this.offer = offer;
    this.tariff = tariff;
    this.items = items;
    RunningYear year =
        new RunningYear(
            design.basis().regenerant(),
            salt(),
            drain(),
            design.softener().standby().throughoutYear(),
            offer.yearlyService().plus(upkeep()).plus(treatmentWater()));
    exact.putAll(year.exact(tariff, design.home().yearlyUse()));
    exact.forEach((kind, cost) -> lines.put(kind, cost.toMoney(RoundingMode.HALF_EVEN)));
  }

  /**
   * Prices a year of a design.
   *
   * @param design the softener as it is set up for the home
   * @param offer its prices
   * @param tariff in the currency of the offer
   * @return the cost of its first year, line by line
   * @throws IllegalArgumentException when the offer is of another softener or the tariff in another
   *     currency
   */
  public static YearlyCost of(Design design, Offer offer, Tariff tariff) {
    return of(design, offer, tariff, List.of());
  }

  /**
   * Prices a year of a design with the upkeep and the backwash water of what is sold beside it.
   *
   * @param design the softener as it is set up for the home
   * @param offer its prices
   * @param tariff in the currency of the offer
   * @param items sold beside it, in the currency of the offer; what a year of them costs is counted
   *     as service
   * @return the cost of its first year, line by line
   * @throws IllegalArgumentException when the offer is of another softener, or the tariff or an
   *     item in another currency
   */
  public static YearlyCost of(Design design, Offer offer, Tariff tariff, List<Item> items) {
    if (!offer.softener().equals(design.softener())) {
      throw new IllegalArgumentException(
          "the offer is of "
              + offer.softener().id()
              + ", but the design is of "
              + design.softener().id());
    }
    Prices.requireCurrency("the tariff " + tariff.id(), tariff.salt(), offer.currency());
    Item.check(items, offer.currency());
    return new YearlyCost(design, offer, tariff, List.copyOf(items));
  }

  /** {@return the offer whose service is priced} */
  public Offer offer() {
    return offer;
  }

  /** {@return the upkeep of what is sold beside it; part of the service} */
  public Money upkeep() {
    return Item.upkeep(items, offer.currency());
  }

  /** {@return the cost of the water that treatments ahead of it send to the drain; also service} */
  public Money treatmentWater() {
    return TreatmentWater.ofYear(items, tariff, design.home().yearlyUse());
  }

  /** {@return the prices reckoned with} */
  public Tariff tariff() {
    return tariff;
  }

  /**
   * {@return the cost of one kind}
   *
   * @param kind of the lines of a year
   */
  public Money of(CostKind kind) {
    return lines.get(kind);
  }

  /** {@return all lines in their order} */
  public Map<CostKind, Money> lines() {
    return Collections.unmodifiableMap(lines);
  }

  /** {@return the cost of salt, water and sewer alone: what a regeneration costs, over the year} */
  public Money saltAndWater() {
    return Money.total(of(CostKind.SALT), of(CostKind.WATER), of(CostKind.SEWER));
  }

  /** {@return the sum of the lines} */
  public Money total() {
    return Money.total(lines.values());
  }

  private Volume drain() {
    return design.year().map(YearlyUse::water).orElse(Volume.ofGallons(0));
  }

  private Mass salt() {
    return design.year().map(YearlyUse::salt).orElse(Mass.ofPounds(0));
  }

  @Override
  public List<Step> steps() {
    if (!design.feasible()) {
      return List.of();
    }
    Figure salt = Figure.of(salt(), 1);
    Figure electricity = Figure.of(design.softener().standby().throughoutYear(), 1);
    List<Step> steps = new ArrayList<>();
    steps.add(
        step(
            StepKind.SALT_COST, CostKind.SALT, salt, tariff.perPound(design.basis().regenerant())));
    steps.add(blockStep(StepKind.WATER_COST, CostKind.WATER));
    steps.add(blockStep(StepKind.SEWER_COST, CostKind.SEWER));
    steps.add(
        step(
            StepKind.ELECTRICITY_COST,
            CostKind.ELECTRICITY,
            electricity,
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

  private Step blockStep(StepKind kind, CostKind line) {
    return step(kind, line, Figure.of(drain(), 0), perThousandGallons(exact.get(line)));
  }

  /** The mean price that the steps of a rate came to, with two decimals more than its currency. */
  private BigMoney perThousandGallons(BigMoney cost) {
    int decimals = cost.getCurrencyUnit().getDecimalPlaces();
    return cost.withScale(decimals + SPARE_DECIMALS, RoundingMode.HALF_EVEN)
        .dividedBy(BigDecimal.valueOf(drain().gallons() / 1000), RoundingMode.HALF_EVEN)
        .withScale(decimals + 2, RoundingMode.HALF_EVEN);
  }

  private List<Object> inputs() {
    return List.of(
        design.home().site(),
        design.setup(),
        design.year().map(YearlyUse::regenerations),
        offer,
        tariff,
        items);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof YearlyCost cost && inputs().equals(cost.inputs());
  }

  @Override
  public int hashCode() {
    return lines.hashCode();
  }

  @Override
  public String toString() {
    return "YearlyCost of " + offer.softener().id() + ": " + total() + " " + lines;
  }
}
