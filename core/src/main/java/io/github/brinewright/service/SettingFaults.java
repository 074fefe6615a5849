package io.github.brinewright.service;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.Metered;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is wrong with days, volume, hardness and reserve as set. One cause is named for one effect:
 * the rating before the interval, the hardness before the volume, the reserve before what is thrown
 * away.
 */
final class SettingFaults {
  private static final double CLOSE = 0.05;
  private static final double A_TENTH = 0.1;
  private static final double MUCH_UNUSED = 0.35;
  private static final double UNUSED_BEYOND_RIGHT = 0.15;

  private final HomeLoad home;
  private final FoundSoftener found;
  private final Map<Kind, ServiceOption> options;
  private final Margins margins;
  private final Reckoned reckoned;
  private final ServiceOption asFound;

  SettingFaults(
      HomeLoad home, FoundSoftener found, Map<Kind, ServiceOption> options, Margins margins) {
    this.home = home;
    this.found = found;
    this.options = options;
    this.margins = margins;
    reckoned = new Reckoned(found, home);
    asFound = options.get(Kind.AS_FOUND);
  }

  List<Fault> all() {
    List<Fault> faults = new ArrayList<>();
    hardness().ifPresent(faults::add);
    if (fromRating()) {
      faults.add(rating());
    } else if (faults.isEmpty() && runsOut()) {
      faults.add(tooLong());
    }
    reserveTwice().ifPresent(faults::add);
    if (faults.isEmpty()) {
      tooShort().ifPresent(faults::add);
    }
    faults.addAll(new SaltFaults(found, reckoned, options, fromRating()).all());
    return faults;
  }

  private HardnessAmount rated() {
    return found
        .present()
        .rated()
        .orElseGet(() -> RatedCapacityBasis.usualRating(found.resinVolume()));
  }

  /** Reckons with more than the salt restores, and with what the rating says. */
  private boolean fromRating() {
    return reckoned.needed().exceeds(found.usable().times(1 + CLOSE)) && reckoned.madeFrom(rated());
  }

  private Fault rating() {
    return Fault.of(
        FaultKind.RATING_AS_CAPACITY,
        Figure.roughly(reckoned.needed()),
        Figure.roughly(found.usable()),
        days(),
        hardWater(),
        Figure.roughly(new Wasted(options).all()));
  }

  private Figure days() {
    return Figure.roughDays(asFound.hardWater().runOutDays());
  }

  private Figure hardWater() {
    return Figure.roughly(asFound.hardWater().total());
  }

  private boolean runsOut() {
    Volume most = home.softenedYear().times(margins.hardWaterMean());
    return asFound.hardWater().runOut().exceeds(most);
  }

  private Fault tooLong() {
    if (found.control().timed()) {
      double lasts = found.usable().ratioTo(home.dailyLoad());
      return Fault.of(
          FaultKind.INTERVAL_TOO_LONG,
          Figure.days(reckoned.days().orElseThrow(), 0),
          Figure.days(lasts, 1),
          days(),
          hardWater());
    }
    return Fault.of(
        FaultKind.VOLUME_TOO_LARGE,
        Figure.of(found.startsAfter().orElseThrow()),
        Figure.roughly(holds()),
        days(),
        hardWater());
  }

  private Volume holds() {
    return found.usable().asWaterOf(home.compensatedHardness());
  }

  private Optional<Fault> hardness() {
    PresentControl control = found.present().control();
    if (!(control instanceof ByHardness told)) {
      return Optional.empty();
    }
    Hardness set = told.hardness();
    Hardness compensated = home.compensatedHardness();
    if (set.compareTo(compensated.times(1 - CLOSE)) < 0) {
      return Optional.of(
          Fault.of(tooLow(set), Figure.of(set), Figure.of(compensated), days(), hardWater()));
    }
    return Optional.of(set)
        .filter(high -> high.exceeds(compensated.times(1 + A_TENTH)))
        .map(high -> tooHigh(high, compensated));
  }

  private FaultKind tooLow(Hardness set) {
    Hardness raw = home.site().softenedWater().hardness();
    return set.compareTo(raw.times(1 - CLOSE)) >= 0
        ? FaultKind.HARDNESS_WITHOUT_IRON
        : FaultKind.HARDNESS_SET_TOO_LOW;
  }

  private Fault tooHigh(Hardness set, Hardness compensated) {
    return Fault.of(
        FaultKind.HARDNESS_SET_TOO_HIGH,
        Figure.of(set),
        Figure.of(compensated),
        Figure.percent(asFound.years().unusedShare()));
  }

  /** A reserve is held back although the volume as set leaves most of a day already. */
  private Optional<Fault> reserveTwice() {
    if (!(found.present().control() instanceof Metered meter)) {
      return Optional.empty();
    }
    Volume left = holds().minus(found.setVolume().orElseThrow());
    return meter
        .reserve()
        .filter(Volume::isPositive)
        .filter(held -> left.compareTo(home.softenedDesign().times(0.7)) >= 0)
        .map(
            held ->
                Fault.of(
                    FaultKind.RESERVE_TWICE,
                    Figure.of(found.setVolume().orElseThrow()),
                    Figure.of(held),
                    Figure.roughly(holds()),
                    Figure.percent(asFound.years().unusedShare())));
  }

  /** The right setting regenerates less often, not only with less salt. */
  private Optional<Fault> tooShort() {
    double unused = asFound.years().unusedShare();
    double right =
        Optional.ofNullable(options.get(Kind.SET_RIGHT))
            .map(option -> option.years().unusedShare())
            .orElse(1.0);
    Mass wasted = new Wasted(options).byInterval();
    boolean more = wasted.exceeds(asFound.salt().times(CLOSE));
    if (!more || unused < MUCH_UNUSED || unused < right + UNUSED_BEYOND_RIGHT) {
      return Optional.empty();
    }
    return Optional.of(
        Fault.of(
            FaultKind.INTERVAL_TOO_SHORT,
            Figure.roughDays(asFound.daysBetweenRegenerations()),
            Figure.percent(unused),
            Figure.roughly(wasted)));
  }
}
