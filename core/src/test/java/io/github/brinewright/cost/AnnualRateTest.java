package io.github.brinewright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;

class AnnualRateTest {
  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static List<Money> payments(String first, int number, String each, String last) {
    List<Money> all = new ArrayList<>();
    if (!first.isEmpty()) {
      all.add(usd(first));
    }
    all.addAll(Collections.nCopies(number, usd(each)));
    if (!last.isEmpty()) {
      all.add(usd(last));
    }
    return all;
  }

  /**
   * The monthly examples of 12 CFR 1026, Appendix J, (c)(1)(i), (c)(1)(ii) with a long first period
   * (February 10 to April 1: a month and 19 of 30 days), (c)(2)(i), (c)(3)(i) and (c)(4)(i), which
   * print the rate to a hundredth of a per cent.
   */
  @ParameterizedTest
  @CsvSource({
    "5000, '',     24, 230, '',     0,  9.69",
    "6000, '',     36, 200, '',     19, 11.82",
    "5000, 250.00, 23, 230, '',     0,  10.08",
    "5000, '',     23, 230, 280.00, 0,  10.50",
    "5000, 250.00, 22, 230, 280.00, 0,  10.90"
  })
  void theExamplesOfTheRegulationComeOut(
      String amount, String first, int number, String each, String last, int days, double percent) {
    double months = 1 + days / 30.0;

    assertThat(
            AnnualRate.ofMonthly(usd(amount), payments(first, number, each, last), months)
                .doubleValue())
        .isCloseTo(percent / 100, within(0.00005));
  }

  /**
   * The examples of 12 CFR 1026, Appendix J, with an odd first period and other unit-periods than a
   * month: (c)(1)(iii) to (v), (c)(2)(ii), (c)(3)(ii) and (c)(4)(ii). The equation is that of a
   * month with the unit-period in its place, so the rate of a unit-period is a twelfth of what is
   * returned; the first period is in days, of a unit-period of so many days. The rate is printed to
   * a hundredth of a per cent.
   */
  @ParameterizedTest
  @CsvSource({
    "5000,  '',     24, 219.17, '',     6,   15, 24, 10.34",
    "10000, '',     40, 385.00, '',     129, 90, 4,  8.97",
    "500,   '',     30, 17.60,  '',     32,  7,  52, 14.96",
    "400,   39.50,  11, 38.31,  '',     33,  28, 13, 28.50",
    "200,   '',     19, 9.50,   30.00,  8,   14, 26, 12.22",
    "8000,  449.36, 18, 465.00, 200.00, 52,  60, 6,  7.30"
  })
  void anOddFirstPeriodIsThatOfTheRegulation(ArgumentsAccessor example) {
    List<Money> payments =
        payments(
            example.getString(1),
            example.getInteger(2),
            example.getString(3),
            example.getString(4));
    double first = example.getDouble(5) / example.getDouble(6);
    double unitPeriods = example.getDouble(7);

    BigDecimal rate = AnnualRate.ofMonthly(usd(example.getString(0)), payments, first);

    assertThat(rate.doubleValue() / 12 * unitPeriods)
        .isCloseTo(example.getDouble(8) / 100, within(0.00005));
  }

  @Test
  void aCreditWithoutChargesHasTheRateItIsReckonedWith() {
    Credit credit = new Credit(new BigDecimal("0.089"), 36);
    List<Money> payments = Collections.nCopies(36, credit.payment(usd("1143.75")));

    assertThat(AnnualRate.ofMonthly(usd("1143.75"), payments, 1).doubleValue())
        .as("payments are rounded up to a cent")
        .isCloseTo(0.089, within(0.0003));
    assertThat(AnnualRate.ofMonthly(usd("1100"), payments, 1))
        .as("a charge paid at once raises it")
        .isGreaterThan(new BigDecimal("0.11"));
    assertThat(AnnualRate.ofMonthly(usd("1200"), Collections.nCopies(12, usd("100")), 1))
        .isEqualByComparingTo("0");
  }

  @Test
  void whatHasNoRateIsRefused() {
    assertThatThrownBy(() -> AnnualRate.ofMonthly(usd("0"), List.of(usd("1")), 1))
        .hasMessageContaining("no rate");
    assertThatThrownBy(() -> AnnualRate.ofMonthly(usd("1"), List.of(), 1))
        .hasMessageContaining("no rate");
    assertThatThrownBy(() -> AnnualRate.ofMonthly(usd("1"), List.of(usd("1")), 13))
        .hasMessageContaining("first payment");
  }
}
