package io.github.brinewright.regeneration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Regenerant;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A cycle as a control is set to it. */
class CycleTest {
  private static Cycle cycle(double cubicFeet, double refillMinutes) {
    BrineRefill refill =
        BrineRefill.asSet(
            Regenerant.SODIUM_CHLORIDE,
            FlowRate.ofGallonsPerMinute(0.5),
            Minutes.toDuration(refillMinutes),
            Temperature.ofFahrenheit(60));
    return new Cycle(
        CyclePlan.EVERYDAY, Volume.ofCubicFeet(cubicFeet), FlowRate.ofGallonsPerMinute(3), refill);
  }

  private static double minutes(Cycle cycle, CycleStep.Kind kind) {
    return Minutes.of(cycle.part(kind).time());
  }

  /** By hand: 1.5 ft3; 3 gal of water, 3.38 of brine at 0.3 gpm; 22.5 gal at 0.6 gpm. */
  @Test
  void brineDrawAndSlowRinseAreWholeMinutesRoundedUp() {
    Cycle cycle = cycle(1.5, 6);

    assertThat(cycle.part(CycleStep.Kind.BRINE_DRAW).time()).isEqualTo(Duration.ofMinutes(12));
    assertThat(cycle.part(CycleStep.Kind.SLOW_RINSE).time()).isEqualTo(Duration.ofMinutes(38));
    assertThat(cycle.part(CycleStep.Kind.BRINE_DRAW).water().gallons())
        .isCloseTo(7.2, within(1e-9));
    assertThat(cycle.part(CycleStep.Kind.SLOW_RINSE).water().gallons())
        .isCloseTo(22.8, within(1e-9));
  }

  @Test
  void aStepThatIsWholeAlreadyIsNotLengthened() {
    Cycle saving =
        new Cycle(
            CyclePlan.WATER_SAVING,
            Volume.ofCubicFeet(0.7),
            FlowRate.ofGallonsPerMinute(2),
            BrineRefill.asSet(
                Regenerant.SODIUM_CHLORIDE,
                FlowRate.ofGallonsPerMinute(0.5),
                Duration.ofMinutes(6),
                Temperature.ofFahrenheit(60)));

    assertThat(minutes(saving, CycleStep.Kind.SLOW_RINSE)).isEqualTo(25);
  }

  @Property(tries = 300)
  void theWaterOfTheCycleIsTheSumOfItsMinutesTimesTheirFlows(
      @ForAll @DoubleRange(min = 0.5, max = 6) double cubicFeet,
      @ForAll @DoubleRange(min = 1, max = 60) double refill) {
    Cycle cycle = cycle(cubicFeet, refill);
    double sum =
        cycle.parts().stream()
            .mapToDouble(part -> Minutes.of(part.time()) * part.flow().gallonsPerMinute())
            .sum();

    assertThat(cycle.water().gallons()).isCloseTo(sum, within(1e-6));
    for (CycleStep.Kind kind : List.of(CycleStep.Kind.BRINE_DRAW, CycleStep.Kind.SLOW_RINSE)) {
      assertThat(minutes(cycle, kind) % 1).isZero();
    }
    assertThat(Minutes.of(cycle.drawAndRinse()))
        .isCloseTo(
            minutes(cycle, CycleStep.Kind.BRINE_DRAW) + minutes(cycle, CycleStep.Kind.SLOW_RINSE),
            within(1e-9));
    assertThat(cycle.drawAndRinseWater().gallons())
        .isCloseTo(
            Minutes.of(cycle.drawAndRinse())
                * cycle.part(CycleStep.Kind.SLOW_RINSE).flow().gallonsPerMinute(),
            within(1e-6));
  }

  /** 10 + 12 + 38 + 10 min, then the refill. */
  @Test
  void eachStepBeginsWhenTheOneBeforeItEndsPastMidnightToo() {
    assertThat(cycle(1.5, 6).begins(LocalTime.of(23, 0)))
        .containsExactly(
            LocalTime.of(23, 0),
            LocalTime.of(23, 10),
            LocalTime.of(23, 22),
            LocalTime.of(0, 0),
            LocalTime.of(0, 10));
  }
}
