package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is wrong with the salt of a regeneration as set. */
final class SaltFaults {
  private static final double SHORT = 0.8;
  private static final double BEYOND = 1.2;
  private static final int HALVINGS = 40;

  /** Beyond this more salt restores little: common practice; the interval is at fault then. */
  private static final SaltDosage WORTHWHILE = SaltDosage.ofPoundsPerCubicFoot(12);

  private final FoundSoftener found;
  private final Reckoned reckoned;
  private final Map<Kind, ServiceOption> options;
  private final boolean fromRating;

  SaltFaults(
      FoundSoftener found,
      Reckoned reckoned,
      Map<Kind, ServiceOption> options,
      boolean fromRating) {
    this.found = found;
    this.reckoned = reckoned;
    this.options = options;
    this.fromRating = fromRating;
  }

  List<Fault> all() {
    if (!found.saltKnown()) {
      return List.of();
    }
    Optional<Fault> refill = fromRating ? Optional.empty() : refill();
    Optional<Fault> rich = refill.isPresent() ? Optional.empty() : rich();
    return Stream.of(refill, rich).flatMap(Optional::stream).toList();
  }

  /** The salt against what would restore the capacity that the setting reckons with. */
  private Optional<Fault> refill() {
    Mass given = found.saltPerRegeneration();
    SaltDosage dosage = dosageFor(reckoned.needed());
    Mass wanted = given.times(dosage.ratioTo(found.dosage()));
    boolean refilled = found.present().salt().orElse(null) instanceof PresentSalt.Refill;
    if (refilled && given.ratioTo(wanted) < SHORT && WORTHWHILE.compareTo(dosage) >= 0) {
      return Optional.of(
          Fault.of(FaultKind.REFILL_TOO_SMALL, Figure.roughly(given), Figure.roughly(wanted)));
    }
    Mass wasted = new Wasted(options).bySalt();
    return Optional.of(wanted)
        .filter(salt -> refilled && given.ratioTo(salt) > BEYOND && wasted.isPositive())
        .map(
            salt ->
                Fault.of(
                    FaultKind.REFILL_TOO_LARGE,
                    Figure.roughly(given),
                    Figure.roughly(salt),
                    Figure.roughly(wasted)));
  }

  /** The dosage that restores a capacity, within the curve. */
  private SaltDosage dosageFor(HardnessAmount capacity) {
    CapacityCurve curve = found.curve();
    double perFoot =
        capacity.ratioTo(found.usable()) * found.capacityOfCurve().grainsPerCubicFoot();
    SaltDosage low = curve.lowest();
    SaltDosage high = curve.highest();
    for (int i = 0; i < HALVINGS; i++) {
      SaltDosage middle = low.plus(high).times(0.5);
      boolean enough = curve.at(middle).grainsPerCubicFoot() >= perFoot;
      low = enough ? low : middle;
      high = enough ? middle : high;
    }
    return high;
  }

  private Optional<Fault> rich() {
    Optional<Candidate> right =
        Optional.ofNullable(options.get(Kind.SET_RIGHT)).flatMap(ServiceOption::candidate);
    Mass wasted = new Wasted(options).bySalt();
    return right
        .map(Candidate::dosage)
        .filter(dosage -> found.dosage().exceeds(dosage.times(BEYOND)))
        .filter(dosage -> wasted.ratioTo(options.get(Kind.AS_FOUND).salt()) > 0.1)
        .map(
            dosage ->
                Fault.of(
                    FaultKind.DOSAGE_TOO_RICH,
                    Figure.of(found.dosage(), 1),
                    Figure.of(dosage, 1),
                    Figure.roughly(wasted)));
  }
}
