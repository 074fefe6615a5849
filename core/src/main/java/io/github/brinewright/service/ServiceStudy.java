package io.github.brinewright.service;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.RunningYears;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.sizing.FoundSoftener;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the softener that is already in a house does, what is wrong with it, and what comes of
 * setting it right, putting a meter on it or replacing it: all on the same simulated days. Computed
 * with the assumptions that are named, and no promise.
 *
 * <pre>{@code
 * ServiceStudy study = ServiceStudy.of(prices.compare(site, tariff), ServicePrices.NONE);
 * double days = study.option(ServiceOption.Kind.AS_FOUND).orElseThrow().hardWater().runOutDays();
 * }</pre>
 *
 * <p>Immutable.
 */
public final class ServiceStudy {
  private final Comparison comparison;
  private final FoundSoftener found;
  private final Map<Kind, ServiceOption> options;
  private final List<Fault> faults;
  private final Advice advice;

  private ServiceStudy(Comparison comparison, ServicePrices prices, boolean withUnits) {
    this.comparison = comparison;
    found = FoundSoftener.of(present(comparison, prices), comparison.home());
    HomeYears years = new HomeYears(comparison.home());
    Ways ways = new Ways(comparison, found, prices);
    Runs runs = new Runs(comparison, years, withUnits ? ways.all() : ways.withSameBed());
    Map<Kind, ServiceOption> all = runs.options();
    faults = new FaultFinder(new Inspected(comparison, found, all), years).all();
    advice = new AdviceRule(all, faults, comparison.priceList().terms().years()).advice();
    boolean keep = all.containsKey(Kind.SET_RIGHT) && wellSet();
    options = keep ? runs.with(ways.kept(faults)).options() : all;
  }

  /** Whether its settings are right, whatever else is wrong. */
  private boolean wellSet() {
    return faults.stream().map(Fault::kind).noneMatch(FaultKind::asksForOtherSettings);
  }

  /**
   * Studies the present softener of a home.
   *
   * @param comparison of the home, whose site has a present softener
   * @param prices of a meter and a visit, in the currency of the comparison
   * @return the study
   * @throws IllegalArgumentException when there is no present softener, or the currency is another
   */
  public static ServiceStudy of(Comparison comparison, ServicePrices prices) {
    return new ServiceStudy(comparison, prices, true);
  }

  /**
   * Studies the present softener of a home where no price list says what would take its place.
   *
   * @param comparison of the home, whose site has a present softener; its units are left out
   * @param prices of a meter and a visit, in the currency of the comparison
   * @return the study, without {@link Kind#REPLACED}
   * @throws IllegalArgumentException when there is no present softener, or the currency is another
   */
  public static ServiceStudy ofBedAlone(Comparison comparison, ServicePrices prices) {
    return new ServiceStudy(comparison, prices, false);
  }

  private static PresentSoftener present(Comparison comparison, ServicePrices prices) {
    prices
        .currency()
        .filter(currency -> !currency.equals(comparison.priceList().currency()))
        .ifPresent(currency -> refuse(comparison, prices));
    return comparison
        .home()
        .site()
        .present()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the home "
                        + comparison.home().site().id()
                        + " has no present softener; add what the visit found of it"));
  }

  /**
   * Studies the present softener of a home without prices of a meter and a visit.
   *
   * @param comparison of the home
   * @return the study; empty when there is no present softener
   */
  public static Optional<ServiceStudy> of(Comparison comparison) {
    return comparison
        .home()
        .site()
        .present()
        .map(present -> new ServiceStudy(comparison, ServicePrices.NONE, true));
  }

  private static void refuse(Comparison comparison, ServicePrices prices) {
    throw new IllegalArgumentException(
        "meter and visit are priced in "
            + prices.currency().orElseThrow()
            + ", but the price list in "
            + comparison.priceList().currency()
            + "; use one currency throughout");
  }

  /** {@return the home with its candidates} */
  public Comparison comparison() {
    return comparison;
  }

  /** {@return the softener as the visit found it} */
  public PresentSoftener present() {
    return found.present();
  }

  /** {@return the same, worked out} */
  public FoundSoftener found() {
    return found;
  }

  /** {@return what is taken as so, because it was not found} */
  public List<Assumption> assumptions() {
    return found.assumptions();
  }

  /** {@return the ways to go on, in the order of {@link Kind}; as found is always among them} */
  public List<ServiceOption> options() {
    return List.copyOf(options.values());
  }

  /**
   * {@return those that differ from each other: set right where it is not so already, under a meter
   * where there is none}
   */
  public List<ServiceOption> distinctOptions() {
    return options().stream().filter(this::differs).toList();
  }

  private boolean differs(ServiceOption option) {
    return switch (option.kind()) {
      case AS_FOUND, REPLACED -> true;
      case SET_RIGHT -> !option.bed().equals(asFound().bed());
      case METERED -> found.control().timed();
    };
  }

  /**
   * {@return one way to go on; where nothing is set wrong the softener set right is the one that
   * was found, at most at another hour; empty where no setting of the bed serves the home, and of
   * {@link Kind#REPLACED} where no unit with a price is recommended}
   *
   * @param kind which way
   */
  public Optional<ServiceOption> option(Kind kind) {
    return Optional.ofNullable(options.get(kind));
  }

  /** {@return the softener as found} */
  public ServiceOption asFound() {
    return options.get(Kind.AS_FOUND);
  }

  /**
   * {@return what running the softener as it was found costs over the years, in today's money:
   * nothing is bought, and no repair is reckoned with}
   */
  public RunningYears runningAsFound() {
    return new RunningYears(
        asFound().costLines(),
        comparison.tariff().escalation(),
        comparison.priceList().terms().discountRate());
  }

  /** {@return what is wrong, the gravest first} */
  public List<Fault> faults() {
    return faults;
  }

  /** {@return what comes of it} */
  public Advice advice() {
    return advice;
  }

  @Override
  public String toString() {
    return "ServiceStudy of " + comparison.home().site().id() + ": " + advice + " " + options;
  }
}
