package io.github.brinewright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Softener;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** A job that was built from objects and never was a folder. */
class JobOfObjectsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);

  private static QuotedHome home() {
    Site site =
        Site.of(
                "A1",
                WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build(),
                Household.of(3).build())
            .build();
    return new QuotedHome(site, Tariff.placeholder(CurrencyUnit.USD));
  }

  private static void assertCarried(List<Offer> offers) throws Exception {
    QuotedHome home = home();
    Job job = Job.of(PriceList.of(offers)).home(home).build();
    Reopened again = Reopened.read(Proposals.of(job).write(home, DAY));
    assertThat(again.comparison()).contains(job.compare(home));
    assertThat(Reopened.read(Proposals.of(job).form(DAY)).homeId()).isEmpty();
  }

  @Test
  void itsProposalGivesAnEqualComparisonAgain() throws Exception {
    Softener unit =
        Softener.withResin("my-unit", Volume.ofCubicFeet(1.5))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6)))
            .build();
    assertCarried(List.of(Offer.unpriced(unit, CurrencyUnit.USD)));
  }

  @Test
  void soDoesOneOfBuiltInBeds() throws Exception {
    assertCarried(BuiltInOffers.all(CurrencyUnit.USD));
  }
}
