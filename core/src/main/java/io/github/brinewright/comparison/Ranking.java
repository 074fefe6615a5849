package io.github.brinewright.comparison;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CapacityBasis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/**
 * The order of candidates: every limit kept, then fewest margins broken, then the least sum of what
 * they are missed by, then cost over the years. Never one blended score. A margin that every
 * candidate breaks does not rank, since it parts nobody.
 */
final class Ranking {
  /** Costs that differ by no more than this share count as level. */
  private static final BigDecimal LEVEL = BigDecimal.valueOf(Comparison.LEVEL);

  /** Level ones may take at most so many times the salt of the cheapest. */
  private static final double SALT_FOR_PRICE = 1.1;

  private static final Comparator<Candidate> CHEAPEST =
      Comparator.comparing((Candidate candidate) -> candidate.life().total())
          .thenComparing(Ranking::price)
          .thenComparing(Ranking::yearlySalt)
          .thenComparing(Ranking::id);

  private static final Comparator<Candidate> NEAREST =
      Comparator.comparing(Candidate::limitsBroken)
          .thenComparing(Candidate::resin, Comparator.reverseOrder())
          .thenComparing(Ranking::price)
          .thenComparing(Ranking::id);

  private final Set<Margin> ranking;
  private final List<Candidate> order = new ArrayList<>();

  private Ranking(Collection<Candidate> candidates) {
    List<Candidate> fit = candidates.stream().filter(Candidate::feasible).toList();
    ranking = ranking(fit);
    Map<Burden, List<Candidate>> alike = new TreeMap<>();
    fit.forEach(one -> alike.computeIfAbsent(burden(one), key -> new ArrayList<>()).add(one));
    alike.values().forEach(this::addByCost);
    candidates.stream().filter(one -> !one.feasible()).sorted(NEAREST).forEach(order::add);
  }

  static Ranking of(Collection<Candidate> candidates) {
    return new Ranking(candidates);
  }

  private static Set<Margin> ranking(List<Candidate> fit) {
    Set<Margin> all = EnumSet.allOf(Margin.class);
    all.removeIf(margin -> fit.stream().allMatch(candidate -> breaks(candidate, margin)));
    return all;
  }

  private static boolean breaks(Candidate candidate, Margin margin) {
    return candidate.margin(margin).filter(MarginCheck::broken).isPresent();
  }

  /**
   * Takes the best of what is left until nothing is. They stand by cost, so that only those level
   * with the first need be looked at, and not all of thousands each time.
   */
  private void addByCost(List<Candidate> alike) {
    List<Candidate> left = new ArrayList<>(alike);
    left.sort(CHEAPEST);
    while (!left.isEmpty()) {
      Candidate best = best(left);
      order.add(best);
      left.remove(best);
    }
  }

  private static Candidate best(List<Candidate> byCost) {
    Candidate leader = byCost.get(0);
    Money most = mostOfLevel(leader);
    return byCost.stream()
        .takeWhile(one -> !one.life().total().isGreaterThan(most))
        .filter(one -> littleSalt(one, leader))
        .min(Leveller.order())
        .orElseThrow();
  }

  /** Whether a candidate takes at most a tenth more salt than the leader. */
  static boolean littleSalt(Candidate candidate, Candidate leader) {
    return yearlySalt(candidate).pounds() <= SALT_FOR_PRICE * yearlySalt(leader).pounds();
  }

  /** The one that costs least over the years. */
  static Candidate cheapest(List<Candidate> candidates) {
    return candidates.stream().min(CHEAPEST).orElseThrow();
  }

  /** Whether a candidate costs at most 2 % more than the leader. */
  static boolean level(Candidate candidate, Candidate leader) {
    return !candidate.life().total().isGreaterThan(mostOfLevel(leader));
  }

  private static Money mostOfLevel(Candidate leader) {
    return leader.life().total().multipliedBy(LEVEL, RoundingMode.HALF_EVEN);
  }

  /** All of them, best first; those that break a limit last. */
  List<Candidate> order() {
    return List.copyOf(order);
  }

  /** Those that keep every limit and are burdened alike. */
  List<Candidate> burdenedLike(Candidate candidate) {
    return order.stream()
        .filter(Candidate::feasible)
        .filter(one -> burden(one).equals(burden(candidate)))
        .toList();
  }

  /** Whether a margin parts candidates: not all break it. */
  boolean ranks(Margin margin) {
    return ranking.contains(margin);
  }

  /** The margins that a candidate breaks and that rank. */
  List<MarginCheck> broken(Candidate candidate) {
    return candidate.marginsBroken().stream().filter(check -> ranks(check.margin())).toList();
  }

  Burden burden(Candidate candidate) {
    List<MarginCheck> broken = broken(candidate);
    return new Burden(broken.size(), broken.stream().mapToDouble(MarginCheck::excess).sum());
  }

  /**
   * What a candidate breaks.
   *
   * @param margins how many
   * @param excess sum of what they are missed by
   */
  record Burden(int margins, double excess) implements Comparable<Burden> {
    private static final Comparator<Burden> LEAST =
        Comparator.comparingInt(Burden::margins).thenComparingDouble(Burden::excess);

    @Override
    public int compareTo(Burden other) {
      return LEAST.compare(this, other);
    }
  }

  static Money price(Candidate candidate) {
    return candidate.quote().total();
  }

  static Volume hardWater(Candidate candidate) {
    return candidate.hardWater().orElseThrow().total();
  }

  static Mass yearlySalt(Candidate candidate) {
    return candidate.design().year().orElseThrow().salt();
  }

  static Volume yearlyWater(Candidate candidate) {
    return candidate.design().year().orElseThrow().water();
  }

  /** Names the setting, so that no two are alike. */
  static String id(Candidate candidate) {
    CapacityBasis basis = candidate.design().basis();
    return candidate.softener().id()
        + " "
        + candidate.setup().control()
        + " "
        + basis.saltPerRegeneration().pounds();
  }
}
