package consumers;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.proposal.Proposal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;

/** A price list in a database, and a proposal from it. */
final class StockInDatabase implements Consumer {
  private static final String STOCK =
      """
      create table stock(id varchar(8), cubic_feet double precision, dollars int);
      insert into stock values ('small', 0.75, 1450), ('middle', 1.5, 1900), ('large', 3, 2900)
      """;

  @Override
  public String run(Path out) throws Exception {
    Comparison comparison =
        PriceList.of(offers()).compare(Homes.one(), Tariff.placeholder(CurrencyUnit.USD));
    for (String language : List.of("en-US", "es-US", "fr-CA")) {
      Dealer dealer = Dealer.UNNAMED.writing(Locale.forLanguageTag(language));
      byte[] pdf = new Proposal(comparison, dealer, LocalDate.of(2026, 10, 1)).toPdf();
      Files.write(out.resolve("from-database-" + language + ".pdf"), pdf);
    }
    return comparison.recommended().orElseThrow().softener().id();
  }

  private static List<Offer> offers() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:h2:mem:stock");
        Statement statement = connection.createStatement()) {
      statement.execute(STOCK);
      List<Offer> offers = new ArrayList<>();
      try (ResultSet rows = statement.executeQuery("select * from stock order by dollars")) {
        while (rows.next()) {
          offers.add(
              OwnStock.offer(
                  rows.getString("id"), rows.getDouble("cubic_feet"), rows.getInt("dollars")));
        }
      }
      return offers;
    }
  }
}
