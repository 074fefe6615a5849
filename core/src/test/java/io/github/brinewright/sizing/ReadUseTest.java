package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.ReadInterval;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.demand.UseFromReadings;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.ReadUse.Outcome;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a meter or the salt of a present softener says of the use of the home. */
class ReadUseTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final int DAYS = 84;
  private static final PresentControl CLOCK = PresentControl.clock(7);
  private static final PresentControl NIGHT = PresentControl.metered(gal(1_000));

  private static Volume gal(double gallons) {
    return Volume.ofGallons(gallons);
  }

  private static PresentSoftener.Builder softener(PresentControl control) {
    return PresentSoftener.of(control).rated(HardnessAmount.ofGrains(40_000));
  }

  private static List<MeterReading> counted(int days, Volume volume) {
    return List.of(
        new MeterReading(FIRST, gal(5_000)),
        new MeterReading(FIRST.plusDays(days), gal(5_000).plus(volume)));
  }

  private static Site.Builder home(Household.Builder household) {
    return Homes.site(20, household);
  }

  private static ReadUse read(
      Site.Builder home, PresentControl control, ReadMeter meter, Volume v) {
    PresentSoftener present = softener(control).readings(meter, counted(DAYS, v)).build();
    return ReadUse.of(home.present(present).build());
  }

  private static Volume throughSoftener(Site.Builder home, Volume counted) {
    return read(home, CLOCK, ReadMeter.SOFTENER, counted).use().orElseThrow().mean();
  }

  /** What the statistics make of so many gallons used by three people. */
  private static Volume usedAtHome(double gallons) {
    HomeLoad before = new HomeLoad(home(Household.of(3)).build());
    return UseFromReadings.of(
            before.use().expected(),
            before.use().likely(),
            List.of(new ReadInterval(FIRST, DAYS, gal(gallons))))
        .mean();
  }

  private static void same(Volume one, Volume other) {
    assertThat(one.gallons()).isCloseTo(other.gallons(), within(1e-6));
  }

  @Test
  void aSoftenersMeterCountsTheUseOfAHomeThatIsSoftenedInFull() {
    same(throughSoftener(home(Household.of(3)), gal(18_000)), usedAtHome(18_000));
  }

  @Test
  void litresCountAsLitres() {
    Volume litres = Volume.ofLitres(18_000 * 3.785411784);
    same(throughSoftener(home(Household.of(3)), litres), usedAtHome(18_000));
  }

  @Test
  void whereHotWaterAloneIsSoftenedTheHomeUsesMoreThanTheMeterCounts() {
    Household.Builder hot = Household.of(3).softened(SoftenedShare.HOT_WATER);
    same(throughSoftener(home(hot), gal(6_300)), usedAtHome(18_000));
  }

  @Test
  void whatIsBlendedBackHasPassedNoMeter() {
    Site.Builder blended = home(Household.of(3)).target(Hardness.ofGrainsPerGallon(4));
    same(throughSoftener(blended, gal(0.8 * 18_000)), usedAtHome(18_000));
  }

  @Test
  void aHousesMeterCountsTheRegenerationsOfAClockToo() {
    FoundSoftener found = FoundSoftener.of(softener(CLOCK).build(), load());
    double regenerations = DAYS / 7.0 * found.cycle().water().gallons();
    assertThat(regenerations)
        .as("twelve of them take some hundred gallons")
        .isBetween(300.0, 2_000.0);
    ReadUse read = read(home(Household.of(3)), CLOCK, ReadMeter.HOUSE, gal(18_000 + regenerations));
    same(read.use().orElseThrow().mean(), usedAtHome(18_000));
  }

  @Test
  void aMeterThatIsUsedMoreRegeneratesMoreOften() {
    FoundSoftener found = FoundSoftener.of(softener(NIGHT).build(), load());
    double daily = 18_000.0 / DAYS;
    double often = daily / (1_000 + 0.6 * daily);
    double house = 18_000 + DAYS * often * found.cycle().water().gallons();
    ReadUse read = read(home(Household.of(3)), NIGHT, ReadMeter.HOUSE, gal(house));
    same(read.use().orElseThrow().mean(), usedAtHome(18_000));
  }

  private static HomeLoad load() {
    return new HomeLoad(home(Household.of(3)).build());
  }

  @Test
  void theHomeIsSizedOnWhatWasRead() {
    ReadUse read = read(home(Household.of(3)), CLOCK, ReadMeter.SOFTENER, gal(18_000));
    UseFromReadings use = read.use().orElseThrow();

    assertThat(read.outcome()).isEqualTo(Outcome.BY_METER);
    assertThat(read.site().household().knownUse()).contains(use.known());
    assertThat(new HomeLoad(read.site()).use().expectedBasis()).isEqualTo(UseBasis.READINGS);
    assertThat(use.days()).isEqualTo(DAYS);
    assertThat(read.site().present()).as("what was found stays").isPresent();
  }

  @Test
  void aBillIsBroughtUpToDateByReadings() {
    Household.Builder billed = Household.of(3).bill(new Bill(gal(9_000), 60));
    Volume mean = throughSoftener(home(billed), gal(DAYS * 200));
    assertThat(mean.gallons()).isBetween(165.0, 190.0);
  }

  @Test
  void lessThanAWeekIsLeftOut() {
    Site.Builder home = home(Household.of(3));
    PresentSoftener six =
        softener(CLOCK).readings(ReadMeter.SOFTENER, counted(6, gal(1_200))).build();
    PresentSoftener seven =
        softener(CLOCK).readings(ReadMeter.SOFTENER, counted(7, gal(1_400))).build();
    Site short6 = home.present(six).build();

    assertThat(ReadUse.of(short6).outcome()).isEqualTo(Outcome.TOO_FEW_DAYS);
    assertThat(ReadUse.of(short6).site()).isSameAs(short6);
    assertThat(ReadUse.of(home.present(seven).build()).outcome()).isEqualTo(Outcome.BY_METER);
  }

  @Test
  void aCounterThatStoodStillIsLeftOut() {
    for (ReadMeter meter : ReadMeter.values()) {
      ReadUse still = read(home(Household.of(3)), CLOCK, meter, gal(0));
      assertThat(still.outcome()).isEqualTo(Outcome.COUNTER_STOOD_STILL);
      assertThat(still.use()).isEmpty();
    }
    assertThat(read(home(Household.of(3)), CLOCK, ReadMeter.HOUSE, gal(200)).outcome())
        .as("regenerations alone take more")
        .isEqualTo(Outcome.COUNTER_STOOD_STILL);
  }

  @Test
  void aUseThatIsStatedStaysAndNothingIsReadTwice() {
    ReadUse once = read(home(Household.of(3)), CLOCK, ReadMeter.SOFTENER, gal(18_000));
    ReadUse twice = ReadUse.of(once.site());
    assertThat(twice.outcome()).isEqualTo(Outcome.STATED);
    assertThat(twice.site()).isEqualTo(once.site());

    KnownUse known = new KnownUse(gal(100), 0.05);
    Site stated = home(Household.of(3).knownUse(known)).build();
    assertThat(ReadUse.of(stated).site()).isSameAs(stated);
  }

  @Test
  void aHomeOfWhichNothingWasReadStaysAsItWas() {
    Site without = home(Household.of(3)).build();
    Site unread = home(Household.of(3)).present(softener(CLOCK).build()).build();
    for (Site site : List.of(without, unread)) {
      assertThat(ReadUse.of(site).outcome()).isEqualTo(Outcome.NOTHING_READ);
      assertThat(ReadUse.of(site).site()).isSameAs(site);
    }
  }

  private static ReadUse bought(PresentControl control, double poundsAYear) {
    PresentSoftener present =
        softener(control)
            .salt(new PresentSalt.EachTime(Mass.ofPounds(8)))
            .saltBought(Mass.ofPounds(poundsAYear))
            .build();
    return ReadUse.of(home(Household.of(3)).present(present).build());
  }

  /** 51,400 gal a year is what statistics give three people. */
  @Test
  void theSaltThatIsBoughtTellsHowMuchHasPassedAMeter() {
    double regenerations = 400 / 8.0;
    double ofYear = regenerations * 1_000 / (1 - 0.6 * regenerations / 365);
    HomeLoad before = load();
    UseFromReadings byHand =
        UseFromReadings.ofYear(before.use().expected(), before.use().likely(), gal(ofYear), 0.20);

    ReadUse salt = bought(NIGHT, 400);
    assertThat(salt.outcome()).isEqualTo(Outcome.BY_SALT);
    same(salt.use().orElseThrow().mean(), byHand.mean());
    assertThat(salt.use().orElseThrow().coefficient())
        .as("weaker than a meter, better than statistics")
        .isEqualTo(byHand.coefficient())
        .isBetween(0.15, 0.20);
  }

  @Test
  void saltTellsNothingWhereItMayBeALeakOrAClock() {
    assertThat(bought(NIGHT, 900).outcome()).isEqualTo(Outcome.SALT_DOES_NOT_FIT);
    assertThat(bought(NIGHT, 130).outcome()).isEqualTo(Outcome.SALT_DOES_NOT_FIT);
    assertThat(bought(CLOCK, 400).outcome()).isEqualTo(Outcome.NOTHING_READ);
    assertThat(bought(NIGHT, 0).outcome()).isEqualTo(Outcome.NOTHING_READ);
    PresentControl weekly =
        new PresentControl.ByVolume(gal(1_000), false, Optional.empty(), Optional.of(7));
    assertThat(bought(weekly, 416).outcome())
        .as("every seven days in any case, so the volume starts none")
        .isEqualTo(Outcome.NOTHING_READ);
    Hardness twenty = Hardness.ofGrainsPerGallon(20);
    HardnessAmount capacity = HardnessAmount.ofGrains(20_000);
    assertThat(bought(PresentControl.metered(twenty, capacity), 400).outcome())
        .as("20,000 grains at 20 gpg are 1,000 gal")
        .isEqualTo(Outcome.BY_SALT);
    assertThat(bought(PresentControl.metered(twenty, null), 400).outcome())
        .as("what the meter reckons with was not found")
        .isEqualTo(Outcome.NOTHING_READ);
    PresentSoftener unset = softener(NIGHT).saltBought(Mass.ofPounds(400)).build();
    assertThat(ReadUse.of(home(Household.of(3)).present(unset).build()).outcome())
        .as("what each regeneration takes is not known")
        .isEqualTo(Outcome.NOTHING_READ);
  }

  @Test
  void aMeterIsTrustedMoreThanSalt() {
    PresentSoftener present =
        softener(NIGHT)
            .salt(new PresentSalt.EachTime(Mass.ofPounds(8)))
            .saltBought(Mass.ofPounds(400))
            .readings(ReadMeter.SOFTENER, counted(DAYS, gal(18_000)))
            .build();
    ReadUse read = ReadUse.of(home(Household.of(3)).present(present).build());
    assertThat(read.outcome()).isEqualTo(Outcome.BY_METER);
    same(read.use().orElseThrow().mean(), usedAtHome(18_000));
  }
}
