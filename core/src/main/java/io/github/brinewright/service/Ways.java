package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
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
    CurrencyUnit currency = comparison.priceList().currency();
    nothing = Money.zero(currency);
  }

  /** As found, set right, under a meter, and replaced: those that there are. */
  List<Way> all() {
    List<Way> ways = new ArrayList<>();
    ways.add(asFound());
    setRight().ifPresent(ways::add);
    metered().ifPresent(ways::add);
    replaced().ifPresent(ways::add);
    return ways;
  }

  private Way asFound() {
    return new Way(
        Kind.AS_FOUND,
        Optional.empty(),
        found::settings,
        Optional.empty(),
        running(found.softener(), nothing));
  }

  private Optional<Way> setRight() {
    return present(Kind.SET_RIGHT, found.control(), nothing, prices.visit().orElse(nothing))
        .map(way -> prices.visit().isPresent() ? way : way.unpriced());
  }

  /** A softener that has a meter already costs what setting it right costs. */
  private Optional<Way> metered() {
    if (found.control().metered()) {
      return setRight().map(way -> way.as(Kind.METERED));
    }
    return present(Kind.METERED, Control.METERED_AT_NIGHT, prices.meter().orElse(nothing), nothing)
        .map(way -> prices.meter().isPresent() ? way : way.unpriced());
  }

  private Optional<Way> present(Kind kind, Control control, Money meter, Money visit) {
    return bed.under(control, meter, visit)
        .map(
            candidate ->
                new Way(
                    kind,
                    Optional.of(candidate),
                    unknown -> aged(candidate, found.shareOfMiddle(unknown)),
                    Optional.of(candidate.quote().total()),
                    running(candidate.softener(), nothing)));
  }

  /** The bed of a candidate that holds more or less than reckoned with; settings stay. */
  private static BedSettings aged(Candidate candidate, double share) {
    BedSettings stated = candidate.design().bed().orElseThrow();
    return share == 1 ? stated : stated.holding(stated.capacity().times(share));
  }

  private Optional<Way> replaced() {
    return comparison
        .recommended()
        .flatMap(this::withSameSalt)
        .filter(chosen -> !chosen.offer().isUnpriced())
        .map(
            chosen ->
                new Way(
                    Kind.REPLACED,
                    Optional.of(chosen),
                    unknown -> chosen.design().bed().orElseThrow(),
                    Optional.of(chosen.quote().total()),
                    running(chosen.softener(), chosen.offer().yearlyService())));
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
