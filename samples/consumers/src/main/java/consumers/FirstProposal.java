package consumers;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The example of the README: its imports, and what stands between the two lines below. */
final class FirstProposal implements Consumer {
  @Override
  public String run(Path out) throws Exception {
    Path file = out.resolve("proposal-A1.pdf");
    // example
    var water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    var site = Site.of("A1", water, Household.of(3).bathrooms(2).build()).build();
    var softener = Softener.withResin("my-unit", Volume.ofCubicFeet(1.5)).build();
    var offer = Offer.of(softener, Money.parse("USD 1180")).installation(Money.parse("USD 440"));
    var home = new QuotedHome(site, Tariff.placeholder(CurrencyUnit.USD));
    var job = Job.of(PriceList.of(List.of(offer.build()))).home(home).build();

    var comparison = job.compare(home);
    var words = Wording.of(Locale.US, UnitSystem.US);
    comparison.whyRecommended().map(words::reason).ifPresent(System.out::println);
    comparison.closest().steps().stream().map(words::step).forEach(System.out::println);

    byte[] pdf = Proposals.of(job).write(home, LocalDate.of(2026, 10, 1));
    Files.write(file, pdf);
    // end
    return comparison.closest().softener().name();
  }
}
