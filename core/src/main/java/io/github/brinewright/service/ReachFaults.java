package io.github.brinewright.service;

import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;

/**
 * What is wrong with days, volume, capacity and hardness that ask more of a bed than it holds. Hard
 * water is named once: of a meter that was told a wrong capacity and a wrong hardness, the capacity
 * has what it lets pass, and the hardness what would still pass after.
 */
final class ReachFaults {
  private static final double CLEARLY_MORE = 1.2;

  private final Inspected inspected;
  private final Reckoned reckoned;
  private final HomeYears years;

  ReachFaults(Inspected inspected, Reckoned reckoned, HomeYears years) {
    this.inspected = inspected;
    this.reckoned = reckoned;
    this.years = years;
  }

  List<Fault> all() {
    HardWaterOut out = HardWaterOut.of(inspected.asFound().hardWater());
    Optional<FaultKind> hardness = hardness();
    if (hardness.isPresent() && reckoned.aboveUsable()) {
      HardWaterOut after = afterRightCapacity();
      return List.of(capacity(out.less(after)), hardness(hardness.get(), after));
    } else if (hardness.isPresent()) {
      return List.of(hardness(hardness.get(), out));
    } else if (asRating() || (inspected.runsOut() && !helpless())) {
      return List.of(capacity(out));
    }
    return List.of();
  }

  /** A clock of one day is not to blame where no other setting would do. */
  private boolean helpless() {
    return reckoned.isShortest() && inspected.right().isEmpty();
  }

  /** A capacity told to a meter does no harm where a hardness told with it makes up for it. */
  boolean asRating() {
    boolean makesUp = told().isPresent() && !inspected.shortOfReserve();
    return reckoned.isRating() && !makesUp;
  }

  private Optional<ByHardness> told() {
    return Optional.of(inspected.found().present().control())
        .filter(ByHardness.class::isInstance)
        .map(ByHardness.class::cast);
  }

  /** A hardness that is set too low, and starts the meter too late. */
  private Optional<FaultKind> hardness() {
    HardnessSet set = new HardnessSet(inspected.home());
    return told()
        .map(ByHardness::hardness)
        .filter(hardness -> inspected.shortOfReserve())
        .flatMap(set::tooLow);
  }

  private Fault hardness(FaultKind kind, HardWaterOut out) {
    Hardness set = told().orElseThrow().hardness();
    return Fault.of(
        kind, Figure.of(set), Figure.of(inspected.hardness()), out.days(), out.gallons());
  }

  /** What runs out where the meter is told what the bed holds less its reserve. */
  private HardWaterOut afterRightCapacity() {
    BedSettings bed = inspected.asFound().bed();
    double late = inspected.hardness().ratioTo(told().orElseThrow().hardness());
    Volume starts = inspected.holds().minus(inspected.rightReserve()).times(late);
    Volume sooner = starts.max(Volume.ofGallons(0)).min(bed.set());
    return HardWaterOut.of(years.of(bed.startingAfter(sooner)).hardWater());
  }

  private Fault capacity(HardWaterOut out) {
    if (asRating()) {
      return rating(out);
    } else if (refillTooSmall()) {
      return refill(out);
    }
    return inspected.found().control().timed() ? interval(out) : volume(out);
  }

  private Fault rating(HardWaterOut out) {
    return Fault.of(
        FaultKind.RATING_AS_CAPACITY,
        Figure.roughly(reckoned.capacity().orElseThrow()),
        Figure.roughly(inspected.found().usable()),
        out.days(),
        out.gallons(),
        Figure.roughly(SaltSaved.of(inspected).byDosage()));
  }

  /** Where the right setting takes clearly more salt, the refill is what is to be mended. */
  private boolean refillTooSmall() {
    Mass given = inspected.found().saltPerRegeneration();
    return inspected.found().present().salt().orElse(null) instanceof PresentSalt.Refill
        && inspected.right().filter(right -> exceeds(right, given)).isPresent();
  }

  private static boolean exceeds(ServiceOption right, Mass given) {
    return right.saltPerRegeneration().exceeds(given.times(CLEARLY_MORE));
  }

  private Fault refill(HardWaterOut out) {
    return Fault.of(
        FaultKind.REFILL_TOO_SMALL,
        Figure.roughly(inspected.found().saltPerRegeneration()),
        Figure.roughly(inspected.right().orElseThrow().saltPerRegeneration()),
        out.days(),
        out.gallons());
  }

  private Fault interval(HardWaterOut out) {
    return Fault.of(
        FaultKind.INTERVAL_TOO_LONG,
        Figure.days(reckoned.days().orElseThrow(), 0),
        Figure.days(inspected.found().usable().ratioTo(inspected.home().dailyLoad()), 1),
        out.days(),
        out.gallons());
  }

  private Fault volume(HardWaterOut out) {
    return Fault.of(
        FaultKind.VOLUME_TOO_LARGE,
        Figure.of(inspected.found().startsAfter().orElseThrow()),
        Figure.roughly(inspected.holds()),
        out.days(),
        out.gallons());
  }
}
