package io.github.brinewright.simulation;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * What many simulated years say of one bed; made by {@link YearSimulation#run}. Spreads are of
 * single years. Immutable; equal when the bed and every year are.
 */
public final class SimulatedYears {
  private final BedSettings bed;
  private final List<YearCounts> years;

  SimulatedYears(BedSettings bed, List<YearCounts> years) {
    this.bed = bed;
    this.years = List.copyOf(years);
  }

  private Spread spread(ToDoubleFunction<YearCounts> figure) {
    return Spread.of(years.stream().mapToDouble(figure).toArray());
  }

  private double sum(ToDoubleFunction<YearCounts> figure) {
    return years.stream().mapToDouble(figure).sum();
  }

  /** The first year that has the middle number of regenerations. */
  int middleYear() {
    int middle =
        years.stream()
            .mapToInt(YearCounts::regenerations)
            .sorted()
            .skip(years.size() / 2)
            .findFirst()
            .orElse(0);
    return (int) years.stream().takeWhile(year -> year.regenerations() != middle).count();
  }

  int regenerationsOf(int year) {
    return years.get(year).regenerations();
  }

  /** {@return the bed} */
  public BedSettings bed() {
    return bed;
  }

  /** {@return the regenerations of a year} */
  public Spread regenerations() {
    return spread(YearCounts::regenerations);
  }

  /** {@return the salt of a year, in pounds} */
  public Spread saltPounds() {
    return regenerations().times(bed.salt().pounds());
  }

  /** {@return the mean salt of a year} */
  public Mass salt() {
    return Mass.ofPounds(saltPounds().mean());
  }

  /** {@return the regeneration water of a year, in US gallons} */
  public Spread waterGallons() {
    return regenerations().times(bed.water().gallons());
  }

  /** {@return the mean regeneration water of a year} */
  public Volume water() {
    return Volume.ofGallons(waterGallons().mean());
  }

  /** {@return the days of a year on which the bed had run out} */
  public Spread hardDays() {
    return spread(YearCounts::hardDays);
  }

  /** {@return the hard water of a year because the bed had run out, in US gallons} */
  public Spread hardGallons() {
    return spread(YearCounts::hardGallons);
  }

  /** {@return the hard water of a year that passed while the bed regenerated, in US gallons} */
  public Spread cycleGallons() {
    return spread(YearCounts::cycleGallons);
  }

  /** {@return the hard water of a mean year by cause, as a {@link HardWaterForecast} tells it} */
  public HardWater hardWater() {
    return new HardWater(
        regenerations().mean(),
        Volume.ofGallons(hardGallons().mean()),
        Volume.ofGallons(cycleGallons().mean()),
        hardDays().mean(),
        runOutShare());
  }

  /** {@return the days of the longest interval of a year} */
  public Spread longestGap() {
    return spread(YearCounts::longestGap);
  }

  /** {@return the share of the regenerated capacity that was thrown away unused; dimensionless} */
  public double unusedShare() {
    double restored = sum(YearCounts::regenerations) * bed.capacity().gallons();
    return restored == 0 ? 0 : sum(YearCounts::unusedGallons) / restored;
  }

  /** {@return the share of regenerations that came after the bed had run out; dimensionless} */
  public double runOutShare() {
    double all = sum(YearCounts::regenerations);
    return all == 0 ? 0 : sum(YearCounts::runOuts) / all;
  }

  /**
   * {@return what the books are out by: capacity restored less water softened and capacity thrown
   * away, in US gallons over all years} Zero but for floating point.
   */
  public double imbalanceGallons() {
    return sum(YearCounts::capacityGallons)
        - sum(YearCounts::softGallons)
        - sum(YearCounts::unusedGallons);
  }

  int years() {
    return years.size();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SimulatedYears simulated
        && bed.equals(simulated.bed)
        && years.equals(simulated.years);
  }

  @Override
  public int hashCode() {
    return Objects.hash(bed, years);
  }

  @Override
  public String toString() {
    return years.size()
        + " years of "
        + bed
        + ": "
        + regenerations().mean()
        + " regenerations and "
        + hardDays().mean()
        + " days out of soft water a year";
  }
}
