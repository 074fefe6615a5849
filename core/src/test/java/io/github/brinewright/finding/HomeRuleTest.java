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
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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

  private static List<String> codes(
      WaterAnalysis.Builder water, Household.Builder people, Supply supply, double target) {
    Site site =
        Site.of("h", water.build(), people.build())
            .supply(supply)
            .target(Hardness.ofGrainsPerGallon(target))
            .build();
    return HomeRule.findings(new HomeLoad(site)).stream().map(Finding::code).toList();
  }

  private static List<String> water(Consumer<WaterAnalysis.Builder> change) {
    WaterAnalysis.Builder water = good(18);
    change.accept(water);
    return codes(water, Household.of(3), GOOD_SUPPLY, 0);
  }

  private static List<String> well(Consumer<WaterAnalysis.Builder> change) {
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
    Set<String> spoken = new TreeSet<>();
    check(spoken, "bacteria-found", well(w -> w.bacteria(BacteriaResult.FOUND)));
    check(spoken, "bacteria-not-tested", well(w -> w.bacteria(BacteriaResult.NOT_DONE)));
    check(spoken, "iron-above-bed", well(w -> w.found(Substance.IRON, mg(5.1))));
    check(
        spoken,
        "iron-oxidised",
        well(w -> w.found(Substance.IRON, mg(1)).found(Substance.DISSOLVED_IRON, mg(0.2))));
    check(spoken, "iron-stains", water(w -> w.found(Substance.IRON, mg(0.31))));
    check(spoken, "manganese-stains", water(w -> w.found(Substance.MANGANESE, mg(0.06))));
    List<String> untested = water(w -> w.from(WaterSource.PRIVATE_WELL));
    check(spoken, "iron-not-tested", untested);
    check(spoken, "manganese-not-tested", untested);
    check(
        spoken,
        "hydrogen-sulfide-present",
        water(w -> w.found(Substance.HYDROGEN_SULFIDE, mg(0.1))));
    check(spoken, "chlorine-harms-resin", water(w -> w.found(Substance.FREE_CHLORINE, mg(1.1))));
    check(spoken, "ph-outside", water(w -> w.ph(6.4)));
    check(spoken, "solids-high", water(w -> w.found(Substance.TOTAL_DISSOLVED_SOLIDS, mg(751))));
    check(spoken, "water-cold", water(w -> w.temperature(Temperature.ofFahrenheit(49))));
    WaterAnalysis.Builder bare = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18));
    List<String> nothingElse = codes(bare, Household.of(3), Supply.NOT_MEASURED, 0);
    check(spoken, "ph-not-tested", nothingElse);
    check(spoken, "solids-not-tested", nothingElse);
    check(spoken, "temperature-not-measured", nothingElse);
    check(spoken, "supply-not-measured", nothingElse);
    checkHome(spoken);
    assertThat(spoken)
        .containsExactlyInAnyOrderElementsOf(
            EnumSet.allOf(HomeRule.class).stream().map(Rule::code).toList());
  }

  private static void checkHome(Set<String> spoken) {
    Household.Builder three = Household.of(3);
    check(spoken, "water-already-soft", codes(good(3.4), three, GOOD_SUPPLY, 0));
    check(spoken, "pressure-low", codes(good(18), three, supply(29, 20), 0));
    check(spoken, "pressure-high", codes(good(18), three, supply(81, 20), 0));
    check(spoken, "supply-below-peak", codes(good(18), three, supply(60, 5), 0));
    check(spoken, "blended", codes(good(18), three, GOOD_SUPPLY, 4));
    check(
        spoken,
        "bill-above-allowance",
        codes(
            good(18), Household.of(2).bill(new Bill(Volume.ofGallons(9_500), 60)), GOOD_SUPPLY, 0));
    check(
        spoken,
        "hot-water-only",
        codes(good(18), Household.of(2).softened(SoftenedShare.HOT_WATER), GOOD_SUPPLY, 0));
    check(
        spoken,
        "fixtures-outside-table",
        codes(good(18), Household.of(2).fixture(Fixture.WATER_CLOSET, 100), GOOD_SUPPLY, 0));
  }

  private static void check(Set<String> spoken, String code, List<String> codes) {
    assertThat(codes).contains(code);
    spoken.add(code);
  }
}
