package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TapIron;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import java.util.List;
import java.util.function.Consumer;

/** A home without trouble, changed by the test in one thing. */
final class TriedHome {
  private final WaterAnalysis.Builder water;
  private Consumer<Site.Builder> change = site -> {};
  private Household household = Household.of(3).build();

  private TriedHome(double gpg) {
    water = WaterAnalysis.ofHardness(gpg(gpg));
  }

  /** Of whose water nothing but the hardness is known. */
  static TriedHome bare(double gpg) {
    return new TriedHome(gpg);
  }

  /** On a public supply of some hardness. */
  static TriedHome city(double gpg) {
    return bare(gpg)
        .water(
            water ->
                water
                    .hardnessBy(HardnessMethod.LABORATORY)
                    .ph(7.4)
                    .temperature(Temperature.ofFahrenheit(55))
                    .found(Substance.TOTAL_DISSOLVED_SOLIDS, mg(300)));
  }

  /** On a well of some hardness that was tested for all that decides. */
  static TriedHome well(double gpg) {
    return city(gpg)
        .water(
            water ->
                water
                    .from(WaterSource.PRIVATE_WELL)
                    .bacteria(BacteriaResult.NONE_FOUND)
                    .ironAtTap(TapIron.CLEAR)
                    .found(Substance.IRON, mg(0.1))
                    .found(Substance.MANGANESE, mg(0.01))
                    .found(Substance.NITRATE, mg(1)));
  }

  static Hardness gpg(double value) {
    return Hardness.ofGrainsPerGallon(value);
  }

  static Concentration mg(double perLitre) {
    return Concentration.ofMilligramsPerLitre(perLitre);
  }

  TriedHome water(Consumer<WaterAnalysis.Builder> changed) {
    changed.accept(water);
    return this;
  }

  TriedHome with(Substance substance, double milligrams) {
    return water(analysis -> analysis.found(substance, mg(milligrams)));
  }

  TriedHome site(Consumer<Site.Builder> changed) {
    change = change.andThen(changed);
    return this;
  }

  TriedHome people(Household.Builder builder) {
    household = builder.build();
    return this;
  }

  HomeLoad home() {
    Site.Builder site =
        Site.of("h", water.build(), household)
            .supply(Supply.of(Pressure.ofPsi(60), FlowRate.ofGallonsPerMinute(20)));
    change.accept(site);
    return new HomeLoad(site.build());
  }

  /** What the usual rules find besides the verdict. */
  List<Rule<?>> found() {
    return RuleBook.USUAL.findings(home()).stream().<Rule<?>>map(Finding::rule).toList();
  }

  Verdict verdict() {
    return Verdict.of(home());
  }
}
