package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.UseTotal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Mean and covariances of the use of days, in multiples of the stated mean day. Over weekdays
 * alike, the covariance of days k apart is E[w w′] (1 + c² r(k)) − E[w]² with the weekday factors
 * w, the coefficient of variation c and the correlation r.
 *
 * <p>Drawn days are gamma functions of a normal series of correlation ρ. Of their variance the
 * share a = 1 ÷ (1 + 2 c²/9) follows that series and the rest its square, so that r(k) = a ρᵏ + (1
 * − a) ρ²ᵏ. Source: own computation, Hermite series of the gamma quantile; a is right to 0.002 up
 * to c = 1.
 */
final class DayMoments {
  /** Any weekday alike, where a first weekday is asked for. */
  static final int ANY = -1;

  private static final int WEEK = 7;
  private static final int FARTHEST = 120;

  private final double spread;
  private final double[] weekdays;
  private final double mean;
  private final double[] correlation = new double[FARTHEST];
  private final double[] covariance = new double[FARTHEST];

  DayMoments(DailyVariation variation) {
    spread = variation.coefficient() * variation.coefficient();
    weekdays = variation.weekdays().stream().mapToDouble(Double::doubleValue).toArray();
    mean = Arrays.stream(weekdays).sum() / WEEK;
    double linear = 1 / (1 + 2 * spread / 9);
    for (int apart = 0; apart < FARTHEST; apart++) {
      double p = Math.pow(variation.nextDay(), apart);
      correlation[apart] = linear * p + (1 - linear) * p * p;
      covariance[apart] = products(apart) * (1 + spread * correlation[apart]) - mean * mean;
    }
  }

  private double products(int apart) {
    double sum = 0;
    for (int day = 0; day < WEEK; day++) {
      sum += weekdays[day] * weekdays[(day + apart) % WEEK];
    }
    return sum / WEEK;
  }

  /** Mean day; near 1, as the weekday factors are. */
  double mean() {
    return mean;
  }

  /** What a day brings with it some days later, for each unit that it is above the mean. */
  double carried(int later) {
    return covariance[0] <= 0 ? 0 : covariance[later] / covariance[0];
  }

  /** The same for all days that follow together, in the mean over where one stops to count. */
  double carriedOn() {
    double sum = 0;
    double whole = 0;
    for (int later = 1; later <= 2 * WEEK; later++) {
      whole += carried(later);
      sum += whole;
    }
    return sum / (2 * WEEK);
  }

  /**
   * What some days bring to the day that follows, for each unit that their sum is above its mean.
   */
  double carriedBy(int days) {
    double together = 0;
    for (int apart = 1; apart <= days; apart++) {
      together += covariance[apart];
    }
    double variance = days(days).variance();
    return variance <= 0 ? 0 : together / variance;
  }

  /** Days in a row that begin on each of the weekdays. */
  List<UseTotal> daysFromEachWeekday(int days) {
    double[] factors = new double[days];
    Arrays.fill(factors, 1);
    return IntStream.range(0, WEEK).mapToObj(first -> days(first, factors)).toList();
  }

  /** Days in a row that begin on any weekday. */
  UseTotal days(int days) {
    double[] factors = new double[days];
    Arrays.fill(factors, 1);
    return days(ANY, factors);
  }

  /**
   * Days in a row with a factor each.
   *
   * @param first weekday of the first, 0 for Monday, or {@link #ANY}
   */
  UseTotal days(int first, double[] factors) {
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < factors.length; i++) {
      sum += factors[i] * weekday(first, i);
      for (int j = 0; j <= i; j++) {
        squares += (i == j ? 1 : 2) * factors[i] * factors[j] * together(first, i, j);
      }
    }
    return new UseTotal(sum, Math.max(0, squares));
  }

  private double weekday(int first, int later) {
    return first == ANY ? mean : weekdays[(first + later) % WEEK];
  }

  private double together(int first, int i, int j) {
    return first == ANY
        ? covariance[i - j]
        : spread * weekday(first, i) * weekday(first, j) * correlation[i - j];
  }
}
