package io.github.brinewright.demand;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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

  private final Worked<Volume> design;
  private final UseBasis designBasis;
  private final Worked<Volume> expected;
  private final UseBasis expectedBasis;

  /** Estimates both uses of a household. */
  public DailyUse(Household household) {
    Worked<Volume> perHead =
        Worked.of(
            StepKind.DESIGN_USE_PER_HEAD,
            Sources.USE_PER_HEAD,
            household.people(),
            household.perPersonDaily(),
            (people, daily) -> daily.times(people));
    Optional<Bill> bill = household.bill();
    boolean billDecides =
        bill.map(Bill::daily).filter(daily -> daily.exceeds(perHead.value())).isPresent();
    design = billDecides ? billed(StepKind.DESIGN_USE_BILL, bill.get()) : perHead;
    designBasis = billDecides ? UseBasis.BILL : UseBasis.PER_HEAD;
    if (bill.isPresent()) {
      expected = billed(StepKind.EXPECTED_USE_BILL, bill.get());
      expectedBasis = UseBasis.BILL;
    } else {
      Worked<Volume> typical = typicalOf(household.people());
      boolean capped = typical.value().exceeds(design.value());
      expected = capped ? asDesigned(design.value()) : typical;
      expectedBasis = capped ? UseBasis.DESIGN_USE : UseBasis.STATISTICS;
    }
  }

  private static Worked<Volume> billed(StepKind kind, Bill bill) {
    return Worked.of(
        kind,
        Sources.WATER_BILL,
        bill.billed(),
        bill.days(),
        (volume, days) -> volume.dividedBy(days));
  }

  private static Worked<Volume> typicalOf(int people) {
    return Worked.of(
        StepKind.EXPECTED_USE_STATISTICS,
        Sources.USE_STATISTICS,
        people,
        number ->
            Volume.ofGallons(
                SHARE_LEFT_2016 * (GALLONS_PER_PERSON_1999 * number + GALLONS_PER_HOME_1999)));
  }

  private static Worked<Volume> asDesigned(Volume design) {
    return Worked.of(
        StepKind.EXPECTED_USE_DESIGN, Sources.USE_STATISTICS, design, Function.identity());
  }

  /** The use to size on. */
  public Volume design() {
    return design.value();
  }

  /** The use to estimate yearly costs on. */
  public Volume expected() {
    return expected.value();
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
    return List.of(design.step(), expected.step());
  }
}
