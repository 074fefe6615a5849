package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.ReadMeter;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Readings travel in files, and what is known of the use follows from them again. */
class KnownUseFilesTest {
  private static final PriceList PRICES = PriceList.of(BuiltInOffers.all(CurrencyUnit.USD));

  private static Site.Builder home() {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    return Site.of("A", water, Household.of(3).build());
  }

  private static Site read() {
    LocalDate first = LocalDate.of(2026, 1, 3);
    List<MeterReading> readings =
        List.of(
            new MeterReading(first, Volume.ofGallons(12_345)),
            new MeterReading(first.plusDays(89), Volume.ofGallons(30_345)));
    PresentSoftener present =
        PresentSoftener.of(PresentControl.clock(7))
            .rated(HardnessAmount.ofGrains(40_000))
            .readings(ReadMeter.SOFTENER, readings)
            .build();
    return home().present(present).build();
  }

  private static Job job(Site site) {
    return Job.of(PRICES).home(new QuotedHome(site, Tariff.placeholder(CurrencyUnit.USD))).build();
  }

  private static Volume expected(Site site) {
    return PRICES.home(site).use().expected();
  }

  @Test
  void theUseIsTheSameWhenTheFilesAreReadAgain() {
    Site site = read();
    for (Site each : List.of(site, PRICES.home(site).site())) {
      Site again = JobFolder.read(job(each).files()).job().orElseThrow().homes().get(0).site();
      assertThat(again).isEqualTo(site);
      assertThat(PRICES.home(again).use().expectedBasis()).isEqualTo(UseBasis.READINGS);
      assertThat(expected(again)).isEqualTo(expected(site));
    }
  }

  @Test
  void aUseThatFollowsFromNothingInAFileIsRefused() {
    KnownUse known = new KnownUse(Volume.ofGallons(170), 0.06);
    assertThatThrownBy(job(home().build().withKnownUse(known))::files)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("home A")
        .hasMessageContaining("give those of its present softener instead");
  }
}
