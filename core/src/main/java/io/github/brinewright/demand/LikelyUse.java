package io.github.brinewright.demand;

import io.github.brinewright.demand.UncertainMean.Draw;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * What the days at home may use, for one of the stated mean: a gamma distribution about the mean of
 * a home that is known only so well, on ordinary days and on days with guests. Days away never
 * lower it.
 *
 * @param variation how the use of the days strays about the mean
 * @param uncertain how well the mean is known
 * @param days of the year
 */
public record LikelyUse(DailyVariation variation, UncertainMean uncertain, YearDays days) {
  /** Shares of cases that may be asked for: 0.5 to 0.999; dimensionless. */
  public static final Bounds<Double> SHARE = Bounds.of(0.5, 0.999);

  /** Days together that may be asked for: 1 to 99. */
  public static final Bounds<Integer> DAYS_TOGETHER = Bounds.of(1, 99);

  private static final double HIGHEST = 100;
  private static final double HUNDREDTHS = 100;
  private static final int MOST_MADE = 2_000;
  private static final Map<Key, Double> MADE = new ConcurrentHashMap<>();

  private record Key(LikelyUse use, int days, double share) {}

  /** Homes with and without guests, weighted by their days. */
  private List<Draw> homes() {
    double share = days.guestShare();
    List<Draw> homes = new ArrayList<>();
    for (Draw draw : uncertain.draws()) {
      homes.add(new Draw(draw.multiple(), draw.weight() * (1 - share)));
      if (share > 0) {
        homes.add(new Draw(draw.multiple() * days.guestFactor(), draw.weight() * share));
      }
    }
    return homes;
  }

  /**
   * {@return the share of the days at home whose use stays within a multiple of the mean, in a home
   * of just that mean} Example: 1.59 → 0.89. Source: gamma distribution.
   *
   * @param multiple zero or more, finite; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double coverage(double multiple) {
    double share = days.guestShare();
    return 1
        - (1 - share) * variation.exceedance(multiple)
        - share * variation.exceedance(multiple / days.guestFactor());
  }

  /**
   * {@return how many times the stated mean a bed must hold for each of some days, so that their
   * use stays within it in a share of cases, over all homes; rounded to hundredths, as it is
   * printed} Example: 1 day and 0.9 → 1.63 with a bill and 1.85 without. Source: gamma sum of the
   * days, lognormal spread of the homes; own computation.
   *
   * @param together days, 1 to 99
   * @param share 0.5 to 0.999; dimensionless
   * @throws IllegalArgumentException outside these ranges
   */
  public double factor(int together, double share) {
    DAYS_TOGETHER.require("days together", together);
    SHARE.require("share of cases", share);
    if (MADE.size() > MOST_MADE) {
      MADE.clear();
    }
    return MADE.computeIfAbsent(new Key(this, together, share), key -> solve(together, share));
  }

  private double solve(int together, double share) {
    List<Draw> homes = homes();
    double exact =
        new BrentSolver(1e-6)
            .solve(
                200, factor -> 1 - share - beyond(homes, together, together * factor), 0, HIGHEST);
    return Math.round(exact * HUNDREDTHS) / HUNDREDTHS;
  }

  private double beyond(List<Draw> homes, int together, double holds) {
    double sum = 0;
    for (Draw home : homes) {
      sum += home.weight() * variation.totalBeyond(together, holds / home.multiple());
    }
    return sum;
  }

  /**
   * {@return the {@linkplain #factor factors} of 1, 2, 3 … days}
   *
   * @param most days, 1 to 99
   * @param share 0.5 to 0.999; dimensionless
   * @throws IllegalArgumentException outside these ranges
   */
  public List<Double> factors(int most, double share) {
    return IntStream.rangeClosed(1, DAYS_TOGETHER.require("days together", most))
        .mapToObj(days -> factor(days, share))
        .toList();
  }

  /**
   * {@return the reserve, in stated mean days, that is not enough in a chosen share of all these
   * homes' regenerations; a day of much use counts the more, since it brings more regenerations}
   * Example: 0.05 → 1.51 with a bill, 2.06 without. Source: renewal theory, the stationary excess
   * (Cox, 1962); own computation.
   *
   * @param risk 0.0001 to 0.5; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double reserveForRisk(double risk) {
    DailyVariation.RISK.require("risk of running out", risk);
    List<Draw> homes = homes();
    double mean = homes.stream().mapToDouble(home -> home.weight() * home.multiple()).sum();
    return new BrentSolver(1e-9)
        .solve(500, reserve -> tooLittle(homes, reserve) / mean - risk, 0, HIGHEST);
  }

  private double tooLittle(List<Draw> homes, double reserve) {
    double sum = 0;
    for (Draw home : homes) {
      double multiple = home.multiple();
      sum += home.weight() * multiple * variation.excessBeyond(reserve / multiple);
    }
    return sum;
  }

  /**
   * {@return the multiple of the stated mean that a share of such homes stays below} Example: 0.75
   * → 1.22 without a bill, 1.06 with one. Source: lognormal spread of the homes.
   *
   * @param share 0.00001 to 0.99999; dimensionless
   * @throws IllegalArgumentException outside that range
   */
  public double highMean(double share) {
    Require.between("share of homes", share, 1e-5, 1 - 1e-5);
    return uncertain.coefficient() == 0 ? 1 : uncertain.quantile(share);
  }
}
