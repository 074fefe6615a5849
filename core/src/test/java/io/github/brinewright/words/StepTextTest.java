package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.StepKind;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The words choose the decimals of a step; nothing below them does. */
class StepTextTest {
  private final Wording words = Wording.of(Locale.US, UnitSystem.METRIC);

  private String fill(String text, Figure... figures) {
    return StepText.fill(text, List.of(figures), words::number);
  }

  @Test
  void aPlaceMayAskForDecimalsAndForAUnit() {
    Figure volume = Figure.of(Volume.ofCubicFeet(1.25));

    assertThat(fill("{1} and {0;3}", Figure.of(Mass.ofKilograms(2)), Figure.of(7)))
        .isEqualTo("7 and 2.000");
    assertThat(fill("{0;2 ft3} ÷ {0;0}", volume)).isEqualTo("1.25 ÷ 35");
    assertThat(fill("{0;1}", Figure.of(Duration.ofSeconds(90)))).isEqualTo("1.5");
    assertThat(fill("{0;1}", Figure.days(2.46))).isEqualTo("2.5");
  }

  @Test
  void aTextThatAsksForWhatCannotBeIsRefused() {
    assertThatThrownBy(() -> fill("{0;1 furlong}", Figure.of(Mass.ofPounds(1))))
        .hasMessageContaining("furlong");
    assertThatThrownBy(() -> fill("{0;1}", Figure.of("a name"))).hasMessageContaining("a name");
  }

  /** 18 gpg, 3 people, 1.5 ft3 of standard gel at 6 lb: as printed before words chose decimals. */
  @Test
  void stepsArePrintedAsPreciselyAsTheyDeserve() {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    Site site = Site.of("h", water, Household.of(3).build()).build();
    Softener softener = Softener.withResin("u", Volume.ofCubicFeet(1.5)).build();
    Design design = new Sizer(new HomeLoad(site)).design(Setup.of(softener).get(0));

    Map<StepKind, String> printed =
        design.steps().stream()
            .collect(
                Collectors.toMap(
                    step -> step.kind(),
                    step -> words.step(step).numbers() + " → " + words.step(step).result()));
    assertThat(printed)
        .containsEntry(StepKind.USABLE_FROM_CURVE, "0.90 × 19,756 × 1.50 → 26,671 grains (1,728 g)")
        .containsEntry(StepKind.SALT_FROM_DOSAGE, "6.0 × 1.50 × 1.0000 → 9.00 lb (4.08 kg)")
        .containsEntry(StepKind.REFILL_MINUTES, "3.000 ÷ 0.50 → 6.00 min")
        .containsEntry(StepKind.SALT_GIVEN, "6.0 × 0.50 × 3.00 → 9.00 lb (4.08 kg)")
        .containsEntry(StepKind.BED_DEPTH, "1.50 ÷ 0.545 × 12 → 33.0 in (838.3 mm)")
        .containsEntry(StepKind.SODIUM_ADDED, "7.864 × 18.0 → 142 mg/L");
  }
}
