package consumers;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.Hardness;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;

/** An invented home. */
final class Homes {
  /** Date of all documents. */
  static final LocalDate DAY = LocalDate.of(2026, 10, 1);

  private Homes() {}

  static Site one() {
    var water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    return Site.of("A1", water, Household.of(3).bathrooms(2).build())
        .contact(Customer.named("Invented family"))
        .build();
  }

  static Tariff tariff() {
    return Tariff.placeholder(CurrencyUnit.USD);
  }

  static QuotedHome quoted() {
    return new QuotedHome(one(), tariff());
  }
}
