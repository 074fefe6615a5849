package io.github.brinewright.simulation;

import io.github.brinewright.demand.DailyVariation;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Draws days of use as multiples of the mean. A normal series with the wanted correlation is turned
 * into a gamma series through tables, so that a day costs one random number and two look-ups, and
 * the same seed gives the same days on every machine.
 */
final class DailyDraw {
  private static final int NORMAL_CELLS = 1 << 12;
  private static final int GAMMA_CELLS_PER_UNIT = 128;
  private static final double WIDEST = 5;
  private static final double UNIT = 0x1.0p-53;
  private static final double[] NORMAL = normalTable();

  private final double persistence;
  private final double innovation;
  private final double[] gamma;
  private final double[] weekdays;

  private static final Map<DailyVariation, DailyDraw> MADE = new ConcurrentHashMap<>();
  private static final int MOST_MADE = 100;

  /** The draw of a variation; its tables are made once. */
  static DailyDraw of(DailyVariation variation) {
    if (MADE.size() > MOST_MADE) {
      MADE.clear();
    }
    return MADE.computeIfAbsent(variation, DailyDraw::new);
  }

  private DailyDraw(DailyVariation variation) {
    persistence = variation.nextDay();
    innovation = Math.sqrt(1 - persistence * persistence);
    gamma = gammaTable(variation);
    weekdays = variation.weekdays().stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double[] normalTable() {
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double[] table = new double[NORMAL_CELLS + 1];
    for (int i = 0; i <= NORMAL_CELLS; i++) {
      double share = Math.min(Math.max(i, 0.1), NORMAL_CELLS - 0.1) / NORMAL_CELLS;
      table[i] = normal.inverseCumulativeProbability(share);
    }
    return table;
  }

  private static double[] gammaTable(DailyVariation variation) {
    int cells = (int) (2 * WIDEST * GAMMA_CELLS_PER_UNIT);
    double[] table = new double[cells + 2];
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    boolean constant = variation.steady();
    GammaDistribution use =
        constant ? null : new GammaDistribution(null, variation.shape(), 1 / variation.shape());
    for (int i = 0; i < table.length; i++) {
      double z = (double) i / GAMMA_CELLS_PER_UNIT - WIDEST;
      table[i] =
          use == null ? 1 : use.inverseCumulativeProbability(normal.cumulativeProbability(z));
    }
    return table;
  }

  /**
   * Fills an array with days.
   *
   * @param days to fill; its first day has the weekday {@code year mod 7}
   * @param seed of the whole simulation
   * @param year number of the year, which gets its own random numbers
   */
  void fill(double[] days, long seed, int year) {
    SplittableRandom random = new SplittableRandom(mixed(seed, year));
    double z = normal(random.nextLong());
    int weekday = year % 7;
    for (int day = 0; day < days.length; day++) {
      z = persistence * z + innovation * normal(random.nextLong());
      days[day] = weekdays[weekday] * use(z);
      weekday = weekday == 6 ? 0 : weekday + 1;
    }
  }

  /**
   * A seed of its own for each year. The generator steps by a fixed amount, so that seeds which
   * differ by that amount would give the same series shifted by one number; two rounds of a mix
   * function keep any two seeds and years apart.
   */
  static long mixed(long seed, int year) {
    return mix(mix(seed) + year);
  }

  /** Stafford's variant 13 of the finalizer of MurmurHash3. */
  private static long mix(long bits) {
    long z = bits + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  private static double normal(long bits) {
    double place = (bits >>> 11) * UNIT * NORMAL_CELLS;
    int cell = (int) place;
    return NORMAL[cell] + (NORMAL[cell + 1] - NORMAL[cell]) * (place - cell);
  }

  private double use(double z) {
    double place = (Math.max(-WIDEST, Math.min(WIDEST, z)) + WIDEST) * GAMMA_CELLS_PER_UNIT;
    int cell = (int) place;
    return gamma[cell] + (gamma[cell + 1] - gamma[cell]) * (place - cell);
  }
}
