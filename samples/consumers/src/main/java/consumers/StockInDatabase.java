package consumers;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A price list in a database, and a proposal from it. */
final class StockInDatabase implements Consumer {
  private static final String STOCK =
      """
      create table stock(id varchar(8), cubic_feet double precision, dollars int);
      insert into stock values ('small', 0.75, 1450), ('middle', 1.5, 1900), ('large', 3, 2900)
      """;

  @Override
  public String run(Path out) throws Exception {
    PriceList prices = PriceList.of(offers());
    for (String language : List.of("en-US", "es-US", "fr-CA")) {
      QuotedHome home = Homes.quoted().reading(Locale.forLanguageTag(language));
      Job job = Job.of(prices).home(home).build();
      byte[] pdf = Proposals.of(job).write(home, Homes.DAY);
      Files.write(out.resolve("from-database-" + language + ".pdf"), pdf);
      Consumer.require(
          Reopened.read(pdf).comparison().orElseThrow().priceList().equals(prices),
          "the proposal carries the price list that came from the database");
    }
    return prices.offers().size() + " offers";
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
