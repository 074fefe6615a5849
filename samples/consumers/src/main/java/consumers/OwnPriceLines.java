package consumers;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.finding.Limits;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Prices, tax and deposit of one's own. */
final class OwnPriceLines implements Consumer {
  @Override
  public String run(Path out) {
    Terms terms =
        new Terms(new BigDecimal("0.05"), false, new BigDecimal("0.3"), Optional.empty(), 12, 0.03);
    PriceList prices = new PriceList(List.of(OwnStock.offer("A", 1.5, 1900)), terms, Limits.USUAL);
    Candidate only =
        prices.compare(Homes.one(), Tariff.placeholder(CurrencyUnit.USD)).candidates().get(0);
    Consumer.require(
        only.quote().total().equals(OwnStock.usd(1900 + 95 + 450)), "tax is on the unit alone");
    return only.quote().total().toString();
  }
}
