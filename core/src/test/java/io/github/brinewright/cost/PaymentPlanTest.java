package io.github.brinewright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class PaymentPlanTest {
  private static final Money NOTHING = Money.zero(CurrencyUnit.USD);

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static PaymentWay.Builder way(PaymentKind kind) {
    return PaymentWay.of("w", kind, NOTHING);
  }

  @Test
  void cashIsADepositAndTheBalance() {
    PaymentPlan plan =
        new PaymentPlan(
            way(PaymentKind.CASH).depositShare(new BigDecimal("0.25")).build(), usd("1525.01"));

    assertThat(plan.down()).isEqualTo(usd("381.25"));
    assertThat(plan.afterInstallation()).isEqualTo(usd("1143.76"));
    assertThat(plan.total()).isEqualTo(usd("1525.01"));
    assertThat(plan.annualRate()).isEmpty();
  }

  /** Paid back month by month with interest to the cent, written out here, nothing is left. */
  @Test
  void aCreditIsPaidBackToTheCent() {
    Random random = new Random(20_261_127);
    for (int n = 0; n < 300; n++) {
      int months = 1 + random.nextInt(120);
      BigDecimal rate = BigDecimal.valueOf(random.nextInt(3_000), 4);
      Money price = Money.ofMinor(CurrencyUnit.USD, 20_000 + random.nextInt(900_000));
      PaymentPlan plan =
          new PaymentPlan(way(PaymentKind.CREDIT).yearlyRate(rate).months(months).build(), price);

      Money owed = price;
      for (Money payment : plan.monthly()) {
        BigDecimal interest =
            owed.getAmount().multiply(rate).divide(new BigDecimal("12"), 2, RoundingMode.HALF_EVEN);
        owed = owed.plus(Money.of(CurrencyUnit.USD, interest)).minus(payment);
      }
      assertThat(owed.isZero()).as("%s at %s in %d months", price, rate, months).isTrue();
      assertThat(plan.financeCharge()).isEqualTo(plan.total().minus(price));
      assertThat(plan.annualRate().orElseThrow().doubleValue())
          .as("an eighth of a point is what the regulation calls accurate")
          .isCloseTo(rate.doubleValue(), within(0.00125));
    }
  }

  @Test
  void aFeeAndALongFirstPeriodRaiseWhatIsPaidAndTheRate() {
    PaymentWay.Builder plain =
        way(PaymentKind.CREDIT).yearlyRate(new BigDecimal("0.089")).months(36);
    PaymentPlan usual = new PaymentPlan(plain.build(), usd("1200"));
    PaymentPlan fee = new PaymentPlan(plain.fee(usd("45")).build(), usd("1200"));
    PaymentPlan later = new PaymentPlan(plain.firstDays(90).build(), usd("1200"));

    assertThat(fee.total().minus(usual.total())).isEqualTo(usd("45.00"));
    assertThat(fee.annualRate().orElseThrow()).isGreaterThan(usual.annualRate().orElseThrow());
    assertThat(later.financeCharge()).isGreaterThan(fee.financeCharge());
  }

  @Test
  void aRentIsAShareOfThePriceAndHoldsTheServiceItSays() {
    PaymentWay.Builder rental =
        way(PaymentKind.RENTAL)
            .months(60)
            .monthlyShare(new BigDecimal("0.022"))
            .endShare(new BigDecimal("0.1"));
    PaymentPlan plan = new PaymentPlan(rental.build(), usd("1500"));
    PaymentPlan served = new PaymentPlan(rental.serviceIncluded(true).build(), usd("1500"));

    assertThat(plan.monthly()).hasSize(60).allMatch(usd("33.00")::equals);
    assertThat(plan.atTheEnd()).contains(usd("150.00"));
    assertThat(plan.total()).isEqualTo(usd("2130.00"));
    assertThat(served.total()).isEqualTo(plan.total());
  }

  @Test
  void wrongWaysAreRefused() {
    assertThatThrownBy(() -> way(PaymentKind.CREDIT).build()).hasMessageContaining("no months");
    assertThatThrownBy(() -> way(PaymentKind.RENTAL).months(12).build())
        .hasMessageContaining("no rent");
    assertThatThrownBy(() -> new PaymentPlan(way(PaymentKind.CASH).build(), Money.parse("JPY 5")))
        .hasMessageContaining("JPY");
    assertThat(List.of(way(PaymentKind.CASH).build()))
        .containsExactly(way(PaymentKind.CASH).build());
  }
}
