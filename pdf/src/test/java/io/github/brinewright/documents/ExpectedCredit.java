package io.github.brinewright.documents;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The credit that documents state a monthly payment of, paid off month by month here; without a fee
 * and with a first payment after a month.
 */
record ExpectedCredit(Credit credit, BigDecimal depositShare, Money price) {
  /** The first credit among the ways to pay; without ways, that of the terms. */
  static Optional<ExpectedCredit> of(PriceList prices, Money price) {
    for (PaymentWay way : prices.ways()) {
      if (way.kind() == PaymentKind.CREDIT) {
        Credit credit = new Credit(way.yearlyRate(), way.months());
        return Optional.of(new ExpectedCredit(credit, way.depositShare(), price));
      }
    }
    return prices.ways().isEmpty()
        ? prices
            .terms()
            .financing()
            .map(credit -> new ExpectedCredit(credit, prices.terms().depositShare(), price))
        : Optional.empty();
  }

  Figure months() {
    return Figure.of(credit.months());
  }

  Figure nominal() {
    return new Figure.Share(credit.yearlyRate().doubleValue(), 2);
  }

  Money down() {
    return price.multipliedBy(depositShare, RoundingMode.HALF_EVEN);
  }

  Money each() {
    return credit.payment(price.minus(down()));
  }

  Money inAll() {
    return Money.total(payments()).plus(down());
  }

  private List<Money> payments() {
    List<Money> payments = new ArrayList<>();
    double rate = credit.yearlyRate().doubleValue() / 12;
    Money owed = price.minus(down());
    for (int month = 1; month <= credit.months(); month++) {
      owed = owed.plus(owed.multipliedBy(BigDecimal.valueOf(rate), RoundingMode.HALF_EVEN));
      Money paid = month < credit.months() ? each() : owed;
      payments.add(paid);
      owed = owed.minus(paid);
    }
    return payments;
  }

  /** The annual percentage rate, by bisection of what the payments are worth. */
  Figure annualRate() {
    double financed = price.minus(down()).getAmount().doubleValue();
    if (financed <= 0) {
      return nominal();
    }
    double low = 0;
    double high = 1;
    List<Money> payments = payments();
    for (int n = 0; n < 60; n++) {
      double middle = (low + high) / 2;
      double worth = 0;
      for (int k = 0; k < payments.size(); k++) {
        worth += payments.get(k).getAmount().doubleValue() * Math.pow(1 + middle, -k - 1);
      }
      low = worth > financed ? middle : low;
      high = worth > financed ? high : middle;
    }
    return new Figure.Share(12 * low, 2);
  }
}
