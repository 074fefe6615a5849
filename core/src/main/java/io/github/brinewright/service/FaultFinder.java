package io.github.brinewright.service;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks for what is wrong with a softener as it was found; settings and salt have their own. */
final class FaultFinder {
  private static final double BOUGHT_MORE = 1.33;
  private static final double BOUGHT_LESS = 0.75;
  private static final double NEARLY = 0.98;

  /** Behind a softener that works less than this is found: common practice. */
  private static final Hardness SOFT = Hardness.ofGrainsPerGallon(1);

  private final Comparison comparison;
  private final HomeLoad home;
  private final FoundSoftener found;
  private final Map<Kind, ServiceOption> options;

  FaultFinder(Comparison comparison, FoundSoftener found, Map<Kind, ServiceOption> options) {
    this.comparison = comparison;
    home = comparison.home();
    this.found = found;
    this.options = options;
  }

  /** What is wrong, the gravest first. */
  List<Fault> all() {
    List<Fault> faults = new ArrayList<>();
    if (!options.containsKey(Kind.SET_RIGHT)) {
      faults.add(tooSmall());
    }
    faults.addAll(new SettingFaults(home, found, options, comparison.priceList().margins()).all());
    lean().ifPresent(faults::add);
    new HourFault(home, asFound()).fault().ifPresent(faults::add);
    bought().ifPresent(faults::add);
    behind().ifPresent(faults::add);
    faults.sort(Comparator.comparing(Fault::kind));
    return List.copyOf(faults);
  }

  private ServiceOption asFound() {
    return options.get(Kind.AS_FOUND);
  }

  private Fault tooSmall() {
    HardnessAmount load = home.dailyLoad();
    return Fault.of(
        FaultKind.BED_TOO_SMALL,
        Figure.bed(found.resinVolume()),
        Figure.roughly(load),
        Figure.roughly(found.usable()));
  }

  private Optional<Fault> lean() {
    Margins margins = comparison.priceList().margins();
    SaltDosage least = margins.leanDosage();
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
    Mass computed = asFound().salt();
    return present
        .saltBought()
        .filter(bought -> present.salt().isPresent() && computed.isPositive())
        .flatMap(bought -> apart(bought.ratioTo(computed)))
        .map(kind -> Fault.of(kind, figure(present.saltBought().orElseThrow()), figure(computed)));
  }

  private static Optional<FaultKind> apart(double ratio) {
    if (ratio > BOUGHT_MORE) {
      return Optional.of(FaultKind.SALT_BOUGHT_ABOVE);
    }
    return ratio < BOUGHT_LESS ? Optional.of(FaultKind.SALT_BOUGHT_BELOW) : Optional.empty();
  }

  private static Figure figure(Mass salt) {
    return Figure.roughly(salt);
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
