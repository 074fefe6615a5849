package io.github.brinewright.samples;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.util.Locale;
import org.joda.money.CurrencyUnit;

/** Sizes one home in a few lines and prints why a unit is recommended. */
public final class OneHome {
  private OneHome() {}

  /** Prints the recommended unit, the reason and how each number was worked out. */
  public static void main(String[] args) {
    WaterAnalysis water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    Site site = Site.of("A1", water, Household.of(3).bathrooms(2).build()).build();
    Comparison comparison =
        PriceList.of(BuiltInOffers.all(CurrencyUnit.USD))
            .compare(site, Tariff.placeholder(CurrencyUnit.USD));
    Wording words = Wording.of(Locale.US, UnitSystem.US);
    comparison
        .recommended()
        .ifPresent(candidate -> System.out.println(candidate.softener().name()));
    comparison.whyRecommended().map(words::reason).ifPresent(System.out::println);
    comparison.closest().steps().stream().map(words::step).forEach(System.out::println);
  }
}
