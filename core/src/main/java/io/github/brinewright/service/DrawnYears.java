package io.github.brinewright.service;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.study.Draws;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Every way through the same draws of what is not known: the mean use of the home, how its days
 * stray, the prices of salt and water, what the years took from the present bed, and its salt where
 * nobody knows it. Settings stay as they are.
 */
final class DrawnYears {
  /** Enough that the ends of a range are known to a twentieth of it. */
  static final int DRAWS = 100;

  private static final int YEARS = 4;
  private static final int FACTOR_DECIMALS = 4;

  /** Coefficients are rounded to tenths, so that a table of days serves many draws. */
  private static final double VARIATIONS_PER_UNIT = 10;

  private static final long AGE_SEED = Draws.USUAL_SEED + 1;
  private static final long SALT_SEED = Draws.USUAL_SEED + 2;

  private final HomeLoad home;
  private final Tariff tariff;
  private final Draws draws;
  private final double[] age;
  private final double[] salt;

  DrawnYears(HomeLoad home, Tariff tariff) {
    this.home = home;
    this.tariff = tariff;
    draws = new Draws(home, DRAWS, Draws.USUAL_SEED);
    age = Draws.places(DRAWS, AGE_SEED);
    salt = Draws.places(DRAWS, SALT_SEED);
  }

  List<Drawn> of(List<Way> ways) {
    List<Drawn> drawn = ways.stream().map(way -> Drawn.ofSize(DRAWS)).toList();
    IntStream.range(0, DRAWS).parallel().forEach(k -> draw(k, ways, drawn));
    return drawn;
  }

  private void draw(int k, List<Way> ways, List<Drawn> drawn) {
    FoundUnknowns unknown = FoundUnknowns.at(age[k], salt[k]);
    List<BedSettings> beds = ways.stream().map(way -> way.bed().apply(unknown)).toList();
    List<SimulatedYears> years = new YearSimulation(demand(k), YEARS, k + 1).run(beds);
    Tariff prices = prices(k);
    for (int way = 0; way < ways.size(); way++) {
      note(k, years.get(way), drawn.get(way), cost(ways.get(way), years.get(way), prices, k));
    }
  }

  private static void note(int k, SimulatedYears years, Drawn drawn, Money cost) {
    drawn.saltPounds()[k] = years.salt().pounds();
    drawn.waterGallons()[k] = years.water().gallons();
    drawn.hardGallons()[k] = years.hardWater().total().gallons();
    drawn.runOutDays()[k] = years.hardDays().mean();
    drawn.costs()[k] = cost.getAmount().doubleValue();
  }

  private DemandModel demand(int k) {
    DailyVariation usual = home.variation();
    double tenths = Math.round(draws.variation(k) * VARIATIONS_PER_UNIT) / VARIATIONS_PER_UNIT;
    double coefficient = DailyVariation.COEFFICIENT.nearest(tenths);
    return new DemandModel(
        home.softenedExpected().times(draws.use(k)),
        new DailyVariation(coefficient, usual.nextDay(), usual.weekdays()),
        home.use().days());
  }

  private Tariff prices(int k) {
    return tariff.withSaltTimes(factor(draws.salt(k))).withWaterTimes(factor(draws.water(k)));
  }

  private static BigDecimal factor(double drawn) {
    return BigDecimal.valueOf(drawn).setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN);
  }

  private Money cost(Way way, SimulatedYears years, Tariff prices, int k) {
    Volume use = home.yearlyUse().times(draws.use(k));
    return Money.total(way.year(years).lines(prices, use).values());
  }
}
