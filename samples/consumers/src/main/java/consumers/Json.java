package consumers;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.exchange.ComparisonJson;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** A comparison as JSON, read by its version. */
final class Json implements Consumer {
  @Override
  public String run(Path out) throws Exception {
    var comparison = OwnStock.prices().compare(Homes.one(), Homes.tariff());
    String json = ComparisonJson.one(comparison, Wording.of(Locale.US, UnitSystem.US));
    Files.writeString(out.resolve("comparison.json"), json);
    Files.writeString(out.resolve("comparison.schema.json"), ComparisonJson.schema());
    Map<String, Object> read = JSON.std.mapFrom(json);
    Consumer.require(
        read.get("version").equals(ComparisonJson.VERSION), "it says by which version to read it");
    Map<?, ?> recommended = (Map<?, ?>) read.get("recommended");
    return "version " + read.get("version") + " recommends " + recommended.get("unitId");
  }
}
