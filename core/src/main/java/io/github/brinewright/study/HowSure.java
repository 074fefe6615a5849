package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.quantity.Require;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How sure a choice is, when what is not known is drawn together: in how many of 100 draws each
 * candidate that keeps all margins costs least, or within 2 % of it, over the years compared.
 *
 * <p>Every candidate meets the same draws; settings stay as printed, and what happens varies: the
 * home's mean use, how its days stray, the prices of salt and of water. Hardness and what a bed
 * really holds are not known well either, but with settings as printed they change how much hard
 * water passes, not what is paid; so they move no draw. Margins are not drawn again.
 *
 * <pre>{@code
 * HowSure sure = HowSure.of(comparison).orElseThrow();
 * int percent = sure.bestInPercentOfDraws(comparison.recommended().orElseThrow()).orElse(0);
 * }</pre>
 *
 * <p>Immutable; equal when its numbers are.
 */
public final class HowSure {
  /** Draws unless others are asked for. */
  public static final int USUAL_DRAWS = 1_000;

  private final int draws;
  private final Map<Candidate, Integer> percents;

  private HowSure(int draws, Map<Candidate, Integer> percents) {
    this.draws = draws;
    this.percents = percents;
  }

  /**
   * {@return the usual draws; empty when nothing is recommended}
   *
   * @param comparison the candidates of the home
   */
  public static Optional<HowSure> of(Comparison comparison) {
    return of(comparison, USUAL_DRAWS, Draws.USUAL_SEED);
  }

  /**
   * Draws for a comparison; empty when nothing is recommended.
   *
   * @param comparison the candidates of the home
   * @param count 10 to 100,000
   * @param seed of the random numbers
   * @return the draws, or empty
   * @throws IllegalArgumentException outside that range
   */
  public static Optional<HowSure> of(Comparison comparison, int count, long seed) {
    Require.between("draws", count, 10, 100_000);
    return comparison
        .recommended()
        .map(chosen -> drawn(alike(comparison, chosen), new Draws(comparison.home(), count, seed)));
  }

  /** Those that keep every limit and break as few margins as the recommended, none as a rule. */
  private static List<Candidate> alike(Comparison comparison, Candidate chosen) {
    return comparison.candidates().stream()
        .filter(Candidate::feasible)
        .filter(one -> one.marginsBroken().size() <= chosen.marginsBroken().size())
        .toList();
  }

  private static HowSure drawn(List<Candidate> candidates, Draws draws) {
    List<double[]> costs =
        candidates.stream().map(one -> DrawnCost.of(one, draws).costs()).toList();
    double[] least = new double[draws.count()];
    Arrays.setAll(least, k -> costs.stream().mapToDouble(of -> of[k]).min().orElseThrow());
    Map<Candidate, Integer> percents = new LinkedHashMap<>();
    for (int i = 0; i < candidates.size(); i++) {
      percents.put(candidates.get(i), percentBest(costs.get(i), least));
    }
    return new HowSure(draws.count(), percents);
  }

  private static int percentBest(double[] costs, double[] least) {
    int best = 0;
    for (int k = 0; k < costs.length; k++) {
      best += costs[k] <= Comparison.LEVEL * least[k] ? 1 : 0;
    }
    return (int) Math.round(100.0 * best / costs.length);
  }

  /** {@return how many draws there were} */
  public int draws() {
    return draws;
  }

  /**
   * {@return in how many of 100 draws a candidate costs least, or within 2 % of it; empty when it
   * breaks a limit, or more margins than the recommended} 0 to 100.
   *
   * @param candidate of the comparison
   */
  public OptionalInt bestInPercentOfDraws(Candidate candidate) {
    Integer percent = percents.get(candidate);
    return percent == null ? OptionalInt.empty() : OptionalInt.of(percent);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HowSure sure && draws == sure.draws && percents.equals(sure.percents);
  }

  @Override
  public int hashCode() {
    return percents.hashCode();
  }

  @Override
  public String toString() {
    return "HowSure in " + draws + " draws: " + percents.values();
  }
}
