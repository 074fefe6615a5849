package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.opencsv.CSVReader;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Any currency, with as many decimals as it has: ISO 4217 gives yen none and Kuwaiti dinars 3. */
class CurrencyTest {
  private static Job job(String currency, String price) {
    return JobFolder.read(
            JobFiles.of(
                Map.of(
                    "dealer.properties", "currency=" + currency + "\n",
                    "units.csv",
                        "unit_id,resin_ft3,dosages_lb_per_ft3,price\nU1,1.5,6," + price + "\n",
                    "sites.csv", "site_id,customer,hardness_gpg,people\nA1,Ann,18,3\n")))
        .job()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"USD,1180.25", "EUR,1180.25", "JPY,180500", "KWD,361.125", "CLP,950000"})
  void amountsKeepTheDecimalsOfTheirCurrency(String currency, String price) throws Exception {
    Job job = job(currency, price);
    Simulated one = Simulated.none(job.compare(job.homes().get(0)));

    JsonNode json =
        new ObjectMapper().readTree(ComparisonJson.one(one, Wording.of(Locale.US, UnitSystem.US)));
    assertThat(json.get("currency").asText()).isEqualTo(currency);
    assertThat(json.at("/candidates/0/price/equipment").decimalValue())
        .isEqualByComparingTo(new BigDecimal(price));

    try (CSVReader csv = new CSVReader(new StringReader(ComparisonCsv.of(List.of(one))))) {
      List<String[]> rows = csv.readAll();
      int column = List.of(rows.get(0)).indexOf("priceTotal");
      assertThat(rows.get(1)[column]).isEqualTo(price);
    }
  }
}
