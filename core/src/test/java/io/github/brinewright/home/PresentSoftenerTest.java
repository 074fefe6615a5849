package io.github.brinewright.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a visit may find of the softener in the house, and what it must know at the least. */
class PresentSoftenerTest {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 3);
  private static final HardnessAmount RATED = HardnessAmount.ofGrains(40_000);

  private static PresentSoftener.Builder clock() {
    return PresentSoftener.of(PresentControl.clock(7));
  }

  private static MeterReading reading(int day, double gallons) {
    return new MeterReading(DAY.plusDays(day), Volume.ofGallons(gallons));
  }

  @Test
  void aControlAndARatingAreEnough() {
    PresentSoftener present = clock().rated(RATED).build();

    assertThat(present.rated()).contains(RATED);
    assertThat(present.control()).isEqualTo(new PresentControl.Clock(7));
    assertThat(present.salt()).isEmpty();
    assertThat(present.resin()).isEmpty();
    assertThat(present.ageYears()).isEmpty();
    assertThat(present.hour()).isEmpty();
    assertThat(present.saltBought()).isEmpty();
    assertThat(present.hardnessAfter()).isEmpty();
    assertThat(present.readings()).isEmpty();
    assertThat(present.regenerant()).isEqualTo(Regenerant.SODIUM_CHLORIDE);
  }

  @Test
  void aBedOrAVesselDoesInsteadOfARating() {
    Vessel vessel = new Vessel(Length.ofInches(9), Length.ofInches(48));

    assertThat(clock().resinVolume(Volume.ofCubicFeet(1)).build().rated()).isEmpty();
    assertThat(clock().vessel(vessel).build().vessel()).contains(vessel);
    assertThatThrownBy(clock()::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("neither rating, resin volume nor vessel")
        .hasMessageContaining("give one of them");
  }

  @Test
  void weekdaysAreKeptAsTheyWereWhenTheyWereNamed() {
    Set<DayOfWeek> days = EnumSet.of(DayOfWeek.MONDAY);
    PresentControl.Weekdays control = new PresentControl.Weekdays(days);
    days.add(DayOfWeek.FRIDAY);

    assertThat(control.days()).containsExactly(DayOfWeek.MONDAY);
  }

  @Test
  void aMeterWaitsForTheNightUnlessItIsSaidOtherwise() {
    List<PresentControl> meters =
        List.of(
            PresentControl.metered(Volume.ofGallons(900)),
            PresentControl.metered(Hardness.ofGrainsPerGallon(24), RATED));

    assertThat(meters)
        .allSatisfy(meter -> assertThat(((PresentControl.Metered) meter).atOnce()).isFalse())
        .allSatisfy(meter -> assertThat(((PresentControl.Metered) meter).longestDays()).isEmpty());
  }

  @Test
  void readingsAreKeptInTheirOrder() {
    List<MeterReading> read = new ArrayList<>(List.of(reading(0, 100), reading(90, 100)));
    PresentSoftener present = clock().rated(RATED).readings(ReadMeter.HOUSE, read).build();
    read.clear();

    assertThat(present.readings()).containsExactly(reading(0, 100), reading(90, 100));
    assertThat(present.readMeter()).isEqualTo(ReadMeter.HOUSE);
  }

  @ParameterizedTest
  @CsvSource({
    "0,100,0,100,put them in the order of their dates",
    "5,100,4,200,put them in the order of their dates",
    "0,100,9,99,read it again"
  })
  void readingsThatCannotBeAreRefused(int day, double stood, int later, double then, String words) {
    List<MeterReading> read = List.of(reading(day, stood), reading(later, then));

    assertThatThrownBy(() -> clock().readings(ReadMeter.SOFTENER, read))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(words);
  }

  @Test
  void oneReadingAloneSaysNothingOfUse() {
    assertThatThrownBy(() -> clock().readings(ReadMeter.SOFTENER, List.of(reading(0, 100))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("add another");
  }

  @Test
  void aHomeKeepsItsSoftenerWhenItsPeopleOrItsWaterChange() {
    PresentSoftener present = clock().rated(RATED).build();
    Site site =
        Site.of(
                "A",
                WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(20)).build(),
                Household.of(3).build())
            .present(present)
            .build();

    assertThat(site.withPeople(5).present()).contains(present);
    assertThat(site.withHardness(Hardness.ofGrainsPerGallon(30)).present()).contains(present);
  }
}
