package io.github.brinewright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class MoneyTest {
  private static final Softener UNIT = Softener.withResin("u", Volume.ofCubicFeet(1)).build();

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static BigMoney price(String amount) {
    return BigMoney.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static Quote quote(String equipment, String installation, boolean taxAll, Terms terms) {
    return new Quote(
        Offer.of(UNIT, usd(equipment)).installation(usd(installation)).build(),
        Control.METERED_AT_NIGHT,
        terms.toBuilder().taxOnInstallation(taxAll).build());
  }

  private static Terms terms(String tax, String deposit) {
    return Terms.builder()
        .taxRate(new BigDecimal(tax))
        .depositShare(new BigDecimal(deposit))
        .build();
  }

  @Test
  void taxIsRoundedOnceAndTheTotalIsTheSumOfTheLines() {
    Quote quote = quote("999.99", "333.33", false, terms("0.0625", "0.25"));

    assertThat(quote.tax()).isEqualTo(usd("62.50"));
    assertThat(quote.total()).isEqualTo(usd("1395.82"));
    assertThat(quote.deposit().plus(quote.balance())).isEqualTo(quote.total());
  }

  @Test
  void installationIsTaxedWhereTheDealerSaysSo() {
    Quote quote = quote("1000.00", "500.00", true, terms("0.10", "0"));

    assertThat(quote.tax()).isEqualTo(usd("150.00"));
  }

  @Test
  void levelPaymentsRepayTheBalanceWithInterest() {
    Credit credit = new Credit(new BigDecimal("0.089"), 36);
    Money payment = credit.payment(usd("1143.75"));

    BigDecimal owed = new BigDecimal("1143.75");
    for (int month = 0; month < 36; month++) {
      owed = owed.multiply(new BigDecimal("1.00741666666667")).subtract(payment.getAmount());
    }
    assertThat(owed.doubleValue()).as("left after the last payment").isBetween(-0.40, 0.0);
  }

  @Test
  void aCreditWithoutInterestDividesTheAmount() {
    assertThat(new Credit(BigDecimal.ZERO, 12).payment(usd("1200.00"))).isEqualTo(usd("100.00"));
  }

  @Test
  void softenerWaterIsPricedAtTheStepItFallsIn() {
    BlockRate rate =
        new BlockRate(
            List.of(
                new BlockRate.Block(Volume.ofGallons(3_000), price("4.00")),
                new BlockRate.Block(Volume.ofGallons(8_000), price("6.00")),
                new BlockRate.Block(BlockRate.UNLIMITED, price("9.00"))));

    assertThat(rate.monthly(Volume.ofGallons(2_000)).getAmount()).isEqualByComparingTo("8.00");
    assertThat(rate.monthly(Volume.ofGallons(9_000)).getAmount()).isEqualByComparingTo("51.00");
    BigMoney across = rate.yearlyCostOf(Volume.ofGallons(12 * 2_500), Volume.ofGallons(12 * 1_000));
    assertThat(across.getAmount()).as("500 gal at 4 and 500 at 6").isEqualByComparingTo("60.00");
  }

  @Test
  void badRatesAreRefused() {
    assertThatThrownBy(() -> new BlockRate(List.of())).hasMessageContaining("at least one step");
    assertThatThrownBy(() -> BlockRate.flat(price("-1"))).hasMessageContaining("from 0 to");
    BlockRate.Block block = new BlockRate.Block(Volume.ofGallons(10), price("1"));
    assertThatThrownBy(() -> new BlockRate(List.of(block, block)))
        .hasMessageContaining("must end above");
  }

  @Test
  void presentValueOfEqualRatesIsTheNumberOfYears() {
    assertThat(PresentValue.escalating(0.03, 0.03, 12)).isEqualTo(12);
    assertThat(PresentValue.escalating(0.03, 0.02, 0)).isZero();
  }

  /** 8.5302 × 100 and, rising by 2 % a year, 9.4813 × 10: examples of the factors. */
  @Test
  void yearsOfRunningAreEachLineTimesItsFactor() {
    Map<CostKind, Money> lines = new EnumMap<>(CostKind.class);
    for (CostKind kind : CostKind.values()) {
      lines.put(kind, usd("0"));
    }
    lines.put(CostKind.SALT, usd("100"));
    lines.put(CostKind.SEWER, usd("10"));
    RunningYears running = new RunningYears(lines, new Escalation(0, 0.02), 0.03);

    assertThat(running.after(10)).isEqualTo(usd("947.83"));
    assertThat(running.after(0)).isEqualTo(usd("0"));
    lines.remove(CostKind.SERVICE);
    assertThatThrownBy(() -> new RunningYears(lines, Escalation.USUAL, 0.03))
        .hasMessageContaining("every kind of cost");
  }

  @Test
  void taxAndPaymentsAreInTheSmallestUnitOfAnyCurrency() {
    BigDecimal tax = new BigDecimal("0.08");
    Terms terms =
        Terms.builder().taxRate(tax).financing(new Credit(new BigDecimal("0.06"), 7)).build();
    Quote yen = new Quote(offer("JPY 100007"), Control.METERED_AT_NIGHT, terms);
    Quote dinar = new Quote(offer("KWD 100.007"), Control.METERED_AT_NIGHT, terms);

    assertThat(yen.tax()).as("8,000.56").isEqualTo(Money.parse("JPY 8001"));
    assertThat(dinar.tax()).as("8.00056").isEqualTo(Money.parse("KWD 8.001"));
    assertThat(financed(yen).monthly()).allMatch(payment -> payment.getScale() == 0);
    assertThat(financed(dinar).monthly()).allMatch(payment -> payment.getScale() == 3);
    assertThat(financed(yen).total()).isGreaterThan(yen.total());
  }

  private static PaymentPlan financed(Quote quote) {
    Money nothing = Money.zero(quote.total().getCurrencyUnit());
    return new PaymentPlan(quote.terms().creditWay(nothing).orElseThrow(), quote.total());
  }

  private static Offer offer(String price) {
    return Offer.of(UNIT, Money.parse(price)).build();
  }

  @Test
  void equalPricesAreEqualHoweverTheyAreWritten() {
    assertThat(Terms.builder().taxRate(new BigDecimal("0.10")).build())
        .isEqualTo(Terms.builder().taxRate(new BigDecimal("0.1")).build());
    Tariff.Builder tariff = Tariff.builder("t", CurrencyUnit.USD);
    assertThat(tariff.salt(price("0.20")).build())
        .isEqualTo(Tariff.builder("t", CurrencyUnit.USD).salt(price("0.2")).build());
    assertThat(BlockRate.flat(price("4.00"))).isEqualTo(BlockRate.flat(price("4")));
    assertThat(new Credit(new BigDecimal("0.060"), 12))
        .isEqualTo(new Credit(new BigDecimal("0.06"), 12));
  }

  @Test
  void oneCurrencyInATariff() {
    Tariff.Builder tariff = Tariff.builder("t", CurrencyUnit.USD);
    BigMoney euro = BigMoney.parse("EUR 1");

    assertThatThrownBy(() -> tariff.salt(euro)).hasMessageContaining("price of salt is in EUR");
    assertThatThrownBy(() -> tariff.sewer(BlockRate.flat(euro)))
        .hasMessageContaining("rate of the sewer is in EUR, but USD is wanted");
    BlockRate.Block first = new BlockRate.Block(Volume.ofGallons(10), price("1"));
    assertThatThrownBy(
            () -> new BlockRate(List.of(first, new BlockRate.Block(BlockRate.UNLIMITED, euro))))
        .hasMessageContaining("the price of step 2 is in EUR");
  }

  @Test
  void aBuiltTariffIsASnapshotAndCanBeChanged() {
    Tariff.Builder builder = Tariff.builder("t", CurrencyUnit.USD);
    Tariff before = builder.build();
    builder.salt(price("9"));

    assertThat(before.salt()).isEqualTo(price("0.2"));
    assertThat(before.toBuilder().build()).isEqualTo(before).hasSameHashCodeAs(before);
    assertThat(before.withSaltTimes(BigDecimal.TEN).salt().getAmount()).isEqualByComparingTo("2");
    Terms terms = Terms.builder().financing(new Credit(BigDecimal.ZERO, 12)).build();
    assertThat(terms.toBuilder().build()).isEqualTo(terms);
    assertThat(terms.toBuilder().withoutFinancing().build()).isEqualTo(Terms.USUAL);
    Offer offer = offer("USD 12").toBuilder().meterExtra(usd("3")).build();
    assertThat(offer.toBuilder().build()).isEqualTo(offer).isNotEqualTo(offer("USD 12"));
  }
}
