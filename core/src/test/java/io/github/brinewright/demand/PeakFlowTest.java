package io.github.brinewright.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import org.junit.jupiter.api.Test;

/** Three ways to a peak flow, and the part of it that passes the bed. */
class PeakFlowTest {
  private static final FlowRate SEVEN = FlowRate.ofGallonsPerMinute(7);

  private static Household.Builder withFixtures() {
    return Household.of(4)
        .bathrooms(2)
        .fixture(Fixture.FULL_BATHROOM, 2)
        .fixture(Fixture.KITCHEN, 1);
  }

  private static HomeLoad home(Household.Builder household, double target) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(20)).build();
    return new HomeLoad(
        Site.of("h", water, household.build()).target(Hardness.ofGrainsPerGallon(target)).build());
  }

  @Test
  void whatWasMeasuredComesFirstThenTheTableThenTheRuleOfThumb() {
    PeakFlow all = new PeakFlow(withFixtures().peakFlow(SEVEN).build());
    assertThat(all.method()).isEqualTo(PeakMethod.MEASURED);
    assertThat(all.value()).isEqualTo(SEVEN);
    assertThat(all.byMethod().keySet()).containsExactly(PeakMethod.values());

    PeakFlow table = new PeakFlow(withFixtures().build());
    assertThat(table.method()).isEqualTo(PeakMethod.FIXTURE_UNITS);
    assertThat(table.value().gallonsPerMinute())
        .as("9.7 units between 13.7 at 9 and 14.6 at 10")
        .isCloseTo(13.7 + 0.7 * 0.9, within(1e-9));

    PeakFlow thumb = new PeakFlow(Household.of(4).bathrooms(2).build());
    assertThat(thumb.method()).isEqualTo(PeakMethod.BATHROOMS);
    assertThat(thumb.value().gallonsPerMinute()).isEqualTo(9);
    assertThat(thumb.range()).isEmpty();
  }

  @Test
  void theRangeSpansAllMethods() {
    var range = new PeakFlow(withFixtures().peakFlow(SEVEN).build()).range().orElseThrow();
    assertThat(range.low()).isEqualTo(SEVEN);
    assertThat(range.high().gallonsPerMinute()).isCloseTo(14.33, within(1e-9));
  }

  @Test
  void ofHotWaterThreeQuartersPassTheBed() {
    HomeLoad thumb = home(Household.of(4).bathrooms(2).softened(SoftenedShare.HOT_WATER), 0);
    assertThat(thumb.peakFlow().gallonsPerMinute()).isEqualTo(9);
    assertThat(thumb.peakThroughBed().gallonsPerMinute()).isCloseTo(6.75, within(1e-9));

    HomeLoad table = home(withFixtures().softened(SoftenedShare.HOT_WATER), 0);
    double units = 0.75 * 9.7;
    assertThat(table.peakThroughBed().gallonsPerMinute())
        .as("7.275 units between 11.8 at 7 and 12.8 at 8")
        .isCloseTo(11.8 + (units - 7), within(1e-9));
  }

  @Test
  void whatIsBlendedPastTheBedDoesNotCount() {
    HomeLoad blended = home(Household.of(4).bathrooms(2), 5);
    assertThat(blended.peakThroughBed().gallonsPerMinute())
        .as("15 of 20 gpg are removed")
        .isCloseTo(9 * 0.75, within(1e-9));
    assertThat(blended.removedFromColdWater().grainsPerGallon()).isCloseTo(15, within(1e-9));
  }

  @Test
  void coldWaterIsNotSoftenedWhereOnlyHotWaterIs() {
    HomeLoad hot = home(Household.of(4).softened(SoftenedShare.HOT_WATER), 0);
    assertThat(hot.removedFromColdWater().grainsPerGallon()).isZero();
    assertThat(hot.removed().grainsPerGallon()).isEqualTo(20);
  }

  @Test
  void aGroupCountsLessThanItsFixtures() {
    assertThat(Fixture.FULL_BATHROOM.units())
        .isLessThan(
            Fixture.WATER_CLOSET.units() + Fixture.LAVATORY.units() + Fixture.BATHTUB.units());
    assertThat(Fixture.HALF_BATHROOM.units())
        .isLessThan(Fixture.WATER_CLOSET.units() + Fixture.LAVATORY.units());
    assertThat(Fixture.KITCHEN.units())
        .isLessThan(Fixture.KITCHEN_SINK.units() + Fixture.DISHWASHER.units());
    assertThat(Fixture.LAUNDRY.units())
        .isLessThan(Fixture.CLOTHES_WASHER.units() + Fixture.LAUNDRY_TUB.units());
  }
}
