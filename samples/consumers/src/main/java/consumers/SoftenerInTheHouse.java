package consumers;

import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.exchange.ServiceJson;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the softener that is already in a house does, and what comes of mending it. */
final class SoftenerInTheHouse implements Consumer {
  @Override
  public String run(Path out) throws Exception {
    PresentSoftener present =
        PresentSoftener.of(PresentControl.clock(7)).rated(HardnessAmount.ofGrains(32_000)).build();
    Site site =
        Site.of("S1", Homes.one().water(), Homes.one().household()).present(present).build();
    QuotedHome home = new QuotedHome(site, Homes.tariff());
    Job job =
        Job.of(OwnStock.prices())
            .dealer(
                Dealer.named("Own dealer")
                    .servicePrices(ServicePrices.of(OwnStock.usd(260), OwnStock.usd(85)))
                    .build())
            .home(home)
            .build();
    ServiceStudy study = job.service(home);
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    Files.writeString(out.resolve("service.json"), ServiceJson.one(study, words));
    Files.write(out.resolve("service.pdf"), Proposals.of(job).serviceReport(home, Homes.DAY).pdf());
    Consumer.require(!study.faults().isEmpty(), "seven days are too long for this bed");
    return study.faults().stream().map(Fault::code).collect(Collectors.joining(", "))
        + ": "
        + words.advice(study.advice());
  }
}
