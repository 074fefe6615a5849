package consumers;

import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.QuotedHome;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** A job built from objects, written to a folder and read back. */
final class JobInMemory implements Consumer {
  static Job job() {
    BigMoney perThousand = BigMoney.of(CurrencyUnit.USD, new BigDecimal("5.25"));
    Tariff tariff =
        Tariff.builder("town", CurrencyUnit.USD).water(BlockRate.flat(perThousand)).build();
    Dealer dealer =
        Dealer.named("Invented dealer").contact(List.of("1 Nowhere Lane")).validDays(14).build();
    return Job.of(OwnStock.prices())
        .dealer(dealer)
        .home(new QuotedHome(Homes.one(), tariff).reading(Locale.CANADA_FRENCH))
        .build();
  }

  private static void write(JobFiles files, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String name : JobFiles.NAMES) {
      if (files.has(name)) {
        Files.write(folder.resolve(name), files.read(name));
      }
    }
  }

  @Override
  public String run(Path out) throws Exception {
    Path folder = Files.createTempDirectory("job");
    write(job().files(), folder);
    JobReading reading = JobFolder.read(folder);
    Consumer.require(reading.problems().isEmpty(), "what is written can be read");
    Consumer.require(reading.job().orElseThrow().equals(job()), "it is the same job");
    return Files.readString(folder.resolve("sites.csv")).lines().findFirst().orElseThrow();
  }
}
