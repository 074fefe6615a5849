package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.Household;
import io.github.brinewright.regeneration.Control;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Site;
import io.github.brinewright.sizing.SoftenerUnit;
import io.github.brinewright.units.Concentration;
import io.github.brinewright.units.Hardness;
import io.github.brinewright.units.HardnessAmount;
import io.github.brinewright.units.Minutes;
import io.github.brinewright.water.Substance;
import io.github.brinewright.water.WaterAnalysis;
import java.util.EnumSet;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** The chain of figures as the trade works it by hand; every figure common practice. */
class PracticeChainTest {
  private static final double HAND_ARITHMETIC = 1e-9;

  @Test
  void fromTestedWaterToRefillMinutes() {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18))
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(0.8))
            .found(Substance.MANGANESE, Concentration.ofMilligramsPerLitre(0.2))
            .build();
    SoftenerUnit unit =
        SoftenerUnit.withRating("rated", HardnessAmount.ofGrains(32_000))
            .controls(EnumSet.of(Control.CLOCK))
            .build();
    Comparison comparison =
        Comparer.of(List.of(Offer.unpriced(unit, CurrencyUnit.USD)))
            .compare(
                Site.of("h", water, Household.of(3).build()), Tariff.placeholder(CurrencyUnit.USD));
    Design design = comparison.options().get(0).design();

    assertThat(comparison.home().compensatedHardness().grainsPerGallon())
        .isCloseTo(22.4, within(HAND_ARITHMETIC));
    assertThat(comparison.home().dailyLoad().grains()).isCloseTo(5_040, within(1e-6));
    assertThat(design.basis().usable().grains()).isCloseTo(25_600, within(1e-6));
    assertThat(design.basis().usable().ratioTo(comparison.home().dailyLoad()))
        .isCloseTo(5.08, within(0.005));
    assertThat(design.schedule().designDays()).isEqualTo(5);
    assertThat(design.basis().saltPerRegeneration().pounds())
        .isCloseTo(7.68, within(HAND_ARITHMETIC));
    assertThat(Minutes.of(design.refill().exact())).isCloseTo(5.12, within(HAND_ARITHMETIC));
  }
}
