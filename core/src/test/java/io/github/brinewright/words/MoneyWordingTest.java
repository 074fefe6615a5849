package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.StepKind;
import java.util.List;
import java.util.Locale;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Money of any currency, with as many decimals as it has. */
class MoneyWordingTest {
  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  @ParameterizedTest
  @CsvSource({
    "USD 1234.5, '$1,234.50'",
    "USD 0.1925, $0.1925",
    "USD 0.19256, $0.1926",
    "EUR 2, €2.00",
    "JPY 1234, '¥1,234'",
    "JPY 20.5, ¥20.5",
    "KWD 2.5, KWD2.500"
  })
  void hasTheDecimalsOfItsCurrency(String amount, String printed) {
    assertThat(words.money(BigMoney.parse(amount)).replaceAll("\\h", "")).isEqualTo(printed);
  }

  @Test
  void aCurrencyThatOnlyTheEmbedderKnowsIsPrintedByItsCode() {
    CurrencyUnit local = CurrencyUnit.registerCurrency("QQQ", -1, 1, List.of(), true);

    assertThat(words.money(BigMoney.of(local, 12)).replaceAll("\\h", "")).isEqualTo("QQQ12.0");
  }

  /** 0.24 ÷ 0.45359237 = 0.52911; the pound: NIST Special Publication 811, appendix B. */
  @Test
  void aPriceOfMassIsThatOfThePoundOrOfTheKilogram() {
    Figure price = new Figure.PriceOfMass(BigMoney.parse("USD 0.24"));

    assertThat(words.figure(price)).isEqualTo("$0.24 a pound");
    assertThat(Wording.of(Locale.US, UnitSystem.METRIC).figure(price))
        .isEqualTo("$0.53 a kilogram");
  }

  @Test
  void aComparisonInYenHasNoDecimals() {
    Softener softener = Softener.withResin("u", Volume.ofCubicFeet(2)).build();
    Site site =
        Site.of(
                "h",
                WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(15)).build(),
                Household.of(3).build())
            .build();
    Tariff tariff = Tariff.builder("t", CurrencyUnit.JPY).salt(BigMoney.parse("JPY 61.5")).build();
    Candidate candidate =
        PriceList.of(List.of(Offer.of(softener, Money.parse("JPY 180000")).build()))
            .compare(site, tariff)
            .closest();

    assertThat(candidate.life().total().getScale()).isZero();
    assertThat(candidate.yearly().of(CostKind.SALT).isPositive()).isTrue();
    assertThat(candidate.steps())
        .filteredOn(step -> step.kind() == StepKind.WATER_COST)
        .singleElement()
        .satisfies(step -> assertThat(words.step(step).numbers()).contains("¥6"))
        .satisfies(step -> assertThat(words.step(step).result()).startsWith("¥"));
  }
}
