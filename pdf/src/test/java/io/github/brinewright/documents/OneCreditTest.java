package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** One credit is stated throughout a proposal: the first among the ways to pay. */
class OneCreditTest {
  private static final Money FEE = Money.parse("USD 60.00");
  private static final PaymentWay CASH =
      PaymentWay.of("cash", PaymentKind.CASH, Money.zero(CurrencyUnit.USD)).build();
  private static final PaymentWay CREDIT =
      PaymentWay.of("lent", PaymentKind.CREDIT, Money.zero(CurrencyUnit.USD))
          .yearlyRate(new BigDecimal("0.12"))
          .months(24)
          .fee(FEE)
          .build();
  private static final PriceList PRICES = DemoTown.JOB.prices();

  private static Labelled proposal(PriceList prices) {
    Comparison home = DemoTown.compare("H01");
    Comparison comparison = prices.compare(home.home().site(), home.tariff());
    return new Labelled(
        new Proposal(comparison, DemoTown.JOB.dealer(), DemoTown.DAY).model(),
        DemoTown.words(DemoTown.JOB.dealer()));
  }

  private static List<String> monthly(Labelled said) {
    return Stream.of(
            "opening/facts/opening.fact.month",
            "choices/choices/choices.monthly/recommended",
            "price/ways/way.lent/ways.month")
        .map(said.values()::get)
        .toList();
  }

  @Test
  void anotherCreditThanThatOfTheTermsIsTheOneEverywhere() {
    Labelled said = proposal(PRICES.toBuilder().ways(List.of(CASH, CREDIT)).build());
    String each = said.values().get("opening/facts/opening.fact.month");

    assertThat(monthly(said)).containsExactly(each, each, "24 × " + each);
    assertThat(said.labels().get("choices/choices/choices.monthly/recommended"))
        .contains("24", "12");
    assertThat(said.labels().get("opening/facts/opening.fact.month"))
        .as("the fee is due at once and is in the annual percentage rate")
        .contains("24", "$60.00", said.values().get("price/ways/way.lent/ways.rate"))
        .doesNotContain("12.00");
  }

  @Test
  void withoutACreditAmongTheWaysNoMonthlyPaymentIsStated() {
    Labelled said = proposal(PRICES.toBuilder().ways(List.of(CASH)).build());

    assertThat(said.values().keySet())
        .noneMatch(key -> key.matches(".*(fact\\.month|choices\\.monthly).*"));
    assertThat(said.values()).containsKey("price/ways/way.cash/ways.down");
  }

  @Test
  void waysToPayAreSaidOfASinglePackageToo() {
    Softener only =
        Softener.withResin("only", Volume.ofCubicFeet(1.5))
            .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(6)))
            .controls(Set.of(Control.METERED_AT_NIGHT))
            .build();
    PriceList one =
        PriceList.builder(List.of(Offer.of(only, Money.parse("USD 1100.00")).build()))
            .terms(PRICES.terms())
            .ways(List.of(CASH, CREDIT))
            .build();
    Labelled said = proposal(one);

    assertThat(said.values())
        .containsKeys("price/price/price.total", "price/ways/way.lent/ways.month")
        .doesNotContainKeys("price/price/price.deposit", "price/price/price.monthly");
  }
}
