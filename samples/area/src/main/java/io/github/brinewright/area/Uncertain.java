package io.github.brinewright.area;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.sizing.FoundUnknowns;
import java.util.SplittableRandom;

/**
 * One draw of what is not known of a home: partly its own, partly shared by the town or its
 * district, since only the shared part is left in a sum over many homes. Standard deviations are
 * those of the library: a home's mean use by its bill or without one; hardness by the method, where
 * a utility's average errs for the whole district; 8 % of a capacity curve and 10 % of a year's use
 * for all together (common practice). The same seed, home and draw give the same everywhere.
 *
 * @param use of the home as a multiple of the stated mean
 * @param hardness of its water as a multiple of the stated one
 * @param capacity of its bed as a multiple of the stated one
 * @param bed what years took from it, and its salt where nobody knows that
 */
record Uncertain(double use, double hardness, double capacity, FoundUnknowns bed) {
  /** As stated. */
  static final Uncertain NOTHING = new Uncertain(1, 1, 1, FoundUnknowns.MIDDLE);

  private static final double CURVE = 0.08;
  private static final UncertainMean YEAR = new UncertainMean(0.10);
  private static final double LEAST = 0.25;
  private static final double MOST = 4;

  static Uncertain draw(long seed, int draw, String district, HomeLoad home) {
    SplittableRandom own = stream(seed, draw, "home " + home.site().id());
    SplittableRandom town = stream(seed, draw, "town");
    UncertainMean mean = home.use().likely().uncertain();
    return new Uncertain(
        within(quantile(mean, own) * quantile(YEAR, town)),
        within(1 + hardness(home) * gaussian(measured(home) ? own : of(seed, draw, district))),
        within(1 + CURVE * gaussian(town)),
        FoundUnknowns.at(own.nextDouble(), own.nextDouble()));
  }

  private static SplittableRandom of(long seed, int draw, String district) {
    return stream(seed, draw, "district " + district);
  }

  /** FNV-1a over the name, mixed with seed and draw. */
  private static SplittableRandom stream(long seed, int draw, String name) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
    }
    return new SplittableRandom(hash ^ (seed * 0x9e3779b97f4a7c15L) ^ ((long) draw << 40));
  }

  private static double quantile(UncertainMean mean, SplittableRandom random) {
    return mean.quantile(Math.min(1 - 2e-5, Math.max(2e-5, random.nextDouble())));
  }

  private static double gaussian(SplittableRandom random) {
    return random.nextGaussian();
  }

  private static boolean measured(HomeLoad home) {
    return method(home).measured();
  }

  private static double hardness(HomeLoad home) {
    Hardness stated = home.site().softenedWater().hardness();
    return method(home).standardDeviation(stated).ratioTo(stated);
  }

  private static HardnessMethod method(HomeLoad home) {
    return home.site().water().hardnessMethod().orElse(HardnessMethod.UTILITY_AVERAGE);
  }

  private static double within(double multiple) {
    return Math.min(MOST, Math.max(LEAST, multiple));
  }
}
