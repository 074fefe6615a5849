package io.github.brinewright.demand;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The use of a home a day, as numbers that are never mixed: the mean of a day at home says what a
 * year takes, design use sizes the bed.
 *
 * <p>Mean: what readings of some months leave; else the winter bill; without one 0.78 × (37.2 ×
 * people + 69.2) gal/day, or for more than 8 people 0.6 × people × use per head. Design use: people
 * × use per head, and where that covers less than three of four days of the home, or with a bill or
 * readings, 1.63 × the mean, the day that nine of ten stay below (with readings the factor follows
 * from how well they tell the mean). Example for 3 people without a bill: 225 and 141 gal/day.
 * Source: common practice (75 gal a head, occupancy); Residential End Uses of Water 1999 and 2016
 * (from memory).
 */
public final class DailyUse implements Explained {
  /** The largest household that the statistics of household use speak of: 8 people. */
  public static final int LARGEST_HOUSEHOLD = 8;

  private static final double GALLONS_PER_PERSON_1999 = 37.2;
  private static final double GALLONS_PER_HOME_1999 = 69.2;
  private static final double SHARE_LEFT_2016 = 0.78;
  private static final double USUAL_OCCUPANCY = 0.6;
  private static final double LEAST_COVERAGE = 0.75;
  private static final double NINE_OF_TEN = 0.9;

  private final Household household;
  private final YearDays days;
  private final LikelyUse likely;
  private final UseBasis expectedBasis;
  private final Worked<Volume> expected;
  private final UseBasis designBasis;
  private final Worked<Volume> design;
  private final Worked<Double> coverage;
  private final Worked<Volume> yearMean;

  /**
   * The use of a household.
   *
   * @param household who lives in the home, and what is known of their use
   * @param variation how the use of its days strays about the mean
   * @param chosenShare of days that the design use shall cover, 0.5 to 0.999; empty for the usual
   *     rule
   * @throws IllegalArgumentException outside that range
   */
  public DailyUse(Household household, DailyVariation variation, OptionalDouble chosenShare) {
    this.household = household;
    chosenShare.ifPresent(share -> LikelyUse.SHARE.require("share of days", share));
    expectedBasis = meanBasis();
    expected = mean();
    days = daysOf(household);
    likely = new LikelyUse(variation, spread(), days);
    designBasis = designBasisFor(chosenShare);
    design = sized(chosenShare);
    coverage =
        Worked.of(
            StepKind.DESIGN_COVERAGE,
            Sources.METER_DATA,
            design(),
            expected(),
            design().ratioTo(expected()),
            (use, mean, multiple) -> likely.coverage(multiple));
    yearMean =
        Worked.of(
            StepKind.USE_OF_YEAR,
            Sources.DEFINITION,
            expected(),
            days.ordinary(),
            days.guestsAtHome(),
            days.guestFactor(),
            days.away(),
            (mean, ordinary, guests, factor, away) ->
                mean.times(YearDays.meanOfYear(ordinary, guests, factor, away)));
  }

  private UncertainMean spread() {
    boolean billed = expectedBasis == UseBasis.BILL;
    return known().orElse(billed ? UncertainMean.WITH_BILL : UncertainMean.WITHOUT_BILL);
  }

  private Optional<UncertainMean> known() {
    return household.knownUse().map(use -> new UncertainMean(use.coefficient()));
  }

  /**
   * A guest uses as much as one more person by the same statistics; where use is not taken from
   * them, as much as each of the people. Readings, in which guests are counted, change nothing of
   * that.
   */
  private YearDays daysOf(Household household) {
    int people = household.people();
    int all = people + household.guests();
    double factor =
        withoutReadings() == UseBasis.STATISTICS
            ? typical(all).ratioTo(typical(people))
            : (double) all / people;
    int guestDays = household.guests() == 0 ? 0 : household.guestDays();
    return new YearDays(household.awayDays(), guestDays, YearDays.GUEST_FACTOR.nearest(factor));
  }

  private boolean lodging() {
    return household.people() > LARGEST_HOUSEHOLD;
  }

  private UseBasis meanBasis() {
    return household.knownUse().isPresent() ? UseBasis.READINGS : withoutReadings();
  }

  private UseBasis withoutReadings() {
    if (household.bill().isPresent()) {
      return UseBasis.BILL;
    }
    return lodging() ? UseBasis.OCCUPANCY : UseBasis.STATISTICS;
  }

  private Worked<Volume> mean() {
    return household
        .knownUse()
        .map(DailyUse::read)
        .or(() -> household.bill().map(DailyUse::billed))
        .orElseGet(() -> lodging() ? occupied() : typicalOf(household.people()));
  }

  private static Worked<Volume> read(KnownUse use) {
    return Worked.of(
        StepKind.EXPECTED_USE_READINGS, Sources.READINGS, use.mean(), Function.identity());
  }

  private static Worked<Volume> billed(Bill bill) {
    return Worked.of(
        StepKind.EXPECTED_USE_BILL,
        Sources.WATER_BILL,
        bill.billed(),
        bill.days(),
        (volume, days) -> volume.dividedBy(days));
  }

  private Worked<Volume> occupied() {
    return Worked.of(
        StepKind.EXPECTED_USE_OCCUPANCY,
        Sources.OCCUPANCY,
        USUAL_OCCUPANCY,
        household.people(),
        household.perPersonDaily(),
        (occupancy, people, daily) -> daily.times(people * occupancy));
  }

  private static Worked<Volume> typicalOf(int people) {
    return Worked.of(
        StepKind.EXPECTED_USE_STATISTICS, Sources.USE_STATISTICS, people, DailyUse::typical);
  }

  private static Volume typical(int people) {
    return Volume.ofGallons(
        SHARE_LEFT_2016 * (GALLONS_PER_PERSON_1999 * people + GALLONS_PER_HOME_1999));
  }

  private UseBasis designBasisFor(OptionalDouble chosenShare) {
    if (chosenShare.isPresent()) {
      return UseBasis.CHOSEN_SHARE;
    } else if (expectedBasis == UseBasis.READINGS || expectedBasis == UseBasis.BILL) {
      return expectedBasis;
    }
    boolean enough = likely.coverage(allowance().ratioTo(expected())) >= LEAST_COVERAGE;
    return enough ? UseBasis.PER_HEAD : UseBasis.NINE_DAYS_IN_TEN;
  }

  private Volume allowance() {
    return household.perPersonDaily().times(household.people());
  }

  private Worked<Volume> sized(OptionalDouble chosenShare) {
    return switch (designBasis) {
      case PER_HEAD ->
          Worked.of(
              StepKind.DESIGN_USE_PER_HEAD,
              Sources.USE_PER_HEAD,
              household.people(),
              household.perPersonDaily(),
              (people, daily) -> daily.times(people));
      case CHOSEN_SHARE -> times(likely.factor(1, chosenShare.orElseThrow()));
      default -> times(ownDays().factor(1, NINE_OF_TEN));
    };
  }

  /** The days of a home whose mean is known by readings, or as well as by a bill. */
  private LikelyUse ownDays() {
    return new LikelyUse(likely.variation(), known().orElse(UncertainMean.WITH_BILL), days);
  }

  private Worked<Volume> times(double factor) {
    return Worked.of(
        StepKind.DESIGN_USE_FACTOR,
        Sources.METER_DATA,
        factor,
        expected(),
        (times, mean) -> mean.times(times));
  }

  /** {@return the use to size on} */
  public Volume design() {
    return design.value();
  }

  /** {@return the mean use of a day on which the household is at home, without guests} */
  public Volume expected() {
    return expected.value();
  }

  /** {@return the mean use of all days of the year, with guests and days away} */
  public Volume meanOfYear() {
    return yearMean.value();
  }

  /** {@return what the design use was taken from} */
  public UseBasis designBasis() {
    return designBasis;
  }

  /** {@return what the expected use was taken from} */
  public UseBasis expectedBasis() {
    return expectedBasis;
  }

  /**
   * {@return the share of the days at home whose use stays within the design use, in a home of just
   * the expected use; 0 to 1, dimensionless} Days away never raise it.
   */
  public double coverage() {
    return coverage.value();
  }

  /** {@return the days of the year, away and with guests} */
  public YearDays days() {
    return days;
  }

  /** {@return what the days at home may use, and how well their mean is known} */
  public LikelyUse likely() {
    return likely;
  }

  /**
   * {@return the mean use of homes of this size, beside which a bill or readings may be held; empty
   * for more than 8 people}
   */
  public Optional<Volume> usualForSize() {
    return lodging() ? Optional.empty() : Optional.of(typical(household.people()));
  }

  /**
   * {@return by how many standard deviations of homes of this size the expected use is above their
   * mean; 0 for more than 8 people} Dimensionless.
   */
  public double deviationsAboveUsual() {
    return usualForSize()
        .map(usual -> (expected().ratioTo(usual) - 1) / UncertainMean.WITHOUT_BILL.coefficient())
        .orElse(0.0);
  }

  @Override
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    steps.add(expected.step());
    steps.add(design.step());
    steps.add(coverage.step());
    if (!days.allOrdinary()) {
      steps.add(yearMean.step());
    }
    return steps;
  }
}
