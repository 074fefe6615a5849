package io.github.brinewright.simulation;

import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.CalendarYear;
import io.github.brinewright.quantity.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Runs beds through many simulated years of one home. All beds meet the same days, so that their
 * difference is the controls' alone; the same seed gives the same result on every machine and any
 * number of threads.
 *
 * <pre>{@code
 * YearSimulation simulation = new YearSimulation(DemandModel.of(home), 400, 1);
 * SimulatedYears years = simulation.run(List.of(design.bed().orElseThrow())).get(0);
 * }</pre>
 *
 * @param demand of the home
 * @param years 1 to 100,000
 * @param seed of the random numbers
 */
public record YearSimulation(DemandModel demand, int years, long seed) {
  /** Seed used unless another one is wanted. */
  public static final long USUAL_SEED = 20_260_101L;

  private static final int DAYS = CalendarYear.DAYS;
  private static final int WARM_UP = 28;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * @param demand of the home
   * @param years 1 to 100,000
   * @param seed of the random numbers
   * @throws IllegalArgumentException outside the range above
   */
  public YearSimulation {
    Require.between("simulated years", years, 1, 100_000);
  }

  /**
   * Runs all beds, over all cores; the results stand in the order of the beds.
   *
   * @param beds all of which meet the same days
   * @return what came of each bed, in the order of {@code beds}
   */
  public List<SimulatedYears> run(List<BedSettings> beds) {
    DailyDraw draw = DailyDraw.of(demand.variation());
    YearCounts[][] tallies = new YearCounts[years][];
    IntStream.range(0, years).parallel().forEach(year -> tallies[year] = oneYear(draw, beds, year));
    List<SimulatedYears> outcomes = new ArrayList<>();
    for (int bed = 0; bed < beds.size(); bed++) {
      int which = bed;
      outcomes.add(
          new SimulatedYears(
              beds.get(bed), Arrays.stream(tallies).map(year -> year[which]).toList()));
    }
    return outcomes;
  }

  private YearCounts[] oneYear(DailyDraw draw, List<BedSettings> beds, int year) {
    double[] gallons = days(draw, year);
    YearCounts[] tallies = new YearCounts[beds.size()];
    for (int i = 0; i < tallies.length; i++) {
      tallies[i] = bedRun(beds.get(i), year).run(gallons, WARM_UP, year % 7);
    }
    return tallies;
  }

  /**
   * A run whose year begins at its own place in the bed's interval. Multiples of the golden ratio
   * spread these places evenly over any number of years, and need no random number, so that the
   * days stay those of the seed. Were all years to begin at one place, a clock of 14 days would
   * regenerate 27 times in each of them; 365 ÷ 14 is 26.07.
   */
  private BedRun bedRun(BedSettings bed, int year) {
    double turns = year * GOLDEN;
    double place = turns - Math.floor(turns);
    return bed.days() > WARM_UP
        ? new BedRun(bed).beginAt(place, demand.mean().gallons())
        : new BedRun(bed).beginAt(place);
  }

  /** Regenerations of each day of one of the years, for each bed. */
  List<int[]> regenerations(List<BedSettings> beds, int year) {
    double[] gallons = days(DailyDraw.of(demand.variation()), year);
    return beds.stream()
        .map(bed -> bedRun(bed, year).regenerations(gallons, WARM_UP, year % 7))
        .toList();
  }

  /** The use of each day of a year, after days to warm up. */
  double[] days(DailyDraw draw, int year) {
    double[] days = new double[WARM_UP + DAYS];
    draw.fill(days, seed, year);
    double mean = demand.mean().gallons();
    for (int day = 0; day < days.length; day++) {
      days[day] *= mean;
    }
    YearDays stretches = demand.days();
    if (!stretches.allOrdinary()) {
      SplittableRandom random = new SplittableRandom(DailyDraw.mixed(seed, ~year));
      stretch(days, stretches.away(), YearDays.LEFT_WHILE_AWAY, random);
      stretch(days, stretches.guests(), stretches.guestFactor(), random);
    }
    return days;
  }

  private static void stretch(double[] days, int length, double factor, SplittableRandom random) {
    int start = WARM_UP + random.nextInt(DAYS - length + 1);
    for (int day = start; day < start + length; day++) {
      days[day] *= factor;
    }
  }
}
