package io.github.brinewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.regeneration.DrainFlow;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.ShippedResins;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What must hold for any flow, and what publications say of its size. */
class FlowPropertiesTest {
  private static final PackedBed BED =
      new PackedBed(Length.ofFeet(2.5), Length.ofMillimetres(0.6), 0.38);

  private static Pressure loss(double gpmPerSquareFoot, double fahrenheit) {
    return BED.loss(
        FlowVelocity.ofGallonsPerMinutePerSquareFoot(gpmPerSquareFoot),
        Fluid.water(Temperature.ofFahrenheit(fahrenheit)));
  }

  @Property
  void pressureLossGrowsWithFlowAndWithCold(
      @ForAll @DoubleRange(min = 1, max = 30) double flow,
      @ForAll @DoubleRange(min = 34, max = 100) double fahrenheit) {
    assertThat(loss(flow * 1.05, fahrenheit)).isGreaterThan(loss(flow, fahrenheit));
    assertThat(loss(flow, fahrenheit - 1)).isGreaterThan(loss(flow, fahrenheit));
  }

  @Property
  void colderWaterNeedsLessBackwash(@ForAll @DoubleRange(min = 34, max = 100) double fahrenheit) {
    assertThat(backwash(fahrenheit - 1)).isLessThan(backwash(fahrenheit));
  }

  private static FlowVelocity backwash(double fahrenheit) {
    return new Backwash(
            ShippedResins.STANDARD_GEL,
            Temperature.ofFahrenheit(fahrenheit),
            Backwash.USUAL_EXPANSION)
        .velocity();
  }

  @Test
  void theLossFollowsTheViscosityAlmostInProportion() {
    double viscosities = 1.3069 / 1.0020;

    assertThat(loss(8, 50).ratioTo(loss(8, 68)))
        .as("Korson et al. (1969): viscosity at 10 and 20 C; the second term of Ergun dampens it")
        .isBetween(1 + 0.85 * (viscosities - 1), viscosities);
  }

  @Test
  void backwashLiesWithinThePublishedRange() {
    assertThat(backwash(65).gallonsPerMinutePerSquareFoot())
        .as("MIL-HDBK-1164 11.5.8.1: 6 to 8 gpm/ft2")
        .isBetween(6.0, 8.0);
  }

  @Test
  void slowRinseLiesWithinThePublishedRange() {
    for (CyclePlan plan : CyclePlan.values()) {
      assertThat(plan.slowRinseGallonsPerCubicFoot())
          .as("UFC 3-240-13FN 2-2.5.1.2.3: 7.5 to 22.5 gal/ft3")
          .isBetween(7.5, 22.5);
    }
    assertThat(CycleStep.Kind.values()).hasSize(5);
  }

  @Test
  void theSmallestDrainThatServesIsChosen() {
    List<FlowRate> stocked = List.of(gpm(3), gpm(1.5), gpm(2.4));
    assertThat(new DrainFlow(gpm(2), stocked).chosen()).isEqualTo(gpm(2.4));
    assertThat(new DrainFlow(gpm(4), stocked).chosen()).isEqualTo(gpm(3));
    assertThat(new DrainFlow(gpm(4), stocked).enough()).isFalse();
    assertThat(new DrainFlow(gpm(4), List.of()).chosen()).isEqualTo(gpm(4));
  }

  private static FlowRate gpm(double value) {
    return FlowRate.ofGallonsPerMinute(value);
  }

  @Test
  void rangesAreEnforced() {
    assertThatThrownBy(() -> Fluid.water(Temperature.ofCelsius(61)))
        .hasMessageContaining("from 0.0 °C (32.0 °F) to 60.0 °C");
    assertThatThrownBy(() -> new PackedBed(Length.ofFeet(2), Length.ofMillimetres(0.6), 0.7))
        .hasMessageContaining("voidage");
  }
}
