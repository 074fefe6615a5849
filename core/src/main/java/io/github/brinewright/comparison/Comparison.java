package io.github.brinewright.comparison;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * All candidates of a home side by side, best first; made by {@link PriceList#compare}.
 *
 * <pre>{@code
 * Comparison comparison = prices.compare(site, tariff);
 * String why = comparison.whyRecommended().map(words::reason).orElse("nothing serves this home");
 * }</pre>
 *
 * <p>Immutable; may be shared between threads. Equal when price list, home and tariff are.
 */
public final class Comparison {
  /** Costs that differ by less than this share are called level. */
  private static final BigDecimal LEVEL = new BigDecimal("0.02");

  private static final Comparator<Candidate> NEAREST =
      Comparator.comparing(Candidate::limitsBroken)
          .thenComparing(Candidate::resin, Comparator.reverseOrder());

  private final PriceList priceList;
  private final HomeLoad home;
  private final Tariff tariff;
  private final List<Finding> homeFindings;
  private final List<Candidate> candidates;

  Comparison(PriceList priceList, HomeLoad home, Tariff tariff, List<Candidate> candidates) {
    this.priceList = priceList;
    this.home = home;
    this.tariff = tariff;
    homeFindings = priceList.rules().findings(home);
    this.candidates = candidates.stream().distinct().sorted(Preference.ORDER).toList();
  }

  /** The offers compared, with the terms, limits and rules. */
  public PriceList priceList() {
    return priceList;
  }

  /** What the home asks for. */
  public HomeLoad home() {
    return home;
  }

  /** The prices reckoned with. */
  public Tariff tariff() {
    return tariff;
  }

  /** What was found in the water and the home, the gravest first. */
  public List<Finding> homeFindings() {
    return homeFindings;
  }

  /** What a rule found in the water or the home; empty when it does not apply. */
  public Optional<Finding> homeFinding(Rule<HomeLoad> rule) {
    return homeFindings.stream().filter(finding -> finding.isOf(rule)).findFirst();
  }

  /** Every candidate, best first. */
  public List<Candidate> candidates() {
    return candidates;
  }

  /** The best candidate that keeps every limit; empty when none does. */
  public Optional<Candidate> recommended() {
    return candidates.stream().findFirst().filter(Candidate::feasible);
  }

  /** Whether a candidate is the recommended one; false for all when there is none. */
  public boolean recommends(Candidate candidate) {
    return recommended().filter(candidate::equals).isPresent();
  }

  /**
   * The recommended candidate or, where none keeps every limit, the one that breaks the fewest, of
   * the largest bed.
   */
  public Candidate closest() {
    return recommended().orElseGet(() -> bestOfEachUnit().stream().min(NEAREST).orElseThrow());
  }

  /** The best candidate of each unit, best first. */
  public List<Candidate> bestOfEachUnit() {
    Map<String, Candidate> best = new LinkedHashMap<>();
    candidates.forEach(candidate -> best.putIfAbsent(candidate.softener().id(), candidate));
    return List.copyOf(best.values());
  }

  /** The best candidate with the next smaller bed. */
  public Optional<Candidate> smaller() {
    return recommended().flatMap(chosen -> nearest(chosen, Comparator.reverseOrder(), -1));
  }

  /** The best candidate with the next larger bed. */
  public Optional<Candidate> larger() {
    return recommended().flatMap(chosen -> nearest(chosen, Comparator.naturalOrder(), 1));
  }

  private Optional<Candidate> nearest(Candidate chosen, Comparator<Volume> order, int side) {
    return bestOfEachUnit().stream()
        .filter(candidate -> Integer.signum(candidate.resin().compareTo(chosen.resin())) == side)
        .min(Comparator.comparing(Candidate::resin, order));
  }

  /**
   * The candidates worth a column: the recommended one with its neighbours, then the best of the
   * other units, by size of bed.
   *
   * @param most how many columns there is room for; 1 to 100
   * @throws IllegalArgumentException outside that range
   */
  public List<Candidate> columns(int most) {
    Require.between("columns", most, 1, 100);
    List<Candidate> chosen = new ArrayList<>();
    recommended().ifPresent(chosen::add);
    smaller().ifPresent(chosen::add);
    larger().ifPresent(chosen::add);
    Stream<Candidate> others =
        bestOfEachUnit().stream().filter(candidate -> !chosen.contains(candidate));
    (chosen.isEmpty() ? others.sorted(NEAREST) : others).forEach(chosen::add);
    return chosen.stream()
        .limit(most)
        .sorted(Comparator.comparing(Candidate::resin).thenComparingInt(candidates::indexOf))
        .toList();
  }

  /** Why the recommended candidate is recommended; empty when there is none. */
  public Optional<Reason> whyRecommended() {
    return recommended().map(this::reasonFor);
  }

  private Reason reasonFor(Candidate chosen) {
    List<Candidate> others =
        bestOfEachUnit().stream()
            .filter(candidate -> candidate.feasible() && !recommends(candidate))
            .toList();
    if (others.isEmpty()) {
      int compared = bestOfEachUnit().size();
      return Reason.of(
          compared == 1 ? Reason.Kind.ONLY_COMPARED : Reason.Kind.ONLY_FEASIBLE,
          Figure.of(compared));
    }
    Money lead = others.get(0).life().total().minus(chosen.life().total());
    Reason.Kind priced =
        level(lead, chosen) ? Reason.Kind.LOWEST_COST_NARROWLY : Reason.Kind.LOWEST_COST;
    return Reason.of(
        chosen.offer().isUnpriced() ? Reason.Kind.LOWEST_RUNNING_COST : priced,
        Figure.of(others.size() + 1),
        Figure.of(chosen.life().years()),
        Figure.about(chosen.life().total()),
        Figure.about(lead),
        Figure.of(others.get(0).softener().name()));
  }

  /** How another candidate differs from the recommended one; empty when there is none. */
  public Optional<Reason> against(Candidate other) {
    return recommends(other)
        ? Optional.empty()
        : recommended().map(chosen -> differs(chosen, other));
  }

  private static Reason differs(Candidate chosen, Candidate other) {
    Optional<Finding> broken = other.broken().stream().findFirst();
    if (broken.isPresent()) {
      return Reason.breaksLimit(broken.get());
    }
    Money dearer = other.quote().total().minus(chosen.quote().total());
    Money overYears = other.life().total().minus(chosen.life().total());
    return Reason.of(
        kind(dearer, level(overYears, chosen)),
        Figure.about(dearer.abs()),
        Figure.about(overYears),
        Figure.of(chosen.life().years()),
        Figure.days(daysBetween(other), 0),
        Figure.days(daysBetween(chosen), 0));
  }

  private static double daysBetween(Candidate candidate) {
    return candidate.design().year().orElseThrow().daysBetween();
  }

  private static boolean level(Money difference, Candidate chosen) {
    Money limit = chosen.life().total().multipliedBy(LEVEL, RoundingMode.HALF_EVEN);
    return difference.isLessThan(limit);
  }

  private static Reason.Kind kind(Money dearer, boolean level) {
    if (dearer.isZero()) {
      return Reason.Kind.SAME_TO_BUY;
    }
    if (dearer.isNegative()) {
      return level ? Reason.Kind.CHEAPER_TO_BUY_THEN_LEVEL : Reason.Kind.CHEAPER_TO_BUY;
    }
    return level ? Reason.Kind.DEARER_TO_BUY_THEN_LEVEL : Reason.Kind.DEARER_TO_BUY;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Comparison comparison
        && priceList.equals(comparison.priceList)
        && home.site().equals(comparison.home.site())
        && tariff.equals(comparison.tariff);
  }

  @Override
  public int hashCode() {
    return Objects.hash(home.site(), tariff);
  }

  @Override
  public String toString() {
    return "Comparison of "
        + candidates.size()
        + " candidates for "
        + home.site().id()
        + ", best first: "
        + candidates;
  }
}
