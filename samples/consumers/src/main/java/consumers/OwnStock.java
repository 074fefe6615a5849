package consumers;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.trace.Source;
import java.util.List;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** An invented stock: a resin by its table, beds of it, prices of one's own. */
final class OwnStock {
  private OwnStock() {}

  static Resin resin() {
    List<TableCurve.Point> table = List.of(point(4, 15_000), point(8, 22_000), point(12, 26_000));
    return Resin.of("own", "Own resin", new TableCurve(table, Source.given("invented table")));
  }

  private static TableCurve.Point point(double pounds, double grains) {
    return new TableCurve.Point(
        SaltDosage.ofPoundsPerCubicFoot(pounds), ResinCapacity.ofGrainsPerCubicFoot(grains));
  }

  static Offer offer(String id, double cubicFeet, int dollars) {
    Softener softener =
        Softener.withResin(id, Volume.ofCubicFeet(cubicFeet))
            .name("Invented " + id)
            .resin(resin())
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6)))
            .controls(Set.of(Control.METERED_AT_NIGHT))
            .build();
    return Offer.of(softener, usd(dollars)).installation(usd(450)).yearlyService(usd(90)).build();
  }

  /** Two beds. */
  static PriceList prices() {
    return PriceList.of(List.of(offer("A", 1, 1600), offer("B", 2, 2300)));
  }

  static Money usd(int dollars) {
    return Money.of(CurrencyUnit.USD, dollars);
  }
}
