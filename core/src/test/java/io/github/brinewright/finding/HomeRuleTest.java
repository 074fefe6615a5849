package io.github.brinewright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Each rule speaks when it should, and is silent for a home without trouble. */
class HomeRuleTest {
  private static final Supply GOOD_SUPPLY = supply(60, 20);

  private static Supply supply(double psi, double gpm) {
    return Supply.of(Pressure.ofPsi(psi), FlowRate.ofGallonsPerMinute(gpm));
  }

  private static WaterAnalysis.Builder good(double gpg) {
    return WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg))
        .ph(7.4)
        .temperature(Temperature.ofFahrenheit(55))
        .found(Substance.TOTAL_DISSOLVED_SOLIDS, mg(300));
  }

  private static Concentration mg(double perLitre) {
    return Concentration.ofMilligramsPerLitre(perLitre);
  }

  private static List<Rule<?>> found(
      WaterAnalysis.Builder water, Household.Builder people, Supply supply, double target) {
    Site site =
        Site.of("h", water.build(), people.build())
            .supply(supply)
            .target(Hardness.ofGrainsPerGallon(target))
            .build();
    return RuleBook.USUAL.findings(new HomeLoad(site)).stream()
        .<Rule<?>>map(Finding::rule)
        .toList();
  }

  private static List<Rule<?>> water(Consumer<WaterAnalysis.Builder> change) {
    WaterAnalysis.Builder water = good(18);
    change.accept(water);
    return found(water, Household.of(3), GOOD_SUPPLY, 0);
  }

  private static List<Rule<?>> well(Consumer<WaterAnalysis.Builder> change) {
    return water(
        w -> {
          w.from(WaterSource.PRIVATE_WELL)
              .bacteria(BacteriaResult.NONE_FOUND)
              .found(Substance.IRON, mg(0.1))
              .found(Substance.MANGANESE, mg(0.01));
          change.accept(w);
        });
  }

  @Test
  void aHomeWithoutTroubleHasNoFindings() {
    assertThat(water(w -> {})).isEmpty();
    assertThat(well(w -> {})).isEmpty();
  }

  @Test
  void everyRuleSpeaksWhenItShould() {
    Set<Rule<?>> spoken = new HashSet<>();
    check(spoken, HomeRule.BACTERIA_FOUND, well(w -> w.bacteria(BacteriaResult.FOUND)));
    check(spoken, HomeRule.BACTERIA_NOT_TESTED, well(w -> w.bacteria(BacteriaResult.NOT_DONE)));
    check(spoken, HomeRule.IRON_ABOVE_BED, well(w -> w.found(Substance.IRON, mg(5.1))));
    check(
        spoken,
        HomeRule.IRON_OXIDISED,
        well(w -> w.found(Substance.IRON, mg(1)).found(Substance.DISSOLVED_IRON, mg(0.2))));
    check(spoken, HomeRule.IRON_STAINS, water(w -> w.found(Substance.IRON, mg(0.31))));
    check(spoken, HomeRule.MANGANESE_STAINS, water(w -> w.found(Substance.MANGANESE, mg(0.06))));
    List<Rule<?>> untested = water(w -> w.from(WaterSource.PRIVATE_WELL));
    check(spoken, HomeRule.IRON_NOT_TESTED, untested);
    check(spoken, HomeRule.MANGANESE_NOT_TESTED, untested);
    check(
        spoken,
        HomeRule.HYDROGEN_SULFIDE_PRESENT,
        water(w -> w.found(Substance.HYDROGEN_SULFIDE, mg(0.1))));
    check(
        spoken,
        HomeRule.CHLORINE_HARMS_RESIN,
        water(w -> w.found(Substance.FREE_CHLORINE, mg(1.1))));
    check(spoken, HomeRule.PH_OUTSIDE, water(w -> w.ph(6.4)));
    check(
        spoken,
        HomeRule.SOLIDS_HIGH,
        water(w -> w.found(Substance.TOTAL_DISSOLVED_SOLIDS, mg(751))));
    check(spoken, HomeRule.WATER_COLD, water(w -> w.temperature(Temperature.ofFahrenheit(49))));
    WaterAnalysis.Builder bare = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18));
    List<Rule<?>> nothingElse = found(bare, Household.of(3), Supply.NOT_MEASURED, 0);
    check(spoken, HomeRule.PH_NOT_TESTED, nothingElse);
    check(spoken, HomeRule.SOLIDS_NOT_TESTED, nothingElse);
    check(spoken, HomeRule.TEMPERATURE_NOT_MEASURED, nothingElse);
    check(spoken, HomeRule.SUPPLY_NOT_MEASURED, nothingElse);
    checkHome(spoken);
    assertThat(spoken).containsExactlyInAnyOrderElementsOf(EnumSet.allOf(HomeRule.class));
  }

  private static void checkHome(Set<Rule<?>> spoken) {
    Household.Builder three = Household.of(3);
    check(spoken, HomeRule.WATER_ALREADY_SOFT, found(good(3.4), three, GOOD_SUPPLY, 0));
    check(spoken, HomeRule.PRESSURE_LOW, found(good(18), three, supply(29, 20), 0));
    check(spoken, HomeRule.PRESSURE_HIGH, found(good(18), three, supply(81, 20), 0));
    check(spoken, HomeRule.SUPPLY_BELOW_PEAK, found(good(18), three, supply(60, 5), 0));
    check(spoken, HomeRule.BLENDED, found(good(18), three, GOOD_SUPPLY, 4));
    check(
        spoken,
        HomeRule.BILL_ABOVE_ALLOWANCE,
        found(
            good(18), Household.of(2).bill(new Bill(Volume.ofGallons(9_500), 60)), GOOD_SUPPLY, 0));
    check(
        spoken,
        HomeRule.HOT_WATER_ONLY,
        found(good(18), Household.of(2).softened(SoftenedShare.HOT_WATER), GOOD_SUPPLY, 0));
    check(
        spoken,
        HomeRule.FIXTURES_OUTSIDE_TABLE,
        found(good(18), Household.of(2).fixture(Fixture.WATER_CLOSET, 100), GOOD_SUPPLY, 0));
  }

  private static void check(Set<Rule<?>> spoken, HomeRule rule, List<Rule<?>> found) {
    assertThat(found).contains(rule);
    spoken.add(rule);
  }
}
