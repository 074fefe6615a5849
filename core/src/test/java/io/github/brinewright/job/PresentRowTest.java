package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a row says of the softener in the house is what the home then has. */
class PresentRowTest {
  private static final String RESINS =
      "resin_id,dosage_lb_per_ft3,capacity_grains_per_ft3\nold,5,18000\nold,15,27000\n";

  /** A row with these cells, each written as {@code column=cell}; the prefix is left out. */
  private static JobReading reading(String... cells) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("site_id", "A");
    row.put("people", "3");
    row.put("hardness_gpg", "24");
    for (String cell : cells) {
      String[] parts = cell.split("=", 2);
      row.put("present_" + parts[0], parts[1]);
    }
    return JobFolder.read(
        JobFiles.of(Map.of(SiteCells.FILE, SiteCells.csv(row), "resins.csv", RESINS)));
  }

  private static Site site(String... cells) {
    JobReading reading = reading(cells);
    assertThat(reading.problems()).isEmpty();
    return reading.job().orElseThrow().homes().get(0).site();
  }

  private static PresentSoftener present(String... cells) {
    return site(cells).present().orElseThrow();
  }

  private static PresentControl control(String... cells) {
    String[] all = new String[cells.length + 1];
    System.arraycopy(cells, 0, all, 0, cells.length);
    all[cells.length] = "rated_grains=40000";
    return present(all).control();
  }

  private static Optional<PresentSalt> salt(String... cells) {
    String[] all = new String[cells.length + 3];
    System.arraycopy(cells, 0, all, 0, cells.length);
    all[cells.length] = "control=clock";
    all[cells.length + 1] = "days=7";
    all[cells.length + 2] = "rated_grains=40000";
    return present(all).salt();
  }

  @Test
  void aHomeOfWhichNothingIsSaidHasNoSoftener() {
    assertThat(site().present()).isEmpty();
  }

  @Test
  void aClockAndARatingAreEnough() {
    assertThat(present("control=clock", "days=7", "rated_grains=40000"))
        .isEqualTo(
            PresentSoftener.of(PresentControl.clock(7))
                .rated(HardnessAmount.ofGrains(40_000))
                .build());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mon thu",
        "THU Mon",
        "mon, thu",
        "mon,thu mon",
        "Monday Thursday",
        "lun jue",
        "Lunes. JUEVES",
        "lundi jeudi"
      })
  void weekdaysAreUnderstoodInEachLanguage(String days) {
    assertThat(control("control=weekdays", "weekdays=" + days))
        .isEqualTo(PresentControl.weekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mon tue wed thu fri sat sun",
        "lun mar mié jue vie sáb dom",
        "lun mar mie jue vie sab dom",
        "lun mar mer jeu ven sam dim"
      })
  void allWeekdaysAreKnown(String days) {
    assertThat(control("control=weekdays", "weekdays=" + days))
        .isEqualTo(PresentControl.weekdays(Set.of(DayOfWeek.values())));
  }

  @Test
  void aMeterIsSetToAVolumeOrToldTheHardness() {
    Optional<Volume> none = Optional.empty();
    Volume set = Volume.ofGallons(900);
    Hardness gpg = Hardness.ofGrainsPerGallon(24);
    HardnessAmount grains = HardnessAmount.ofGrains(30_000);

    assertThat(control("control=metered", "volume_gal=900"))
        .as("at night, unless it is said")
        .isEqualTo(new PresentControl.ByVolume(set, false, none, Optional.empty()));
    assertThat(control("control=metered_at_once", "volume_gal=900", "reserve_gal=150", "days=14"))
        .isEqualTo(
            new PresentControl.ByVolume(
                set, true, Optional.of(Volume.ofGallons(150)), Optional.of(14)));
    assertThat(control("control=Metered_At_Night", "set_hardness_gpg=24"))
        .isEqualTo(PresentControl.metered(gpg, null));
    assertThat(control("control=metered", "set_hardness_gpg=24", "set_capacity_grains=30000"))
        .isEqualTo(PresentControl.metered(gpg, grains));
  }

  @Test
  void saltIsSaidInOneOfThreeWays() {
    Duration ten = Duration.ofMinutes(10);
    Optional<FlowRate> half = Optional.of(FlowRate.ofGallonsPerMinute(0.5));

    assertThat(salt()).isEmpty();
    assertThat(salt("dosage_lb_per_ft3=8"))
        .contains(new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(8)));
    assertThat(salt("salt_lb=9")).contains(new PresentSalt.EachTime(Mass.ofPounds(9)));
    assertThat(salt("refill_min=10")).contains(new PresentSalt.Refill(ten, Optional.empty()));
    assertThat(salt("refill_min=10", "refill_gpm=0.5")).contains(new PresentSalt.Refill(ten, half));
  }

  @Test
  void everythingElseThatAVisitFindsIsKept() {
    MeterReading winter = new MeterReading(LocalDate.of(2026, 1, 3), Volume.ofGallons(12_345));
    MeterReading spring = new MeterReading(LocalDate.of(2026, 4, 2), Volume.ofGallons(18_900.5));

    PresentSoftener present =
        present(
            "control=clock",
            "days=3",
            "resin_ft3=1.5",
            "vessel_diameter_in=10",
            "vessel_height_in=54",
            "resin_id=fine-mesh",
            "age_years=12",
            "regeneration_hour=0",
            "regenerant=potassium_chloride",
            "salt_bought_lb_per_year=640",
            "hardness_after_gpg=1.5",
            "readings=2026-01-03:12345 2026-04-02:18900.5",
            "read_meter=house");

    assertThat(present)
        .isEqualTo(
            PresentSoftener.of(PresentControl.clock(3))
                .resinVolume(Volume.ofCubicFeet(1.5))
                .vessel(new Vessel(Length.ofInches(10), Length.ofInches(54)))
                .resin(ShippedResins.FINE_MESH)
                .ageYears(12)
                .hour(0)
                .regenerant(Regenerant.POTASSIUM_CHLORIDE)
                .saltBought(Mass.ofPounds(640))
                .hardnessAfter(Hardness.ofGrainsPerGallon(1.5))
                .readings(ReadMeter.HOUSE, List.of(winter, spring))
                .build());
  }

  @Test
  void aResinOfTheJobMayBeInTheBed() {
    PresentSoftener present =
        present("control=clock", "days=7", "rated_grains=40000", "resin_id=old");

    assertThat(present.resin().orElseThrow().id()).isEqualTo("old");
  }
}
