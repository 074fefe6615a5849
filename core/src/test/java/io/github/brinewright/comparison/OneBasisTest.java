package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.CapacityBasis;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Interval, salt, refill and yearly salt of any candidate come from one capacity basis. */
class OneBasisTest {
  @Property
  void ofARatedUnit(
      @ForAll @DoubleRange(min = 5_000, max = 300_000) double rated,
      @ForAll @DoubleRange(min = 3, max = 80) double gpg,
      @ForAll @IntRange(min = 1, max = 9) int people) {
    check(
        Softener.withRating("u", HardnessAmount.ofGrains(rated))
            .controls(EnumSet.allOf(Control.class))
            .build(),
        gpg,
        people);
  }

  @Property
  void ofAUnitWithADosageCurve(
      @ForAll @DoubleRange(min = 0.3, max = 6) double cubicFeet,
      @ForAll @DoubleRange(min = 3, max = 20) double dosage,
      @ForAll @DoubleRange(min = 3, max = 80) double gpg,
      @ForAll @IntRange(min = 1, max = 9) int people) {
    check(
        Softener.withResin("u", Volume.ofCubicFeet(cubicFeet))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(dosage)))
            .controls(EnumSet.allOf(Control.class))
            .build(),
        gpg,
        people);
  }

  private static void check(Softener softener, double gpg, int people) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg)).build();
    Sizer sizer =
        new Sizer(new HomeLoad(Site.of("h", water, Household.of(people).build()).build()));
    Setup.of(softener).forEach(setup -> check(sizer.design(setup)));
  }

  private static void check(Design design) {
    CapacityBasis basis = design.basis();
    double salt = basis.saltPerRegeneration().pounds();
    assertThat(basis.efficiency().grainsPerPound())
        .isCloseTo(basis.usable().grains() / salt, within(1e-6));
    assertThat(Minutes.of(design.refill().exact()) * 0.5 * 3).isCloseTo(salt, within(1e-6));
    assertThat(design.refill().saltGiven().pounds())
        .isBetween(salt - 1e-6, salt + 0.1 * 0.5 * 3 + 1e-6);
    assertThat(design.year().isPresent()).isEqualTo(design.feasible());
    design
        .year()
        .ifPresent(
            year ->
                assertThat(year.salt().pounds())
                    .isCloseTo(
                        design.refill().saltGiven().pounds() * year.regenerations(), within(1e-6)));
    double days = design.schedule().designDays();
    double served = days * design.home().dailyLoad().grains();
    if (design.schedule().feasible()) {
      assertThat(served).isLessThanOrEqualTo(basis.usable().grains() * (1 + 1e-9));
    }
  }
}
