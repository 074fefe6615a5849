package io.github.brinewright.sizing;

import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** The salt of a regeneration of a present softener: as set, as bought, or as a range. */
final class FoundSalt {
  private static final FlowRate USUAL_FLOW = FlowRate.ofGallonsPerMinute(0.5);
  private static final double LEAN = 6;
  private static final double RICH = 14;

  private final PresentSoftener present;
  private final Volume bed;
  private final Temperature brineTank;
  private final List<Assumption> assumptions = new ArrayList<>();
  private final FlowRate flow;
  private final boolean known;
  private final Mass salt;

  /**
   * @param regenerations of a year, asked for where the salt follows from what is bought
   */
  FoundSalt(
      PresentSoftener present, Volume bed, Temperature brineTank, DoubleSupplier regenerations) {
    this.present = present;
    this.bed = bed;
    this.brineTank = brineTank;
    flow = foundFlow();
    known = present.salt().isPresent() || boughtTells();
    salt = present.salt().map(this::set).orElseGet(() -> unset(regenerations));
  }

  private boolean boughtTells() {
    return present.saltBought().filter(Mass::isPositive).isPresent();
  }

  private FlowRate foundFlow() {
    if (present.salt().orElse(null) instanceof PresentSalt.Refill refill) {
      return refill.flow().orElseGet(this::assumedFlow);
    }
    return USUAL_FLOW;
  }

  private FlowRate assumedFlow() {
    assumptions.add(Assumption.of(AssumptionKind.REFILL_FLOW_USUAL, Figure.of(USUAL_FLOW)));
    return USUAL_FLOW;
  }

  private Mass set(PresentSalt found) {
    if (found instanceof PresentSalt.Dosed dosed) {
      return dosed(dosed.dosage());
    } else if (found instanceof PresentSalt.EachTime each) {
      return each.salt();
    }
    return refill(((PresentSalt.Refill) found).time()).saltGiven();
  }

  private Mass unset(DoubleSupplier regenerations) {
    if (!boughtTells()) {
      assumptions.add(
          Assumption.of(
              AssumptionKind.SALT_NOT_KNOWN,
              Figure.of(pounds((LEAN + RICH) / 2)),
              Figure.of(pounds(LEAN)),
              Figure.of(pounds(RICH))));
      return dosed(pounds((LEAN + RICH) / 2));
    }
    Mass bought = present.saltBought().orElseThrow();
    Mass each = bought.dividedBy(regenerations.getAsDouble());
    assumptions.add(
        Assumption.of(
            AssumptionKind.SALT_FROM_BOUGHT, Figure.roughly(bought), Figure.roughly(each)));
    return each;
  }

  private static SaltDosage pounds(double pounds) {
    return SaltDosage.ofPoundsPerCubicFoot(pounds);
  }

  private Mass dosed(SaltDosage dosage) {
    return dosage.saltFor(bed).times(present.regenerant().massRatio());
  }

  private BrineRefill refill(Duration time) {
    return BrineRefill.asSet(present.regenerant(), flow, time, brineTank);
  }

  /** Whether something tells how much it is. */
  boolean known() {
    return known;
  }

  FlowRate flow() {
    return flow;
  }

  /** The salt, of the kind that is used; where nothing tells it, at a place of its range. */
  Mass at(double place) {
    return known ? salt : dosed(pounds(LEAN + place * (RICH - LEAN)));
  }

  /** The refill that gives it. */
  BrineRefill refillAt(double place) {
    Mass each = at(place);
    Mass perGallon = present.regenerant().dissolvedByOneGallon(brineTank);
    return refill(flow.timeFor(Volume.ofGallons(each.ratioTo(perGallon))));
  }

  /** The same as sodium chloride for the volume of the bed; it may lie outside any curve. */
  SaltDosage dosage(double place) {
    Regenerant kind = present.regenerant();
    return pounds(at(place).pounds() / kind.massRatio() / bed.cubicFeet());
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }
}
