package consumers;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;

/** A comparison as JSON. */
final class Json implements Consumer {
  @Override
  public String run(Path out) throws Exception {
    Comparison comparison =
        PriceList.of(List.of(OwnStock.offer("A", 1, 1600), OwnStock.offer("B", 2, 2300)))
            .compare(Homes.one(), Tariff.placeholder(CurrencyUnit.USD));
    String json = ComparisonJson.one(comparison, Wording.of(Locale.US, UnitSystem.US));
    Files.writeString(out.resolve("comparison.json"), json);
    Consumer.require(json.contains("\"unitId\" : \"A\""), "the unit is named");
    return json.lines().count() + " lines";
  }
}
