package io.github.brinewright.demand;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Softened water a day, as two numbers that are never mixed: design use sizes the bed, expected use
 * estimates what a year takes.
 *
 * <p>Design use: people × use per head, or the winter bill where that is more. Expected use: the
 * winter bill; without one 0.78 × (37.2 × people + 69.2) gal/day, and never more than the design
 * use. Example for 3 people without a bill: 225 and 141 gal/day. Source: common practice (75 gal a
 * head); Residential End Uses of Water 1999 and 2016 (from memory).
 */
public final class DailyUse implements Explained {
  private static final double GALLONS_PER_PERSON_1999 = 37.2;
  private static final double GALLONS_PER_HOME_1999 = 69.2;
  private static final double SHARE_LEFT_2016 = 0.78;

  private final Household household;
  private final Volume design;
  private final UseBasis designBasis;
  private final Volume expected;
  private final UseBasis expectedBasis;

  /** Estimates both uses of a household. */
  public DailyUse(Household household) {
    this.household = household;
    Volume perHead = household.perPersonDaily().times(household.people());
    Optional<Volume> billed = household.bill().map(Bill::daily);
    boolean billDecides = billed.isPresent() && billed.get().exceeds(perHead);
    design = billDecides ? billed.get() : perHead;
    designBasis = billDecides ? UseBasis.BILL : UseBasis.PER_HEAD;
    Volume typical = typicalOf(household.people());
    boolean capped = typical.exceeds(design);
    expected = billed.orElse(typical.min(design));
    expectedBasis =
        billed.isPresent() ? UseBasis.BILL : capped ? UseBasis.DESIGN_USE : UseBasis.STATISTICS;
  }

  private static Volume typicalOf(int people) {
    return Volume.ofGallons(
        SHARE_LEFT_2016 * (GALLONS_PER_PERSON_1999 * people + GALLONS_PER_HOME_1999));
  }

  /** The use to size on. */
  public Volume design() {
    return design;
  }

  /** The use to estimate yearly costs on. */
  public Volume expected() {
    return expected;
  }

  /** What the design use was taken from. */
  public UseBasis designBasis() {
    return designBasis;
  }

  /** What the expected use was taken from. */
  public UseBasis expectedBasis() {
    return expectedBasis;
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Figure perHead = Figure.of(household.perPersonDaily());
    Figure people = Figure.of(household.people());
    if (designBasis == UseBasis.PER_HEAD) {
      steps.add(
          new Step(
              StepKind.DESIGN_USE_PER_HEAD,
              List.of(people, perHead),
              Figure.of(design),
              Sources.USE_PER_HEAD));
    } else {
      steps.add(billStep(StepKind.DESIGN_USE_BILL));
    }
    switch (expectedBasis) {
      case BILL -> steps.add(billStep(StepKind.EXPECTED_USE_BILL));
      case STATISTICS ->
          steps.add(
              new Step(
                  StepKind.EXPECTED_USE_STATISTICS,
                  List.of(people),
                  Figure.of(expected),
                  Sources.USE_STATISTICS));
      default ->
          steps.add(
              new Step(
                  StepKind.EXPECTED_USE_DESIGN,
                  List.of(Figure.of(design)),
                  Figure.of(expected),
                  Sources.USE_STATISTICS));
    }
    return steps;
  }

  private Step billStep(StepKind kind) {
    Bill bill = household.bill().orElseThrow();
    return new Step(
        kind,
        List.of(Figure.of(bill.billed()), Figure.of(bill.days())),
        Figure.of(bill.daily()),
        Sources.WATER_BILL);
  }
}
