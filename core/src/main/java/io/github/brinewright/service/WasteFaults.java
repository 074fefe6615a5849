package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is wrong with settings that throw away what the salt has restored, or salt. Each has its own
 * part of it; where a cause is named, the interval that comes of it is not.
 */
final class WasteFaults {
  /** A setting that leaves most of a day in the bed has left the reserve already. */
  private static final double MOST_OF_A_DAY = 0.7;

  private final Inspected inspected;
  private final FoundSoftener found;
  private final SaltSaved saved;

  WasteFaults(Inspected inspected) {
    this.inspected = inspected;
    found = inspected.found();
    saved = SaltSaved.of(inspected);
  }

  /**
   * @param runsOut whether the setting asks more of the bed than it holds, so that it cannot start
   *     too soon
   */
  List<Fault> all(boolean runsOut, boolean asRating) {
    List<Fault> faults = new ArrayList<>();
    if (!runsOut) {
      hardnessTooHigh().ifPresent(faults::add);
      reserveTwice().ifPresent(faults::add);
    }
    if (!runsOut && faults.isEmpty() && saved.muchByInterval()) {
      faults.add(interval());
    }
    if (!asRating && found.saltKnown() && saved.muchByDosage()) {
      faults.add(salt());
    }
    return faults;
  }

  private Optional<Fault> hardnessTooHigh() {
    HardnessSet right = new HardnessSet(inspected.home());
    return Optional.of(found.present().control())
        .filter(ByHardness.class::isInstance)
        .map(control -> ((ByHardness) control).hardness())
        .filter(right::tooHigh)
        .filter(set -> inspected.reserveTooLarge())
        .map(this::tooHigh);
  }

  private Fault tooHigh(Hardness set) {
    Volume right = volumeSet().times(set.ratioTo(inspected.hardness()));
    return Fault.of(
        FaultKind.HARDNESS_SET_TOO_HIGH,
        Figure.of(set),
        Figure.of(inspected.hardness()),
        shareOfBed(right.minus(volumeSet())));
  }

  private Volume volumeSet() {
    return found.setVolume().orElseThrow();
  }

  private Figure shareOfBed(Volume unused) {
    return Figure.percent(Math.min(1, unused.ratioTo(inspected.holds())));
  }

  private Optional<Fault> reserveTwice() {
    return Optional.of(found.present().control())
        .filter(control -> control instanceof Metered)
        .filter(this::leavesADay)
        .flatMap(control -> ((Metered) control).reserve())
        .filter(held -> held.isPositive() && inspected.reserveTooLarge())
        .map(this::reserveTwice);
  }

  /** Whether the setting alone leaves most of a day, whatever hardness it was told. */
  private boolean leavesADay(PresentControl control) {
    double late =
        control instanceof ByHardness told ? told.hardness().ratioTo(inspected.hardness()) : 1;
    Volume left = inspected.holds().minus(volumeSet().times(late));
    return left.compareTo(inspected.home().softenedDesign().times(MOST_OF_A_DAY)) >= 0;
  }

  private Fault reserveTwice(Volume held) {
    return Fault.of(
        FaultKind.RESERVE_TWICE,
        Figure.of(volumeSet()),
        Figure.of(held),
        Figure.roughly(inspected.holds()),
        shareOfBed(held.min(volumeSet())));
  }

  private Fault interval() {
    ServiceOption asFound = inspected.asFound();
    return Fault.of(
        FaultKind.INTERVAL_TOO_SHORT,
        Figure.roughDays(asFound.daysBetweenRegenerations()),
        Figure.percent(asFound.years().unusedShare()),
        Figure.roughly(saved.byInterval()));
  }

  private Fault salt() {
    Figure wasted = Figure.roughly(saved.byDosage());
    if (found.present().salt().orElse(null) instanceof PresentSalt.Refill) {
      Mass right = inspected.right().orElseThrow().saltPerRegeneration();
      return Fault.of(
          FaultKind.REFILL_TOO_LARGE,
          Figure.roughly(found.saltPerRegeneration()),
          Figure.roughly(right),
          wasted);
    }
    Candidate right = inspected.right().flatMap(ServiceOption::candidate).orElseThrow();
    return Fault.of(
        FaultKind.DOSAGE_TOO_RICH,
        Figure.of(found.dosage(), 1),
        Figure.of(right.dosage(), 1),
        wasted);
  }
}
