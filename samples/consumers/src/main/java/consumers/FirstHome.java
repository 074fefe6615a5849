package consumers;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Hardness;
import java.nio.file.Path;
import org.joda.money.CurrencyUnit;

/** One home, without prices of one's own. */
final class FirstHome implements Consumer {
  @Override
  public String run(Path out) {
    var water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    var site = Site.of("A1", water, Household.of(3).bathrooms(2).build()).build();
    var prices = PriceList.of(BuiltInOffers.all(CurrencyUnit.USD));
    var comparison = prices.compare(site, Tariff.placeholder(CurrencyUnit.USD));
    return comparison.recommended().orElseThrow().softener().name();
  }
}
