package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The ways to go on with a present softener. */
final class Ways {
  private final Comparison comparison;
  private final FoundSoftener found;
  private final ServicePrices prices;
  private final PresentBed bed;
  private final Money nothing;

  Ways(Comparison comparison, FoundSoftener found, ServicePrices prices) {
    this.comparison = comparison;
    this.found = found;
    this.prices = prices;
    bed = new PresentBed(found, comparison);
    nothing = Money.zero(comparison.priceList().currency());
  }

  /** As found, set right, under a meter, and replaced: those that there are. */
  List<Way> all() {
    List<Way> ways = withSameBed();
    replaced().ifPresent(ways::add);
    return ways;
  }

  /** Those that keep the bed. */
  List<Way> withSameBed() {
    List<Way> ways = new ArrayList<>();
    ways.add(asItIs(Kind.AS_FOUND, found::settings, Optional.empty()));
    setRight().ifPresent(right -> ways.addAll(inItsPlaces(right)));
    if (found.control().timed()) {
      metered().ifPresent(ways::add);
    }
    return ways;
  }

  /** A softener that has a meter already is one with a meter when it is set right. */
  private List<Way> inItsPlaces(Way right) {
    return found.control().timed() ? List.of(right) : List.of(right, right.as(Kind.METERED));
  }

  /**
   * Instead of the right setting that which was found, where nothing is wrong with it: as it is, or
   * at the usual hour where the hour alone is wrong.
   */
  List<Way> kept(List<Fault> faults) {
    boolean hour = faults.stream().anyMatch(fault -> fault.kind() == FaultKind.HOUR_IN_USE);
    Function<FoundUnknowns, BedSettings> usual =
        draw -> found.settings(draw).withHour(BedSettings.USUAL_HOUR);
    Way kept =
        hour
            ? asItIs(Kind.SET_RIGHT, usual, prices.visit())
            : asItIs(Kind.SET_RIGHT, found::settings, Optional.empty());
    return inItsPlaces(kept);
  }

  private Way asItIs(
      Kind kind, Function<FoundUnknowns, BedSettings> settings, Optional<Money> price) {
    return new Way(kind, Optional.empty(), settings, price, running(found.softener(), nothing));
  }

  private Optional<Way> setRight() {
    return bed.under(found.control(), nothing, prices.visit().orElse(nothing))
        .map(candidate -> present(Kind.SET_RIGHT, candidate, prices.visit()));
  }

  private Optional<Way> metered() {
    return bed.under(Control.METERED_AT_NIGHT, prices.meter().orElse(nothing), nothing)
        .map(candidate -> present(Kind.METERED, candidate, prices.meter()));
  }

  /** What a customer pays is the total of the quote, where a price is stated at all. */
  private Way present(Kind kind, Candidate candidate, Optional<Money> stated) {
    return new Way(
        kind,
        Optional.of(candidate),
        unknown -> bed.aged(candidate, unknown),
        stated.map(price -> candidate.quote().total()),
        running(candidate.softener(), nothing));
  }

  private Optional<Way> replaced() {
    return comparison
        .recommended()
        .flatMap(this::withSameSalt)
        .filter(chosen -> !chosen.offer().isUnpriced())
        .map(this::replaced);
  }

  private Way replaced(Candidate chosen) {
    return new Way(
        Kind.REPLACED,
        Optional.of(chosen),
        unknown -> chosen.design().bed().orElseThrow(),
        Optional.of(chosen.quote().total()),
        running(chosen.softener(), chosen.offer().yearlyService()));
  }

  /** A family that uses potassium has its reasons: the best unit that is sold with it. */
  private Optional<Candidate> withSameSalt(Candidate recommended) {
    return Stream.concat(Stream.of(recommended), comparison.candidates().stream())
        .filter(Candidate::feasible)
        .filter(one -> one.softener().regenerant() == found.present().regenerant())
        .findFirst();
  }

  private static Way.Running running(Softener softener, Money service) {
    return new Way.Running(softener.regenerant(), softener.standby().throughoutYear(), service);
  }
}
