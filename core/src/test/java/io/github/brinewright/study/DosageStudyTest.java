package io.github.brinewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The flat region of any study holds its best dosage. */
class DosageStudyTest {
  private static final SaltDosage SIX = SaltDosage.ofPoundsPerCubicFoot(6);

  @Property(tries = 60)
  void theFlatRegionOfAnyHomeHoldsTheBestDosage(
      @ForAll @DoubleRange(min = 0.5, max = 120) double gpg,
      @ForAll @DoubleRange(min = 0, max = 3) double iron,
      @ForAll @IntRange(min = 1, max = 12) int people,
      @ForAll @DoubleRange(min = 0.5, max = 8) double cubicFeet,
      @ForAll @DoubleRange(min = 1, max = 7) double shortestDays) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg))
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(iron))
            .build();
    Softener softener =
        Softener.withResin("u", Volume.ofCubicFeet(cubicFeet))
            .dosages(List.of(SIX))
            .controls(EnumSet.allOf(Control.class))
            .build();
    Comparison comparison =
        PriceList.builder(List.of(Offer.unpriced(softener, CurrencyUnit.USD)))
            .margins(Margins.builder().designDays(shortestDays).build())
            .build()
            .compare(
                Site.of("h", water, Household.of(people).build()).build(),
                Tariff.placeholder(CurrencyUnit.USD));
    for (Candidate candidate : comparison.candidates()) {
      DosageStudy.of(comparison, candidate)
          .ifPresent(
              study ->
                  assertThat(study.best().dosage())
                      .isBetween(study.flat().low(), study.flat().high()));
    }
  }

  @Test
  void aBestThatIsFarBelowEveryPointOfTheCurveIsItsOwnFlatRegion() {
    DosageStudy.Point coarse = new DosageStudy.Point(SIX, Money.parse("USD 103"));
    DosageStudy.Point best =
        new DosageStudy.Point(SaltDosage.ofPoundsPerCubicFoot(6.1), Money.parse("USD 100"));

    DosageStudy study = new DosageStudy(List.of(coarse), best, List.of());

    assertThat(study.flat().low()).isEqualTo(best.dosage());
    assertThat(study.flat().high()).isEqualTo(best.dosage());
    assertThat(study.bestStocked()).isEmpty();
  }
}
