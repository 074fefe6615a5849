package io.github.brinewright.finding;

import static io.github.brinewright.finding.TriedHome.bare;
import static io.github.brinewright.finding.TriedHome.gpg;
import static io.github.brinewright.finding.TriedHome.well;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Turbidity;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each rule speaks when it should, not before, and never for a home without trouble. */
class HomeRuleTest {
  private final Set<Rule<?>> spoken = new HashSet<>();

  private void sides(HomeRule rule, TriedHome beyond, TriedHome before) {
    assertThat(beyond.found()).contains(rule);
    assertThat(before.found()).as("before " + rule).doesNotContain(rule);
    spoken.add(rule);
  }

  private static TriedHome city(Substance substance, double milligrams) {
    return TriedHome.city(18).with(substance, milligrams);
  }

  private static TriedHome canada(Substance substance, double milligrams) {
    return city(substance, milligrams).site(site -> site.place(Place.of("CA-ON")));
  }

  private static TriedHome ph(double ph) {
    return TriedHome.city(18).water(w -> w.ph(ph));
  }

  private static TriedHome turbid(double ntu, double iron) {
    return city(Substance.IRON, iron).water(w -> w.turbidity(Turbidity.ofNtu(ntu)));
  }

  private static TriedHome people(Household.Builder household) {
    return TriedHome.city(18).people(household);
  }

  private static TriedHome supply(double psi, double gpm) {
    Supply supply = Supply.of(Pressure.ofPsi(psi), FlowRate.ofGallonsPerMinute(gpm));
    return TriedHome.city(18).site(site -> site.supply(supply));
  }

  private static TriedHome by(HardnessMethod method) {
    return TriedHome.city(18).water(w -> w.hardnessBy(method));
  }

  private static TriedHome hard(double milligrams) {
    return TriedHome.city(Hardness.ofMilligramsPerLitre(milligrams).grainsPerGallon());
  }

  @Test
  void aHomeWithoutTroubleHasNoFindings() {
    assertThat(TriedHome.city(18).found()).isEmpty();
    assertThat(well(18).found()).isEmpty();
  }

  @Test
  void everyRuleSpeaksWhenItShouldAndNotBefore() {
    metals();
    gases();
    acidity();
    analysis();
    supply();
    household();
    assertThat(spoken).containsExactlyInAnyOrderElementsOf(EnumSet.allOf(HomeRule.class));
  }

  private void metals() {
    sides(HomeRule.IRON_STAINS, city(Substance.IRON, 0.31), city(Substance.IRON, 0.3));
    sides(HomeRule.IRON_ABOVE_OBJECTIVE, canada(Substance.IRON, 0.11), canada(Substance.IRON, 0.1));
    sides(
        HomeRule.IRON_FILTER_ENOUGH,
        TriedHome.city(3).with(Substance.IRON, 0.31),
        TriedHome.city(3).with(Substance.IRON, 0.3));
    sides(
        HomeRule.MANGANESE_STAINS,
        city(Substance.MANGANESE, 0.06),
        city(Substance.MANGANESE, 0.05));
    sides(
        HomeRule.MANGANESE_ABOVE_ADVISORY,
        city(Substance.MANGANESE, 0.31),
        city(Substance.MANGANESE, 0.3));
    sides(
        HomeRule.MANGANESE_ABOVE_GUIDELINE,
        canada(Substance.MANGANESE, 0.13),
        canada(Substance.MANGANESE, 0.12));
    sides(
        HomeRule.MANGANESE_UNKNOWN,
        bare(18).water(w -> w.from(WaterSource.PRIVATE_WELL)),
        bare(18).water(w -> w.from(WaterSource.PRIVATE_WELL)).with(Substance.IRON, 0.31));
  }

  private void gases() {
    sides(HomeRule.NITRATE_HIGH, city(Substance.NITRATE, 10.1), city(Substance.NITRATE, 10));
    sides(
        HomeRule.HYDROGEN_SULFIDE_LITTLE,
        city(Substance.HYDROGEN_SULFIDE, 0.09),
        city(Substance.HYDROGEN_SULFIDE, 0.1));
    sides(
        HomeRule.CHLORINE_PRESENT,
        city(Substance.FREE_CHLORINE, 0.21),
        city(Substance.FREE_CHLORINE, 0.2));
    sides(
        HomeRule.CHLORINE_PRESENT,
        city(Substance.FREE_CHLORINE, 1),
        city(Substance.FREE_CHLORINE, 1.01));
    sides(
        HomeRule.CHLORINE_WEARS_RESIN,
        city(Substance.FREE_CHLORINE, 1.01),
        city(Substance.FREE_CHLORINE, 1));
    sides(
        HomeRule.CHLORAMINE_PRESENT,
        city(Substance.CHLORAMINE, 0.1),
        city(Substance.CHLORAMINE, 0));
  }

  private void acidity() {
    sides(HomeRule.PH_HIGH, ph(8.51), ph(8.5));
    sides(HomeRule.LEAD_AND_COPPER, ph(6.49), ph(6.5));
    sides(HomeRule.LEAD_AND_COPPER, ph(8.51), ph(8.5));
    sides(HomeRule.PH_UNKNOWN, bare(18), bare(18).water(w -> w.from(WaterSource.PRIVATE_WELL)));
  }

  private void analysis() {
    Substance solids = Substance.TOTAL_DISSOLVED_SOLIDS;
    sides(HomeRule.SOLIDS_HIGH, city(solids, 751), city(solids, 750));
    sides(HomeRule.SOLIDS_NOT_TESTED, bare(18), city(solids, 0));
    sides(HomeRule.TURBID, turbid(1.1, 0.1), turbid(1, 0.1));
    sides(HomeRule.TURBID, turbid(6, 0.31), turbid(6, 0.3));
    sides(HomeRule.MODERATELY_HARD, hard(61), hard(60));
    sides(HomeRule.MODERATELY_HARD, hard(120), hard(121));
    sides(HomeRule.HARDNESS_BY_STRIP, by(HardnessMethod.STRIP), by(HardnessMethod.DROP_TEST));
    sides(HomeRule.HARDNESS_METHOD_UNKNOWN, bare(18), by(HardnessMethod.UTILITY_AVERAGE));
    sides(HomeRule.WATER_COLD, cold(49), cold(50));
    sides(HomeRule.TEMPERATURE_NOT_MEASURED, bare(18), cold(50));
  }

  private static TriedHome cold(double fahrenheit) {
    return TriedHome.city(18).water(w -> w.temperature(Temperature.ofFahrenheit(fahrenheit)));
  }

  private void supply() {
    sides(HomeRule.PRESSURE_LOW, supply(29, 20), supply(30, 20));
    sides(HomeRule.PRESSURE_LOW, supply(16, 20), supply(15, 20));
    sides(HomeRule.PRESSURE_HIGH, supply(81, 20), supply(80, 20));
    sides(
        HomeRule.SUPPLY_NOT_MEASURED,
        TriedHome.city(18)
            .site(site -> site.supply(Supply.NOT_MEASURED.withPressure(Pressure.ofPsi(60)))),
        supply(60, 20));
    sides(HomeRule.SUPPLY_BELOW_PEAK, supply(60, 8.9), supply(60, 9.1));
  }

  private void household() {
    sides(
        HomeRule.BLENDED,
        TriedHome.city(18).site(site -> site.target(gpg(4))),
        TriedHome.city(18).site(site -> site.target(gpg(0))));
    sides(HomeRule.SIZED_ON_BILL, billed(120), people(Household.of(2)));
    sides(HomeRule.ALLOWANCE_TOO_SMALL, people(Household.of(1)), people(Household.of(2)));
    sides(HomeRule.BILL_HIGH, billed(180), billed(178));
    sides(HomeRule.SIZED_ON_READINGS, read(120), billed(120));
    sides(HomeRule.READINGS_LEFT_OUT, metered(6, 900), metered(7, 1_050));
    assertThat(metered(90, 0).found()).contains(HomeRule.READINGS_LEFT_OUT);
    sides(HomeRule.READINGS_HIGH, read(180), read(178));
    assertThat(read(180).found()).doesNotContain(HomeRule.BILL_HIGH, HomeRule.SIZED_ON_BILL);
    assertThat(billed(180).found()).doesNotContain(HomeRule.READINGS_HIGH);
    sides(
        HomeRule.HOT_WATER_ONLY,
        people(Household.of(2).softened(SoftenedShare.HOT_WATER)),
        people(Household.of(2)));
    sides(
        HomeRule.FIXTURES_OUTSIDE_TABLE,
        people(Household.of(2).fixture(Fixture.WATER_CLOSET, 100)),
        people(Household.of(2).fixture(Fixture.WATER_CLOSET, 90)));
  }

  /**
   * Homes of two use 0.78 × (37.2 × 2 + 69.2) = 112 gal a day on average, and stray by 0.457 of it:
   * 1.3 standard deviations above are 178.6 gal. DAIAD open meter data.
   */
  private static TriedHome billed(double gallonsADay) {
    return people(Household.of(2).bill(new Bill(Volume.ofGallons(gallonsADay * 60), 60)));
  }

  /** The same, known by readings. */
  private static TriedHome read(double gallonsADay) {
    return people(Household.of(2).knownUse(new KnownUse(Volume.ofGallons(gallonsADay), 0.06)));
  }

  /** A present softener whose meter was read. */
  private static TriedHome metered(int days, double gallons) {
    LocalDate first = LocalDate.of(2026, 1, 5);
    List<MeterReading> read =
        List.of(
            new MeterReading(first, Volume.ofGallons(10)),
            new MeterReading(first.plusDays(days), Volume.ofGallons(10 + gallons)));
    PresentSoftener present =
        PresentSoftener.of(PresentControl.clock(7))
            .resinVolume(Volume.ofCubicFeet(1))
            .readings(ReadMeter.SOFTENER, read)
            .build();
    return TriedHome.city(18).site(site -> site.present(present));
  }

  /** In Canada its own objective stands in place of the American level, and the other way. */
  @Test
  void ofTwoPublishedLevelsThatOfThePlaceIsNamed() {
    assertThat(canada(Substance.IRON, 0.4).found()).doesNotContain(HomeRule.IRON_STAINS);
    assertThat(city(Substance.IRON, 0.2).found()).doesNotContain(HomeRule.IRON_ABOVE_OBJECTIVE);
    assertThat(canada(Substance.MANGANESE, 0.4).found())
        .doesNotContain(HomeRule.MANGANESE_ABOVE_ADVISORY);
    assertThat(city(Substance.MANGANESE, 0.2).found())
        .doesNotContain(HomeRule.MANGANESE_ABOVE_GUIDELINE);
  }
}
