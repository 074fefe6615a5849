package io.github.brinewright.comparison;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * All candidates of a home side by side.
 *
 * @param home what the home asks for
 * @param homeFindings what was found in the water and the home, the gravest first
 * @param tariff the prices reckoned with
 * @param candidates every candidate, best first
 */
public record Comparison(
    HomeLoad home, List<Finding> homeFindings, Tariff tariff, List<Candidate> candidates) {
  /** Costs that differ by less than this share are called level. */
  private static final BigDecimal LEVEL = new BigDecimal("0.02");

  private static final Comparator<Candidate> NEAREST =
      Comparator.comparing(Candidate::limitsBroken)
          .thenComparing(Candidate::resin, Comparator.reverseOrder());

  /** Keeps its own copies of the lists. */
  public Comparison {
    homeFindings = List.copyOf(homeFindings);
    candidates = List.copyOf(candidates);
  }

  /** The best candidate that keeps every limit; empty when none does. */
  public Optional<Candidate> recommended() {
    return candidates.stream().findFirst().filter(Candidate::feasible);
  }

  /** Whether a candidate is the recommended one. */
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
   * @param most how many columns there is room for; 1 or more
   */
  public List<Candidate> columns(int most) {
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
            .filter(candidate -> candidate.feasible() && candidate != chosen)
            .toList();
    if (others.isEmpty()) {
      int compared = bestOfEachUnit().size();
      return reason(
          compared == 1 ? Reason.Kind.ONLY_COMPARED : Reason.Kind.ONLY_FEASIBLE,
          Figure.of(compared));
    }
    Money lead = others.get(0).life().total().minus(chosen.life().total());
    Reason.Kind priced =
        level(lead, chosen) ? Reason.Kind.LOWEST_COST_NARROWLY : Reason.Kind.LOWEST_COST;
    return reason(
        chosen.offer().isUnpriced() ? Reason.Kind.LOWEST_RUNNING_COST : priced,
        Figure.of(others.size() + 1),
        Figure.of(chosen.life().years()),
        Figure.about(chosen.life().total()),
        Figure.about(lead),
        Figure.of(others.get(0).softener().name()));
  }

  /** How another candidate differs from the recommended one; empty when there is none. */
  public Optional<Reason> against(Candidate other) {
    return recommended().filter(chosen -> chosen != other).map(chosen -> differs(chosen, other));
  }

  private static Reason differs(Candidate chosen, Candidate other) {
    Optional<Finding> broken = other.broken().stream().findFirst();
    if (broken.isPresent()) {
      return new Reason(Reason.Kind.BREAKS_LIMIT, List.of(), broken);
    }
    Money dearer = other.quote().total().minus(chosen.quote().total());
    Money overYears = other.life().total().minus(chosen.life().total());
    return reason(
        kind(dearer, level(overYears, chosen)),
        Figure.about(dearer.abs()),
        Figure.about(overYears),
        Figure.of(chosen.life().years()),
        Figure.days(other.design().schedule().expectedDays(), 0),
        Figure.days(chosen.design().schedule().expectedDays(), 0));
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

  private static Reason reason(Reason.Kind kind, Figure... figures) {
    return new Reason(kind, List.of(figures), Optional.empty());
  }
}
