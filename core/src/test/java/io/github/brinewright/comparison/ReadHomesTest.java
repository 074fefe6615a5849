package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What was read of a meter sizes the home in every comparison. */
class ReadHomesTest {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);

  private static PriceList prices() {
    Softener softener =
        Softener.withResin("a", Volume.ofCubicFeet(2))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6)))
            .controls(EnumSet.of(Control.CLOCK, Control.METERED_AT_NIGHT))
            .build();
    return PriceList.of(List.of(Offer.of(softener, Money.parse("USD 900")).build()));
  }

  private static Site.Builder home() {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    return Site.of("h", water, Household.of(4).build());
  }

  private static PresentSoftener.Builder present() {
    return PresentSoftener.of(PresentControl.clock(7)).resinVolume(Volume.ofCubicFeet(1));
  }

  private static Site read(double gallonsADay) {
    List<MeterReading> read =
        List.of(
            new MeterReading(FIRST, Volume.ofGallons(0)),
            new MeterReading(FIRST.plusDays(182), Volume.ofGallons(182 * gallonsADay)));
    return home().present(present().readings(ReadMeter.SOFTENER, read).build()).build();
  }

  private static Design design(Site site, Control control) {
    return prices().compare(site, TARIFF).candidates().stream()
        .map(Candidate::design)
        .filter(one -> one.setup().control() == control)
        .findFirst()
        .orElseThrow();
  }

  private static int days(Site site) {
    return ((ClockSchedule) design(site, Control.CLOCK).schedule()).setDays();
  }

  private static Volume setVolume(Site site) {
    MeteredSchedule meter = (MeteredSchedule) design(site, Control.METERED_AT_NIGHT).schedule();
    return meter.setVolume().orElseThrow();
  }

  @Test
  void whoUsesMoreThanOthersGetsShorterIntervalsAndSmallerVolumes() {
    Site typical = home().build();
    assertThat(days(read(300))).isLessThan(days(typical));
    assertThat(days(read(120))).isGreaterThan(days(typical));
    assertThat(setVolume(read(300))).isLessThan(setVolume(typical));
    assertThat(setVolume(read(120))).isGreaterThan(setVolume(typical));
  }

  @Test
  void aComparisonIsOfTheHomeAsItWasRead() {
    Comparison comparison = prices().compare(read(300), TARIFF);
    assertThat(comparison.home().use().expectedBasis()).isEqualTo(UseBasis.READINGS);
    assertThat(comparison.home().use().expected().gallons()).isBetween(280.0, 300.0);
    assertThat(prices().compare(comparison.home().site(), TARIFF).home().use().expected())
        .as("and is not read twice")
        .isEqualTo(comparison.home().use().expected());
  }

  @Test
  void aShareOfDaysThatADealerChoseIsOfTheDaysThatWereRead() {
    PriceList chosen = prices().toBuilder().limits(Limits.builder().designUse(0.9).build()).build();
    assertThat(chosen.home(read(300)).use().expected())
        .isEqualTo(prices().home(read(300)).use().expected());
    assertThat(chosen.home(read(300)).use().designBasis()).isEqualTo(UseBasis.CHOSEN_SHARE);
  }

  @Test
  void withoutReadingsNothingChanges() {
    Site unread = home().present(present().build()).build();
    assertThat(days(unread)).isEqualTo(days(home().build()));
    assertThat(prices().home(unread).use().expected())
        .isEqualTo(prices().home(home().build()).use().expected());
    assertThat(prices().home(unread).site()).isSameAs(unread);
  }

  @Test
  void onePersonMoreUsesMoreThanWasRead() {
    Site known = prices().home(read(300)).site();
    double five = prices().home(known.withPeople(5)).use().expected().gallons();
    double four = prices().home(known).use().expected().gallons();
    assertThat(five).isCloseTo(four * 5 / 4, within(1e-9));
  }
}
