package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.finding.VerdictKind;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentPosition;
import java.util.List;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Homes whose water is treated by what is sold with the softener. */
class TreatmentAheadTest {
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);

  private static PriceList list(Item... items) {
    return PriceList.builder(BuiltInOffers.all(CurrencyUnit.USD)).items(List.of(items)).build();
  }

  private static Item filter(UnaryOperator<Treatment.Builder> change) {
    Treatment.Builder effect =
        Treatment.at(TreatmentPosition.METALS)
            .takes(Substance.IRON, 0.95)
            .pressureLoss(Pressure.ofPsi(5))
            .backwash(Volume.ofGallons(70), 3);
    return Item.of("filter", ItemKind.TREATMENT, Money.parse("USD 900"))
        .requiredBy(List.of("iron-above-bed"))
        .yearlyUpkeep(Money.parse("USD 40"))
        .treatment(change.apply(effect).build())
        .build();
  }

  private static Site home(double iron) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18))
            .found(Substance.IRON, LabResult.measured(Concentration.ofMilligramsPerLitre(iron)))
            .found(
                Substance.DISSOLVED_IRON,
                LabResult.measured(Concentration.ofMilligramsPerLitre(iron)))
            .found(Substance.MANGANESE, LabResult.NOT_DETECTED)
            .build();
    return Site.of("A1", water, Household.of(4).build())
        .supply(Supply.of(Pressure.ofPsi(60), FlowRate.ofGallonsPerMinute(12)))
        .build();
  }

  @Test
  void theSoftenerIsSizedOnTheWaterBehindTheFilterAndThePriceHasIt() {
    Comparison comparison = list(filter(each -> each)).compare(home(6), TARIFF);
    Candidate best = comparison.recommended().orElseThrow();

    assertThat(comparison.verdict().kind()).isEqualTo(VerdictKind.TREAT_FIRST);
    assertThat(comparison.verdict().permitsSignature()).isTrue();
    // 18 gpg + 4 gpg for each of the 5 % of 6 mg/L that are left: common practice.
    assertThat(comparison.home().compensatedHardness().grainsPerGallon())
        .isCloseTo(18 + 4 * 0.3, within(1e-9));
    assertThat(best.quote().items()).extracting(Item::id).containsExactly("filter");
    assertThat(best.yearly().upkeep()).isEqualTo(Money.parse("USD 40"));
    Money water = best.yearly().treatmentWater();
    double gallons = 70 * 365 / 3.0;
    double price =
        TARIFF
            .waterCost(best.design().home().yearlyUse(), Volume.ofGallons(gallons))
            .plus(TARIFF.sewerCost(best.design().home().yearlyUse(), Volume.ofGallons(gallons)))
            .getAmount()
            .doubleValue();
    assertThat(water.getAmount().doubleValue()).isCloseTo(price, within(0.011));
    assertThat(best.yearly().of(CostKind.SERVICE))
        .isEqualTo(best.offer().yearlyService().plus(Money.parse("USD 40")).plus(water));
    assertThat(comparison.home().site().supply().pressureInUse())
        .contains(Pressure.ofPsi(60).minus(Pressure.ofPsi(5)));
    assertThat(comparison.treatment().orElseThrow().stages()).hasSize(1);
  }

  @Test
  void aFilterThatDoesNotFitOrIsNotEnoughAnswersNothing() {
    for (Item item :
        List.of(
            filter(each -> each.most(Substance.IRON, Concentration.ofMilligramsPerLitre(5.9))),
            filter(each -> each.takes(Substance.IRON, 0.1)),
            filter(each -> each.serviceFlow(FlowRate.ofGallonsPerMinute(2))))) {
      Comparison comparison = list(item).compare(home(6), TARIFF);
      assertThat(comparison.recommended()).isEmpty();
      assertThat(comparison.treatment()).isEmpty();
      assertThat(comparison.home().compensatedHardness().grainsPerGallon())
          .isCloseTo(18 + 4 * 6, within(1e-9));
    }
  }

  @Test
  void ofTwoTreatmentsTheOneThatFitsIsSold() {
    Item small =
        Item.of("small", ItemKind.TREATMENT, Money.parse("USD 300"))
            .requiredBy(List.of("iron-above-bed"))
            .treatment(
                Treatment.at(TreatmentPosition.METALS)
                    .takes(Substance.IRON, 0.95)
                    .most(Substance.IRON, Concentration.ofMilligramsPerLitre(5))
                    .build())
            .build();
    Comparison comparison = list(small, filter(each -> each)).compare(home(6), TARIFF);
    assertThat(comparison.recommended().orElseThrow().quote().items())
        .extracting(Item::id)
        .containsExactly("filter");
  }

  @Test
  void waterThatAsksForNothingIsSizedAsItIs() {
    Comparison comparison = list(filter(each -> each)).compare(home(0.2), TARIFF);
    assertThat(comparison.treatment()).isEmpty();
    assertThat(comparison.recommended().orElseThrow().quote().items()).isEmpty();
  }

  @Test
  void whatAVisitStatesOfTheTreatedWaterWins() {
    Site stated =
        home(6)
            .withTreated(
                TreatedWater.ofHardness(Hardness.ofGrainsPerGallon(21))
                    .withIron(LabResult.NOT_DETECTED));
    Comparison comparison = list(filter(each -> each)).compare(stated, TARIFF);
    assertThat(comparison.home().compensatedHardness().grainsPerGallon())
        .isCloseTo(21, within(1e-9));
    assertThat(comparison.treatment()).isEmpty();
  }
}
