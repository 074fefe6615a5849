package io.github.brinewright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Each rule on a candidate speaks when it should, and is silent for a good candidate. */
class DesignRuleTest {
  private final Set<String> spoken = new TreeSet<>();
  private double gpg = 12;
  private double ironMg;
  private double billGallons;
  private int people = 3;
  private double bathrooms = 1;
  private double psi = 60;
  private double fahrenheit = 50;
  private double supplyGpm = 20;

  private List<String> codes(Softener.Builder unit) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg))
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(ironMg))
            .temperature(Temperature.ofFahrenheit(fahrenheit))
            .build();
    Site site =
        Site.of("h", water, household())
            .supply(Supply.of(Pressure.ofPsi(psi), FlowRate.ofGallonsPerMinute(supplyGpm)))
            .build();
    Setup setup = Setup.of(unit.build()).get(0);
    return DesignRule.findings(new Sizer(new HomeLoad(site)).design(setup), Limits.USUAL).stream()
        .map(Finding::code)
        .toList();
  }

  private Household household() {
    Household.Builder household = Household.of(people).bathrooms(bathrooms);
    if (billGallons > 0) {
      household.bill(new Bill(Volume.ofGallons(billGallons), 60));
    }
    return household.build();
  }

  private static Softener.Builder bed(double cubicFeet) {
    return Softener.withResin("u", Volume.ofCubicFeet(cubicFeet)).dosages(dosage(5));
  }

  private static List<SaltDosage> dosage(double pounds) {
    return List.of(SaltDosage.ofPoundsPerCubicFoot(pounds));
  }

  private void speaks(String code, Softener.Builder unit) {
    assertThat(codes(unit)).contains(code);
    spoken.add(code);
  }

  @Test
  void aGoodOptionBreaksNoLimit() {
    gpg = 5;
    assertThat(codes(bed(1.5).dosages(dosage(4)))).containsOnly("longest-interval");
  }

  @Test
  void everyRuleSpeaksWhenItShould() {
    capacityRules();
    runOutRules();
    flowRules();
    saltAndWaterRules();
    assertThat(spoken)
        .containsExactlyInAnyOrderElementsOf(
            EnumSet.allOf(DesignRule.class).stream().map(Rule::code).toList());
  }

  private void capacityRules() {
    gpg = 90;
    speaks("capacity-below-load", bed(1));
    gpg = 60;
    speaks("no-room-for-reserve", Softener.withRating("u", HardnessAmount.ofGrains(16_875)));
    gpg = 30;
    speaks("interval-below-limit", bed(1));
    gpg = 22;
    speaks("interval-short", bed(1));
    gpg = 5;
    speaks("longest-interval", bed(1.5));
    gpg = 12;
    speaks("resin-volume-assumed", Softener.withRating("u", HardnessAmount.ofGrains(32_000)));
  }

  /** With a bill as high as the design use nothing is left for the days above the mean. */
  private void runOutRules() {
    billGallons = 225 * 60;
    speaks(
        "runs-out-often",
        Softener.withRating("u", HardnessAmount.ofGrains(2_700 * 5.05 / 0.8))
            .controls(EnumSet.of(Control.CLOCK)));
    speaks("runs-out-now-and-then", bed(2));
    billGallons = 0;
  }

  private void flowRules() {
    bathrooms = 4;
    speaks("peak-above-bed", bed(1));
    bathrooms = 2;
    speaks("peak-above-service-flow", bed(1));
    bathrooms = 1;
    supplyGpm = 2;
    speaks("backwash-above-supply", bed(1));
    supplyGpm = 20;
    psi = 32;
    speaks("pressure-left-low", bed(1));
    psi = 17;
    speaks("pressure-left-too-low", bed(1));
    psi = 60;
    speaks("pressure-loss-high", bed(1).valveLoss(Pressure.ofPsi(20)));
    bathrooms = 20;
    fahrenheit = 120;
    speaks("flow-outside-formula", bed(1).vessel(vessel(3, 90)).resin(coarse()));
    fahrenheit = 50;
    bathrooms = 1;
    speaks("bed-shallow", bed(1).vessel(vessel(14, 60)));
    speaks("freeboard-small", bed(1).vessel(vessel(9, 30)));
    speaks("drain-flow-too-small", bed(1).drainFlows(List.of(FlowRate.ofGallonsPerMinute(1))));
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
    speaks("lean-salt-in-harsh-water", bed(2).resin(ShippedResins.FINE_MESH));
    speaks("cycle-for-iron", bed(2));
    ironMg = 0;
    speaks("brine-tank-too-small", bed(3).brineTank(new BrineTank(inches(8), inches(20))));
    speaks("sodium-may-be-tasted", bed(1));
    speaks("efficiency-below-rating", bed(1).dosages(dosage(15)));
    speaks("refill-coarse", bed(1).refill(FlowRate.ofGallonsPerMinute(0.5), Duration.ofMinutes(5)));
    gpg = 40;
    people = 8;
    speaks("water-above-bound", bed(4).controls(EnumSet.of(Control.CLOCK)));
  }

  private static Length inches(double value) {
    return Length.ofInches(value);
  }
}
