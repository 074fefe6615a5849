package io.github.brinewright.service;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.ReadUse;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Looks for what is wrong with a softener as it was found. */
final class FaultFinder {
  private static final double NEARLY = 0.98;

  /** Behind a softener that works less than this is found: common practice. */
  private static final Hardness SOFT = Hardness.ofGrainsPerGallon(1);

  private final Inspected inspected;
  private final HomeLoad home;
  private final FoundSoftener found;
  private final HomeYears years;

  FaultFinder(Inspected inspected, HomeYears years) {
    this.inspected = inspected;
    this.years = years;
    home = inspected.home();
    found = inspected.found();
  }

  /** What is wrong, the gravest first. */
  List<Fault> all() {
    List<Fault> faults = new ArrayList<>();
    if (inspected.right().isEmpty()) {
      faults.add(tooSmall());
    }
    faults.addAll(ofSettings());
    lean().ifPresent(faults::add);
    new HourFault(inspected, years).fault().ifPresent(faults::add);
    bought().ifPresent(faults::add);
    behind().ifPresent(faults::add);
    faults.sort(Comparator.comparing(Fault::kind));
    return List.copyOf(faults);
  }

  private List<Fault> ofSettings() {
    ReachFaults reach = new ReachFaults(inspected, new Reckoned(found, home), years);
    List<Fault> faults = new ArrayList<>(reach.all());
    faults.addAll(new WasteFaults(inspected).all(!faults.isEmpty(), reach.asRating()));
    return faults;
  }

  private Fault tooSmall() {
    return Fault.of(
        FaultKind.BED_TOO_SMALL,
        Figure.bed(found.resinVolume()),
        Figure.roughly(home.dailyLoad()),
        Figure.roughly(found.usable()));
  }

  private Optional<Fault> lean() {
    SaltDosage least = inspected.margins().leanDosage();
    boolean lean = found.dosage().compareTo(least.times(NEARLY)) < 0;
    if (!lean || !found.saltKnown() || !Margins.harsh(home.site().softenedWater())) {
      return Optional.empty();
    }
    return Optional.of(
        Fault.of(FaultKind.DOSAGE_TOO_LEAN, Figure.of(found.dosage(), 1), Figure.of(least, 1)));
  }

  /** Where the salt was not found from what is bought, the two must agree. */
  private Optional<Fault> bought() {
    PresentSoftener present = found.present();
    return present
        .saltBought()
        .filter(bought -> present.salt().isPresent() || !bought.isPositive())
        .flatMap(bought -> apart(bought).map(kind -> bought(kind, bought)));
  }

  /** Beyond what follows from the settings for all that such homes may use. */
  private Optional<FaultKind> apart(Mass bought) {
    Spread computed = inspected.asFound().saltPounds();
    double pounds = bought.pounds();
    if (pounds > Math.max(computed.mean() * ReadUse.SALT_FITS.high(), computed.high())) {
      return Optional.of(FaultKind.SALT_BOUGHT_ABOVE);
    }
    return pounds < Math.min(computed.mean() * ReadUse.SALT_FITS.low(), computed.low())
        ? Optional.of(FaultKind.SALT_BOUGHT_BELOW)
        : Optional.empty();
  }

  private Fault bought(FaultKind kind, Mass bought) {
    return Fault.of(kind, Figure.roughly(bought), Figure.roughly(inspected.asFound().salt()));
  }

  private Optional<Fault> behind() {
    Hardness soft = home.site().target().plus(SOFT);
    return found
        .present()
        .hardnessAfter()
        .filter(measured -> measured.exceeds(soft))
        .map(measured -> Fault.of(FaultKind.NOT_SOFT_BEHIND, Figure.of(measured)));
  }
}
