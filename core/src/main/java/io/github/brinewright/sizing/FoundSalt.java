package io.github.brinewright.sizing;

import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** The salt of a regeneration of a present softener: as set, as bought, or as a range. */
final class FoundSalt {
  private static final FlowRate USUAL_FLOW = FlowRate.ofGallonsPerMinute(0.5);

  /** Where nothing tells the salt it lies in this range; common practice. */
  private static final SaltDosage LEAN = SaltDosage.ofPoundsPerCubicFoot(6);

  private static final SaltDosage RICH = SaltDosage.ofPoundsPerCubicFoot(14);

  private final PresentSoftener present;
  private final Volume bed;
  private final Temperature brineTank;
  private final Optional<FlowRate> readFlow;
  private final Optional<Mass> told;
  private final List<Assumption> assumptions = new ArrayList<>();

  /** As set; where no setting was found, as a range. */
  FoundSalt(PresentSoftener present, Volume bed, Temperature brineTank) {
    this(present, bed, brineTank, Optional.empty());
  }

  private FoundSalt(
      PresentSoftener present, Volume bed, Temperature brineTank, Optional<Mass> eachByPurchase) {
    this.present = present;
    this.bed = bed;
    this.brineTank = brineTank;
    readFlow = readFlow(present);
    told = present.salt().map(this::asSet).or(() -> eachByPurchase);
    assume(eachByPurchase);
  }

  /**
   * The same, with the salt that follows from purchases where no setting was found.
   *
   * @param regenerations of a year, asked for where they are needed
   */
  FoundSalt orBought(DoubleSupplier regenerations) {
    Optional<Mass> bought = present.saltBought().filter(Mass::isPositive);
    return told.isPresent() || bought.isEmpty()
        ? this
        : new FoundSalt(
            present,
            bed,
            brineTank,
            Optional.of(bought.get().dividedBy(regenerations.getAsDouble())));
  }

  private static Optional<FlowRate> readFlow(PresentSoftener present) {
    return present.salt().orElse(null) instanceof PresentSalt.Refill refill
        ? refill.flow()
        : Optional.empty();
  }

  private void assume(Optional<Mass> eachByPurchase) {
    if (readFlow.isEmpty()) {
      assume(AssumptionKind.REFILL_FLOW_USUAL, Figure.of(USUAL_FLOW));
    }
    if (eachByPurchase.isPresent()) {
      Figure year = Figure.roughly(present.saltBought().orElseThrow());
      assume(AssumptionKind.SALT_FROM_BOUGHT, year, Figure.roughly(eachByPurchase.get()));
    } else if (told.isEmpty()) {
      Figure middle = Figure.of(inRange(FoundUnknowns.MIDDLE.salt()));
      assume(AssumptionKind.SALT_NOT_KNOWN, middle, Figure.of(LEAN), Figure.of(RICH));
    }
  }

  private void assume(AssumptionKind kind, Figure... figures) {
    assumptions.add(Assumption.of(kind, figures));
  }

  private Mass asSet(PresentSalt found) {
    if (found instanceof PresentSalt.Dosed dosed) {
      return dosed(dosed.dosage());
    } else if (found instanceof PresentSalt.EachTime each) {
      return each.salt();
    }
    PresentSalt.Refill refill = (PresentSalt.Refill) found;
    return BrineRefill.asSet(present.regenerant(), flow(), refill.time(), brineTank).saltGiven();
  }

  private Mass dosed(SaltDosage dosage) {
    return dosage.saltFor(bed).times(present.regenerant().massRatio());
  }

  private static SaltDosage inRange(double place) {
    return LEAN.plus(RICH.minus(LEAN).times(place));
  }

  /** Whether a setting or purchases tell how much it is. */
  boolean known() {
    return told.isPresent();
  }

  FlowRate flow() {
    return readFlow.orElse(USUAL_FLOW);
  }

  /** The salt, of the kind that is used; where nothing tells it, at a place of its range. */
  Mass at(double place) {
    return told.orElseGet(() -> dosed(inRange(place)));
  }

  /** The refill that gives it. */
  BrineRefill refillAt(double place) {
    Mass perGallon = present.regenerant().dissolvedByOneGallon(brineTank);
    Volume water = Volume.ofGallons(at(place).ratioTo(perGallon));
    return BrineRefill.asSet(present.regenerant(), flow(), flow().timeFor(water), brineTank);
  }

  /** The same as sodium chloride for the volume of the bed; it may lie outside any curve. */
  SaltDosage dosage(double place) {
    double pounds = at(place).pounds() / present.regenerant().massRatio();
    return SaltDosage.ofPoundsPerCubicFoot(pounds / bed.cubicFeet());
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }
}
