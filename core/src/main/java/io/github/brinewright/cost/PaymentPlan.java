package io.github.brinewright.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a way to pay comes to for a price: exact decimals, each payment rounded once. Payments of a
 * credit are level; the first is the same as the others, and the last takes what is left, at most a
 * cent a month less. An odd first period is charged by its days, a thirtieth of a month's interest
 * each. Example: 1,525.00 with a quarter down, the rest in 36 months at 8.9 % → 36.32 a month.
 * Source: level payments, any text on engineering economics; rate by 12 CFR 1026, Appendix J.
 *
 * @param way how it is paid
 * @param price with tax; 0 to 10^12
 */
public record PaymentPlan(PaymentWay way, Money price) {
  private static final int DAYS = 30;
  private static final int MONTHS_A_YEAR = 12;

  /**
   * @param way how it is paid
   * @param price with tax
   * @throws IllegalArgumentException when the price is outside its range, or in another currency
   */
  public PaymentPlan {
    Prices.require("price", price, way.fee().getCurrencyUnit());
  }

  /** {@return what is due with the signature: the deposit and the fee of a credit} */
  public Money down() {
    return deposit().plus(way.fee());
  }

  private Money deposit() {
    return price.multipliedBy(way.depositShare(), RoundingMode.HALF_EVEN);
  }

  /** {@return what is due after the installation; nothing where payments are monthly} */
  public Money afterInstallation() {
    return way.kind() == PaymentKind.CASH
        ? price.minus(down())
        : Money.zero(price.getCurrencyUnit());
  }

  /** {@return the monthly payments in their order; none of cash} */
  public List<Money> monthly() {
    return switch (way.kind()) {
      case CASH -> List.of();
      case CREDIT -> credit();
      case RENTAL -> Collections.nCopies(way.months(), rent());
    };
  }

  private Money rent() {
    return price.multipliedBy(way.monthlyShare(), RoundingMode.HALF_EVEN);
  }

  private List<Money> credit() {
    Money owed = owedAtFirst();
    Money each = new Credit(way.yearlyRate(), way.months()).payment(owed);
    List<Money> payments = new ArrayList<>(Collections.nCopies(way.months() - 1, each));
    payments.add(last(owed, each));
    return List.copyOf(payments);
  }

  /**
   * The balance with the interest of a first period that is not a month; less for a shorter one.
   */
  private Money owedAtFirst() {
    Money balance = price.minus(deposit());
    BigDecimal odd = BigDecimal.valueOf(way.firstDays() - DAYS);
    BigDecimal interest =
        way.yearlyRate()
            .multiply(odd)
            .divide(BigDecimal.valueOf((long) MONTHS_A_YEAR * DAYS), 12, RoundingMode.HALF_EVEN);
    return balance.multipliedBy(BigDecimal.ONE.add(interest), RoundingMode.HALF_EVEN);
  }

  /** What is left for the last month when every interest is rounded to the cent. */
  private Money last(Money owed, Money each) {
    BigDecimal monthly =
        way.yearlyRate().divide(BigDecimal.valueOf(MONTHS_A_YEAR), 20, RoundingMode.HALF_EVEN);
    Money left = owed;
    for (int month = 1; month < way.months(); month++) {
      left = left.plus(left.multipliedBy(monthly, RoundingMode.HALF_EVEN)).minus(each);
    }
    return left.plus(left.multipliedBy(monthly, RoundingMode.HALF_EVEN));
  }

  /** {@return what it is bought for at the end of a rental; empty where it is given back} */
  public Optional<Money> atTheEnd() {
    return way.endShare().map(share -> price.multipliedBy(share, RoundingMode.HALF_EVEN));
  }

  /** {@return all that is paid for it, the sum at the end of a rental included} */
  public Money total() {
    Money monthly = monthly().stream().reduce(Money.zero(price.getCurrencyUnit()), Money::plus);
    return down()
        .plus(afterInstallation())
        .plus(monthly)
        .plus(atTheEnd().orElse(Money.zero(price.getCurrencyUnit())));
  }

  /** {@return interest and fee of a credit; zero of other ways} */
  public Money financeCharge() {
    return way.kind() == PaymentKind.CREDIT
        ? total().minus(price)
        : Money.zero(price.getCurrencyUnit());
  }

  /** {@return the annual percentage rate of a credit as a fraction; empty of other ways} */
  public Optional<BigDecimal> annualRate() {
    Money financed = price.minus(deposit()).minus(way.fee());
    return way.kind() == PaymentKind.CREDIT && financed.isPositive()
        ? Optional.of(AnnualRate.ofMonthly(financed, monthly(), way.firstDays() / (double) DAYS))
        : Optional.empty();
  }

  /**
   * {@return all that is paid over the years compared: what the way comes to, and running in
   * today's money} What a rental holds of service is not paid twice.
   *
   * @param life of what is bought at this price
   */
  public Money over(LifeCost life) {
    Money all = total().plus(life.total().minus(life.quote().total()));
    int covered = Math.min(life.years(), way.months() / MONTHS_A_YEAR);
    return way.serviceIncluded() ? all.minus(life.of(CostKind.SERVICE, covered)) : all;
  }
}
