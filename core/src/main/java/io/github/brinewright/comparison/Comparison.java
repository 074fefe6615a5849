package io.github.brinewright.comparison;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CurveBasis;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.treatment.TreatmentTrain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
  /**
   * What costs at most this many times as much over the years is level with it: 1.02. The costs are
   * not known more closely; common practice. Dimensionless.
   */
  public static final double LEVEL = 1.02;

  private final PriceList priceList;
  private final Surveyed surveyed;
  private final Tariff tariff;
  private final Ranking ranking;

  Comparison(PriceList priceList, Surveyed surveyed, Tariff tariff, List<Candidate> candidates) {
    this.priceList = priceList;
    this.surveyed = surveyed;
    this.tariff = tariff;
    ranking = Ranking.of(candidates.stream().distinct().toList());
  }

  /** {@return the offers compared, with the terms, limits and rules} */
  public PriceList priceList() {
    return priceList;
  }

  /** {@return what the home asks for} */
  public HomeLoad home() {
    return surveyed.home();
  }

  /** {@return the prices reckoned with} */
  public Tariff tariff() {
    return tariff;
  }

  /**
   * {@return what is to be said of the home before any softener is named, by the dealer's rules}
   */
  public Verdict verdict() {
    return surveyed.verdict();
  }

  /**
   * {@return the treatments ahead of the softener that are sold with it, with the water after each;
   * empty where there are none}
   */
  public Optional<TreatmentTrain> treatment() {
    return surveyed.treatment();
  }

  /**
   * {@return whether the treatments that are sold with the softener answer a reason of the verdict}
   *
   * @param reason of {@link #verdict()}
   */
  public boolean isAnswered(Finding reason) {
    return treatment().isPresent() && verdict().isAnswered(reason);
  }

  /** {@return what else was found in the water and the home, the gravest first} */
  public List<Finding> homeFindings() {
    return surveyed.findings();
  }

  /**
   * {@return what a rule found in the water or the home; empty when it does not apply}
   *
   * @param rule on the water or the home
   */
  public Optional<Finding> homeFinding(Rule<HomeLoad> rule) {
    return homeFindings().stream().filter(finding -> finding.isOf(rule)).findFirst();
  }

  /**
   * {@return what to be careful about, as every document on a candidate says: cautions on the home,
   * then on the candidate} Reasons of the {@link #verdict()} are not among them.
   *
   * @param candidate of this comparison
   */
  public List<Finding> cautions(Candidate candidate) {
    return Stream.concat(homeFindings().stream(), candidate.findings().stream())
        .filter(finding -> finding.severity() == Severity.CAUTION)
        .toList();
  }

  /** {@return the same on the home and the recommended candidate; on the home alone without one} */
  public List<Finding> cautions() {
    return recommended()
        .map(this::cautions)
        .orElseGet(
            () ->
                homeFindings().stream()
                    .filter(finding -> finding.severity() == Severity.CAUTION)
                    .toList());
  }

  /**
   * {@return every candidate, best first: those that keep every limit by the margins they break,
   * then by cost over the years, then those that break a limit, the nearest first}
   */
  public List<Candidate> candidates() {
    return ranking.order();
  }

  /**
   * {@return the best candidate: of those that keep every limit one that breaks the fewest margins
   * and, among these, costs least over the years, or is level with that within 2 % and costs less
   * to buy, lets less hard water pass, takes less salt or less water} Empty when none keeps every
   * limit, and where the {@link Verdict} permits no recommendation.
   */
  public Optional<Candidate> recommended() {
    return best().filter(candidate -> verdict().permitsRecommendation());
  }

  private Optional<Candidate> best() {
    return candidates().stream().findFirst().filter(Candidate::feasible);
  }

  /**
   * {@return whether there is a recommended candidate, but a missing test may still change the
   * figures}
   */
  public boolean isProvisional() {
    return verdict().isProvisional() && recommended().isPresent();
  }

  /**
   * {@return the candidate that costs least over the years among all that keep every limit,
   * whatever margins it breaks; empty when there is no recommended one}
   */
  public Optional<Candidate> cheapestThatFits() {
    return recommended().map(chosen -> Ranking.cheapest(feasible()));
  }

  private List<Candidate> feasible() {
    return candidates().stream().filter(Candidate::feasible).toList();
  }

  /** {@return what the recommended candidate costs over the years beyond the cheapest that fits} */
  public Optional<Money> premium() {
    return recommended()
        .map(
            chosen -> chosen.life().total().minus(cheapestThatFits().orElseThrow().life().total()));
  }

  /**
   * {@return what a candidate of this comparison is marked as}
   *
   * @param candidate of this comparison
   */
  public Set<Mark> marks(Candidate candidate) {
    Set<Mark> marks = EnumSet.noneOf(Mark.class);
    if (recommends(candidate)) {
      marks.add(Mark.RECOMMENDED);
    }
    if (cheapestThatFits().filter(candidate::equals).isPresent()) {
      marks.add(Mark.CHEAPEST_THAT_FITS);
    }
    return marks;
  }

  /**
   * Prices another design for the home of this comparison, and looks for what speaks against it.
   *
   * @param design of a softener that is sold here, made by {@link PriceList#sizer} for this home
   * @return the design with its prices and what was found
   * @throws IllegalArgumentException when the softener is not sold here, or not with this control
   */
  public Candidate appraise(Design design) {
    return priceList.appraise(design, tariff, surveyed);
  }

  /**
   * {@return sizes and dosages side by side under one control; empty when nothing is sold with it}
   *
   * @param control of all candidates of the grid
   */
  public Grid grid(Control control) {
    return Grid.of(control, candidates());
  }

  /**
   * {@return a grid of each control that something is sold with, that of the recommended one first}
   */
  public List<Grid> grids() {
    Optional<Control> first = recommended().map(chosen -> chosen.setup().control());
    return Stream.concat(first.stream(), Stream.of(Control.values()))
        .distinct()
        .map(this::grid)
        .filter(grid -> !grid.isEmpty())
        .toList();
  }

  /**
   * {@return whether a candidate is the recommended one; false for all when there is none}
   *
   * @param candidate of this comparison
   */
  public boolean recommends(Candidate candidate) {
    return recommended().filter(candidate::equals).isPresent();
  }

  /**
   * {@return the recommended candidate or, without one, the best; where none keeps every limit, the
   * one that breaks the fewest, of the largest bed}
   */
  public Candidate closest() {
    return recommended().orElseGet(() -> candidates().get(0));
  }

  /** {@return the best candidate of each unit, best first} */
  public List<Candidate> bestOfEachUnit() {
    Map<String, Candidate> best = new LinkedHashMap<>();
    candidates().forEach(candidate -> best.putIfAbsent(candidate.softener().id(), candidate));
    return List.copyOf(best.values());
  }

  /** {@return the best candidate with the next smaller bed} */
  public Optional<Candidate> smaller() {
    return recommended().flatMap(chosen -> nearest(chosen, Comparator.reverseOrder(), -1));
  }

  /** {@return the best candidate with the next larger bed} */
  public Optional<Candidate> larger() {
    return recommended().flatMap(chosen -> nearest(chosen, Comparator.naturalOrder(), 1));
  }

  private Optional<Candidate> nearest(Candidate chosen, Comparator<Volume> order, int side) {
    return bestOfEachUnit().stream()
        .filter(candidate -> Integer.signum(candidate.resin().compareTo(chosen.resin())) == side)
        .min(Comparator.comparing(Candidate::resin, order));
  }

  /**
   * {@return the candidates worth a column: the recommended one with its neighbours, then the best
   * of the other units, by size of bed}
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
    bestOfEachUnit().stream().filter(candidate -> !chosen.contains(candidate)).forEach(chosen::add);
    return chosen.stream()
        .limit(most)
        .sorted(Comparator.comparing(Candidate::resin).thenComparingInt(candidates()::indexOf))
        .toList();
  }

  /** {@return why the recommended candidate is recommended; empty when there is none} */
  public Optional<Reason> whyRecommended() {
    return recommended().map(this::reasonFor);
  }

  private Reason reasonFor(Candidate chosen) {
    List<Candidate> units = bestOfEachUnit();
    int fit = (int) units.stream().filter(Candidate::feasible).count();
    return new Reasons(ranking, chosen).why(units.size(), fit, cheapestThatFits().orElseThrow());
  }

  /**
   * {@return how another candidate of this comparison differs from the recommended one, by the
   * limit, the margin or the cost that decides between them; empty when there is none, or it is
   * that one}
   *
   * @param other of this comparison
   */
  public Optional<Reason> against(Candidate other) {
    return recommends(other)
        ? Optional.empty()
        : recommended().map(chosen -> new Reasons(ranking, chosen).against(other));
  }

  /**
   * {@return why the recommended candidate breaks the margins that it breaks, one reason for each;
   * empty when it breaks none or there is none}
   */
  public List<Reason> marginsGivenUp() {
    return recommended().map(chosen -> new Reasons(ranking, chosen).givenUp()).orElse(List.of());
  }

  /** {@return what the capacities of the candidates that keep every limit are stated on} */
  public Set<CurveBasis> curveBases() {
    return feasible().stream().map(Candidate::curveBasis).collect(Collectors.toSet());
  }

  /**
   * {@return what to say where capacities are compared across bases; empty where they share one}
   */
  public Optional<Reason> acrossBases() {
    int bases = curveBases().size();
    return bases > 1
        ? Optional.of(Reason.of(Reason.Kind.ACROSS_BASES, Figure.of(bases)))
        : Optional.empty();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Comparison comparison
        && priceList.equals(comparison.priceList)
        && home().site().equals(comparison.home().site())
        && tariff.equals(comparison.tariff);
  }

  @Override
  public int hashCode() {
    return Objects.hash(home().site(), tariff);
  }

  @Override
  public String toString() {
    return "Comparison of "
        + candidates().size()
        + " candidates for "
        + home().site().id()
        + ", best first: "
        + candidates();
  }
}
