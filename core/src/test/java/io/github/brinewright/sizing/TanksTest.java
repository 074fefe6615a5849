package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.List;
import org.junit.jupiter.api.Test;

/** More than one tank, against one tank and against closed forms. */
class TanksTest {
  private static final HomeLoad HOME =
      new HomeLoad(Homes.site(20, Household.of(6).guests(2, 20)).build());
  private static final Sizer SIZER = new Sizer(HOME);

  private static Softener twin() {
    return Homes.bed(1.5, 8, Control.METERED_AT_ONCE)
        .arrangement(Arrangement.TWIN_ALTERNATING, 2)
        .build();
  }

  private static Softener parallel(int tanks, Control control) {
    return Homes.bed(1.5, 8, control).arrangement(Arrangement.PARALLEL, tanks).build();
  }

  @Test
  void aTwinWithoutTheLoadOfItsRegenerationIsASingleBedWithoutReserveOrHardWater() {
    Design twin = Homes.only(SIZER.withoutLoadOfTwin(), twin());
    Design single = Homes.only(SIZER, Homes.bed(1.5, 8, Control.METERED_AT_ONCE).build());

    assertThat(twin.schedule().setVolume()).isEqualTo(single.schedule().setVolume());
    assertThat(twin.flow().pressureLoss()).isEqualTo(single.flow().pressureLoss());
    assertThat(twin.refill().set()).isEqualTo(single.refill().set());
    assertThat(twin.hardWater().orElseThrow().total().gallons()).isZero();
    double hard = single.hardWater().orElseThrow().whileRegenerating().gallons();
    double set = single.schedule().setVolume().orElseThrow().gallons();
    assertThat(twin.year().orElseThrow().regenerations())
        .as("what passed hard by the single bed is softened by the twin; to 1 % of the forecast")
        .isCloseTo(
            single.year().orElseThrow().regenerations() + hard / set,
            within(0.01 * single.year().orElseThrow().regenerations()));
  }

  @Test
  void theWaterOfItsRegenerationLoadsTheOtherTank() {
    Design twin = Homes.only(SIZER, twin());
    Design unloaded = Homes.only(SIZER.withoutLoadOfTwin(), twin());
    double water = twin.cycle().water().gallons();

    assertThat(twin.schedule().setVolume().orElseThrow().gallons())
        .isCloseTo(unloaded.schedule().setVolume().orElseThrow().gallons() - water, within(1e-9));
    assertThat(twin.year().orElseThrow().regenerations())
        .isGreaterThan(unloaded.year().orElseThrow().regenerations());
    assertThat(twin.hardWater().orElseThrow().total().gallons()).isZero();
  }

  @Test
  void aTwinThatItsOwnRegenerationExhaustsServesNobody() {
    Softener tiny =
        Softener.withResin("tiny", Volume.ofCubicFeet(0.1))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(4)))
            .arrangement(Arrangement.TWIN_ALTERNATING, 2)
            .build();
    Sizer hard = new Sizer(new HomeLoad(Homes.site(200, Household.of(1)).build()));
    Design design = Homes.only(hard, tiny);

    assertThat(design.feasible()).isFalse();
    assertThat(design.schedule().setVolume()).isEmpty();
    assertThat(design.year()).isEmpty();
  }

  @Test
  void tanksInParallelShareTheFlowAndTheWater() {
    Design one = Homes.only(SIZER, Homes.bed(1.5, 8, Control.METERED_AT_NIGHT).build());
    Design three = Homes.only(SIZER, parallel(3, Control.METERED_AT_NIGHT));
    Sizer third =
        new Sizer(new HomeLoad(Homes.site(20 / 3.0, Household.of(6).guests(2, 20)).build()));
    Design lighter = Homes.only(third, Homes.bed(1.5, 8, Control.METERED_AT_NIGHT).build());

    assertThat(three.flow().peak().ratioTo(one.flow().peak())).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(three.schedule().designDays())
        .as("as if the water were a third as hard")
        .isCloseTo(lighter.schedule().designDays(), within(1e-9));
    double rounds = three.year().orElseThrow().regenerations();
    assertThat(rounds)
        .as("to 0.5 %: no water passes hard while tanks take turns to regenerate")
        .isCloseTo(
            lighter.year().orElseThrow().regenerations(),
            within(0.005 * lighter.year().orElseThrow().regenerations()));
    assertThat(three.year().orElseThrow().salt().pounds())
        .isCloseTo(3 * rounds * three.refill().saltGiven().pounds(), within(1e-6));
    assertThat(three.hardWater().orElseThrow().whileRegenerating().gallons()).isZero();
  }

  @Test
  void theSimulationOfTanksAgreesWithTheirForecast() {
    for (Softener unit :
        List.of(twin(), parallel(2, Control.METERED_AT_NIGHT), parallel(2, Control.CLOCK))) {
      Design design = Homes.only(SIZER, unit);
      SimulatedYears years =
          new YearSimulation(DemandModel.of(HOME), 800, 3)
              .run(List.of(design.bed().orElseThrow()))
              .get(0);
      double forecast = design.year().orElseThrow().regenerations();

      assertThat(years.regenerations().mean())
          .as("1 %% of the forecast and sampling; %s", unit)
          .isCloseTo(forecast, within(0.012 * forecast));
      assertThat(years.salt().pounds())
          .isCloseTo(
              design.year().orElseThrow().salt().pounds(),
              within(0.012 * design.year().orElseThrow().salt().pounds()));
    }
  }

  @Test
  void tanksThatTakeTurnsHaveNoOtherControl() {
    Softener twin = twin();
    assertThatThrownBy(() -> new Setup(twin, twin.bases().get(0), Control.CLOCK))
        .hasMessageContaining("metered, at once");
  }
}
