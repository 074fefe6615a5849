package consumers;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Terms;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

/** Prices, tax and deposit of one's own. */
final class OwnPriceLines implements Consumer {
  @Override
  public String run(Path out) {
    Terms terms =
        Terms.builder()
            .taxRate(new BigDecimal("0.05"))
            .depositShare(new BigDecimal("0.3"))
            .years(12)
            .build();
    PriceList prices =
        PriceList.builder(List.of(OwnStock.offer("A", 1.5, 1900))).terms(terms).build();
    Candidate only = prices.compare(Homes.one(), Homes.tariff()).candidates().get(0);
    Consumer.require(
        only.quote().total().equals(OwnStock.usd(1900 + 95 + 450)), "tax is on the unit alone");
    return only.quote().total().toString();
  }
}
