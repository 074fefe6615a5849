package io.github.brinewright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.time.Duration;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Each rule on a candidate speaks when it should, and is silent for a good candidate. */
class DesignRuleTest {
  private final Set<Rule<?>> spoken = new HashSet<>();
  private double gpg = 12;
  private double ironMg;
  private int fixtures;
  private int people = 3;
  private double bathrooms = 1;
  private double psi = 60;
  private double fahrenheit = 50;
  private double supplyGpm = 20;
  private Place place = Place.US;
  private WaterSource source = WaterSource.PUBLIC_SUPPLY;
  private SoftenedShare softened = SoftenedShare.WHOLE_HOUSE;
  private @Nullable PresentSoftener present;

  private List<Rule<?>> found(Softener.Builder unit) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg))
            .from(source)
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(ironMg))
            .temperature(Temperature.ofFahrenheit(fahrenheit))
            .build();
    Site.Builder site =
        Site.of("h", water, household())
            .place(place)
            .supply(Supply.of(Pressure.ofPsi(psi), FlowRate.ofGallonsPerMinute(supplyGpm)));
    if (present != null) {
      site.present(present);
    }
    Setup setup = Setup.of(unit.build()).get(0);
    return RuleBook.USUAL
        .findings(new Sizer(new HomeLoad(site.build())).design(setup), Limits.USUAL)
        .stream()
        .<Rule<?>>map(Finding::rule)
        .toList();
  }

  private Household household() {
    Household.Builder household = Household.of(people).bathrooms(bathrooms).softened(softened);
    if (fixtures > 0) {
      household.fixture(Fixture.WATER_CLOSET, fixtures);
    }
    return household.build();
  }

  private static Softener.Builder bed(double cubicFeet) {
    return Softener.withResin("u", Volume.ofCubicFeet(cubicFeet)).dosages(dosage(5));
  }

  private static Softener.Builder clock(double cubicFeet) {
    return bed(cubicFeet).controls(EnumSet.of(Control.CLOCK));
  }

  private static List<SaltDosage> dosage(double pounds) {
    return List.of(SaltDosage.ofPoundsPerCubicFoot(pounds));
  }

  private void speaks(DesignRule rule, Softener.Builder unit) {
    assertThat(found(unit)).contains(rule);
    spoken.add(rule);
  }

  @Test
  void aGoodOptionBreaksNoLimit() {
    gpg = 5;
    assertThat(found(bed(1.5).dosages(dosage(4)))).containsOnly(DesignRule.LONGEST_INTERVAL);
  }

  @Test
  void everyRuleSpeaksWhenItShould() {
    capacityRules();
    flowRules();
    saltAndWaterRules();
    californiaAsksForDemandControlAndACertificateOnSewers();
    assertThat(spoken).containsExactlyInAnyOrderElementsOf(EnumSet.allOf(DesignRule.class));
  }

  private void capacityRules() {
    gpg = 90;
    speaks(DesignRule.CAPACITY_BELOW_LOAD, bed(1));
    gpg = 60;
    speaks(
        DesignRule.NO_ROOM_FOR_RESERVE, Softener.withRating("u", HardnessAmount.ofGrains(16_875)));
    gpg = 60;
    speaks(DesignRule.INTERVAL_BELOW_SEWER_ADVICE, clock(1));
    gpg = 5;
    speaks(DesignRule.LONGEST_INTERVAL, bed(1.5));
    gpg = 12;
    speaks(
        DesignRule.RESIN_VOLUME_ASSUMED, Softener.withRating("u", HardnessAmount.ofGrains(32_000)));
  }

  private void flowRules() {
    fixtures = 15;
    speaks(DesignRule.BED_OVERLOADED, bed(1));
    fixtures = 0;
    supplyGpm = 2;
    speaks(DesignRule.BACKWASH_ABOVE_SUPPLY, bed(1));
    supplyGpm = 20;
    psi = 17;
    speaks(DesignRule.PRESSURE_LEFT_TOO_LOW, bed(1));
    psi = 60;
    bathrooms = 20;
    fahrenheit = 120;
    speaks(DesignRule.FLOW_OUTSIDE_FORMULA, bed(1).vessel(vessel(3, 90)).resin(coarse()));
    fahrenheit = 50;
    bathrooms = 1;
    speaks(DesignRule.BED_SHALLOW, bed(1).vessel(vessel(14, 60)));
    speaks(DesignRule.FREEBOARD_SMALL, bed(1).vessel(vessel(9, 30)));
    speaks(
        DesignRule.DRAIN_FLOW_TOO_SMALL,
        bed(1).drainFlows(List.of(FlowRate.ofGallonsPerMinute(1))));
  }

  private static Resin coarse() {
    Resin gel = ShippedResins.STANDARD_GEL;
    return new Resin("coarse", "Coarse", gel.curve(), Length.ofMillimetres(1.5), gel.beadDensity());
  }

  private static Vessel vessel(double diameter, double height) {
    return new Vessel(Length.ofInches(diameter), Length.ofInches(height));
  }

  private void saltAndWaterRules() {
    ironMg = 2.5;
    speaks(DesignRule.CYCLE_FOR_IRON, bed(2));
    ironMg = 0;
    speaks(DesignRule.BRINE_TANK_TOO_SMALL, bed(3).brineTank(new BrineTank(inches(8), inches(20))));
    speaks(DesignRule.SODIUM_MAY_BE_TASTED, bed(1));
    speaks(DesignRule.EFFICIENCY_BELOW_RATING, bed(1).dosages(dosage(15)));
    speaks(
        DesignRule.REFILL_COARSE,
        bed(1).refill(FlowRate.ofGallonsPerMinute(0.5), Duration.ofMinutes(5)));
    present = clockOn(Regenerant.POTASSIUM_CHLORIDE);
    speaks(DesignRule.SODIUM_FOR_POTASSIUM, bed(1));
    present = null;
    gpg = 40;
    people = 8;
    speaks(DesignRule.REGENERATION_WATER_HIGH, clock(4));
  }

  private static PresentSoftener clockOn(Regenerant salt) {
    return PresentSoftener.of(PresentControl.clock(5))
        .resinVolume(Volume.ofCubicFeet(1))
        .regenerant(salt)
        .build();
  }

  @Test
  void nothingChangesForAFamilyThatKeepsItsSalt() {
    present = clockOn(Regenerant.POTASSIUM_CHLORIDE);
    assertThat(found(bed(1).regenerant(Regenerant.POTASSIUM_CHLORIDE)))
        .doesNotContain(DesignRule.SODIUM_FOR_POTASSIUM);
    present = clockOn(Regenerant.SODIUM_CHLORIDE);
    assertThat(found(bed(1))).doesNotContain(DesignRule.SODIUM_FOR_POTASSIUM);
  }

  private static Length inches(double value) {
    return Length.ofInches(value);
  }

  /** 63 gpm by the rule of 3 gpm a bathroom. */
  @Test
  void aRuleOfThumbNeverStops() {
    bathrooms = 20;

    assertThat(found(bed(1))).doesNotContain(DesignRule.BED_OVERLOADED);
  }

  /** 7 water closets are 15.4 units, 17.7 gpm: 19.2 gpm/ft² in 13 in, 22.5 in 12 in. */
  @Test
  void aTabulatedPeakLoadsABedWithTwentyGallonsASquareFootAtMost() {
    fixtures = 7;

    assertThat(found(bed(2).vessel(vessel(13, 54)))).doesNotContain(DesignRule.BED_OVERLOADED);
    assertThat(found(bed(2).vessel(vessel(12, 54)))).contains(DesignRule.BED_OVERLOADED);
  }

  /** A private well stands where sewers do not go: common practice. */
  @Test
  void theDistrictSpeaksOnlyOfHomesOnItsSewers() {
    gpg = 60;
    source = WaterSource.PRIVATE_WELL;

    assertThat(found(clock(1))).doesNotContain(DesignRule.INTERVAL_BELOW_SEWER_ADVICE);
  }

  @Test
  void nobodyTastesSodiumInTheHotWater() {
    softened = SoftenedShare.HOT_WATER;

    assertThat(found(bed(1))).doesNotContain(DesignRule.SODIUM_MAY_BE_TASTED);
  }

  /** California Health and Safety Code 116785: demand control, certified 4,000 grains a pound. */
  @Test
  void californiaAsksForDemandControlAndACertificateOnSewers() {
    place = Place.of("US-CA");
    Softener.Builder certified = bed(1).certifiedEfficiency(SaltEfficiency.ofGrainsPerPound(4_000));

    speaks(DesignRule.DEMAND_CONTROL_REQUIRED, clock(1));
    speaks(DesignRule.DEMAND_CONTROL_REQUIRED, bed(1).controls(EnumSet.of(Control.WEEKDAYS)));
    speaks(DesignRule.CERTIFICATE_REQUIRED, bed(1));
    assertThat(found(certified))
        .doesNotContain(DesignRule.CERTIFICATE_REQUIRED, DesignRule.DEMAND_CONTROL_REQUIRED);
    assertThat(found(bed(1).certifiedEfficiency(SaltEfficiency.ofGrainsPerPound(3_999))))
        .contains(DesignRule.CERTIFICATE_REQUIRED);
    source = WaterSource.PRIVATE_WELL;
    assertThat(found(clock(1)))
        .doesNotContain(DesignRule.CERTIFICATE_REQUIRED, DesignRule.DEMAND_CONTROL_REQUIRED);
  }
}
