package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
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
    Softener softener =
        Softener.withRating("rated", HardnessAmount.ofGrains(32_000))
            .controls(EnumSet.of(Control.CLOCK))
            .build();
    Comparison comparison =
        PriceList.of(List.of(Offer.unpriced(softener, CurrencyUnit.USD)))
            .compare(
                Site.of("h", water, Household.of(3).build()).build(),
                Tariff.placeholder(CurrencyUnit.USD));
    Design design = comparison.candidates().get(0).design();

    assertThat(comparison.home().compensatedHardness().grainsPerGallon())
        .isCloseTo(22.4, within(HAND_ARITHMETIC));
    assertThat(comparison.home().dailyLoad().grains()).isCloseTo(5_040, within(1e-6));
    assertThat(design.basis().usable().grains()).isCloseTo(25_600, within(1e-6));
    assertThat(design.basis().usable().ratioTo(comparison.home().dailyLoad()))
        .isCloseTo(5.08, within(0.005));
    ClockSchedule clock = (ClockSchedule) design.schedule();
    assertThat(clock.daysAtDesignUse()).as("usable ÷ load, rounded down").isEqualTo(5);
    assertThat(clock.daysWithinMargin())
        .as("25,600 ÷ (1.69 × 141.1 gal × 22.4 gpg) = 4.8; 1.70 for 3 and 1.64 for 7 days")
        .isEqualTo(4);
    assertThat(clock.longestAllowed()).as("iron above 0.3 mg/L").isEqualTo(7);
    assertThat(clock.setDays()).isEqualTo(4);
    assertThat(design.basis().saltPerRegeneration().pounds())
        .isCloseTo(7.68, within(HAND_ARITHMETIC));
    assertThat(Minutes.of(design.refill().exact())).isCloseTo(5.12, within(HAND_ARITHMETIC));
  }
}
