package io.github.brinewright.home;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is stated of a home holds for the water that enters the softener, and for what-ifs. */
class SiteAsStatedTest {
  private static final WaterAnalysis RAW =
      WaterAnalysis.ofHardness(gpg(20))
          .from(WaterSource.PRIVATE_WELL)
          .found(Substance.IRON, mg(6))
          .found(Substance.DISSOLVED_IRON, mg(2))
          .found(Substance.MANGANESE, mg(0.4))
          .found(Substance.SODIUM, mg(30))
          .ironAtTap(TapIron.CLOUDY)
          .ph(6.1)
          .build();

  private static Hardness gpg(double grains) {
    return Hardness.ofGrainsPerGallon(grains);
  }

  private static Concentration mg(double milligrams) {
    return Concentration.ofMilligramsPerLitre(milligrams);
  }

  private static Site treated(TreatedWater water) {
    return Site.of("A", RAW, Household.of(3).peakFlow(FlowRate.ofGallonsPerMinute(9)).build())
        .treated(water)
        .place(Place.of("CA-ON"))
        .brineTankTemperature(Temperature.ofFahrenheit(45))
        .softerWanted(true)
        .build();
  }

  @Test
  void withoutATreatmentTheRawWaterIsSoftened() {
    Site site = Site.of("A", RAW, Household.of(3).build()).build();

    assertThat(site.softenedWater()).isEqualTo(RAW);
    assertThat(site.treated()).isEmpty();
  }

  @Test
  void whatTheTreatmentLeavesReplacesTheRawWater() {
    LabResult left = LabResult.below(mg(0.1));
    WaterAnalysis after =
        treated(
                TreatedWater.ofHardness(gpg(26))
                    .withIron(left)
                    .withManganese(LabResult.NOT_DETECTED)
                    .withPh(7.4))
            .softenedWater();

    assertThat(after.hardness()).isEqualTo(gpg(26));
    assertThat(after.result(Substance.IRON)).contains(left);
    assertThat(after.found(Substance.IRON)).contains(mg(0.1));
    assertThat(after.found(Substance.DISSOLVED_IRON)).as("said of the raw iron").isEmpty();
    assertThat(after.ironAtTap()).isEmpty();
    assertThat(after.found(Substance.MANGANESE)).contains(mg(0));
    assertThat(after.ph()).hasValue(7.4);
    assertThat(after.found(Substance.SODIUM)).as("not stated").contains(mg(30));
    assertThat(after.source()).isEqualTo(WaterSource.PRIVATE_WELL);
  }

  @Test
  void whatIsNotStatedStaysAsItWas() {
    WaterAnalysis after = treated(TreatedWater.ofHardness(gpg(26))).softenedWater();

    assertThat(after).isEqualTo(RAW.withHardness(gpg(26)));
  }

  @Test
  void aHarderWellIsHarderAfterItsTreatmentByAsMuch() {
    Site harder = treated(TreatedWater.ofHardness(gpg(26)).withPh(7)).withHardness(gpg(23));

    assertThat(harder.water().hardness()).isEqualTo(gpg(23));
    assertThat(harder.softenedWater().hardness()).isEqualTo(gpg(29));
    assertThat(harder.softenedWater().ph()).hasValue(7);
  }

  @Test
  void otherPeopleChangeNothingElse() {
    Site before = treated(TreatedWater.ofHardness(gpg(26)));
    Site after = before.withPeople(5);

    assertThat(after.household().peakFlow()).isEqualTo(before.household().peakFlow());
    assertThat(after.withPeople(3)).isEqualTo(before);
    assertThat(after.place()).isEqualTo(Place.of("CA-ON"));
    assertThat(after.softerWanted()).isTrue();
    assertThat(after.brineTankTemperature()).isEqualTo(Temperature.ofFahrenheit(45));
  }

  @Test
  void whatWasReadAndBoughtBelongsToThePeopleWhoLivedThere() {
    MeterReading first = new MeterReading(LocalDate.of(2026, 1, 5), Volume.ofGallons(100));
    MeterReading second = new MeterReading(LocalDate.of(2026, 4, 5), Volume.ofGallons(9_000));
    PresentSoftener bare =
        PresentSoftener.of(PresentControl.clock(7)).resinVolume(Volume.ofCubicFeet(1)).build();
    PresentSoftener read =
        PresentSoftener.of(PresentControl.clock(7))
            .resinVolume(Volume.ofCubicFeet(1))
            .saltBought(Mass.ofPounds(300))
            .readings(ReadMeter.HOUSE, List.of(first, second))
            .build();
    KnownUse known = new KnownUse(Volume.ofGallons(120), 0.07);
    Site site = Site.of("A", RAW, Household.of(3).build()).present(read).build();

    assertThat(site.withPeople(4).present()).contains(bare);
    assertThat(site.withKnownUse(known).present()).contains(read);
    assertThat(site.withKnownUse(known).household().knownUse()).contains(known);
    assertThat(site.withKnownUse(known).withPeople(6).household().knownUse())
        .contains(new KnownUse(Volume.ofGallons(240), 0.07));
  }

  @Test
  void aKnownUseChangesNothingElse() {
    Site site = treated(TreatedWater.ofHardness(gpg(26)));
    KnownUse known = new KnownUse(Volume.ofGallons(120), 0.07);
    Household same =
        Household.of(3)
            .peakFlow(FlowRate.ofGallonsPerMinute(9))
            .bathrooms(site.household().bathrooms())
            .knownUse(known)
            .build();
    assertThat(site.withKnownUse(known).household()).isEqualTo(same);
    assertThat(site.withKnownUse(known).softenedWater()).isEqualTo(site.softenedWater());
    Bill bill = new Bill(Volume.ofGallons(9_000), 60);
    Household billed = Household.of(3).bill(bill).guests(2, 9).away(8).build();
    assertThat(billed.withKnownUse(known).bill()).contains(bill);
    assertThat(billed.withKnownUse(known).guestDays()).isEqualTo(9);
    assertThat(billed.withKnownUse(known).awayDays()).isEqualTo(8);
  }

  @ParameterizedTest
  @CsvSource({
    "US-CA,US,true",
    "US,US,true",
    "US-CA,US-CA,true",
    "US,US-CA,false",
    "US-CA,US-NV,false",
    "CA,US-CA,false",
    "US-CA,CA,false",
    "CA-ON,CA,true"
  })
  void aPartLiesWithinItsCountry(String place, String other, boolean within) {
    assertThat(Place.of(place).isWithin(Place.of(other))).isEqualTo(within);
  }

  @Test
  void aMethodHasItsStandardDeviation() {
    assertThat(HardnessMethod.LABORATORY.standardDeviation(gpg(20))).isEqualTo(gpg(1));
    assertThat(HardnessMethod.DROP_TEST.standardDeviation(gpg(40))).isEqualTo(gpg(1));
    assertThat(HardnessMethod.STRIP.standardDeviation(gpg(20))).isEqualTo(gpg(4));
    assertThat(HardnessMethod.UTILITY_AVERAGE.standardDeviation(gpg(20))).isEqualTo(gpg(3));
    assertThat(HardnessMethod.STRIP.measured()).isTrue();
    assertThat(HardnessMethod.UTILITY_AVERAGE.measured()).isFalse();
  }
}
