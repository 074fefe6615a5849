package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import java.math.BigDecimal;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What a row of payments.csv says, column by column, until the way to pay can be built from it. */
final class PaymentDraft {
  String id = "";
  @Nullable PaymentKind kind;
  LocalText name = LocalText.NONE;
  LocalText text = LocalText.NONE;
  BigDecimal deposit = BigDecimal.ZERO;
  BigDecimal rate = BigDecimal.ZERO;
  @Nullable Integer months;
  BigDecimal fee = BigDecimal.ZERO;
  int firstDays = PaymentWay.USUAL_FIRST_DAYS;
  String creditor = "";
  BigDecimal monthly = BigDecimal.ZERO;
  @Nullable BigDecimal end;
  boolean serviceIncluded;

  PaymentWay build(CurrencyUnit currency) {
    PaymentWay.Builder way =
        PaymentWay.of(id, Objects.requireNonNull(kind), Money.zero(currency))
            .name(name)
            .text(text)
            .depositShare(deposit)
            .yearlyRate(rate)
            .fee(Money.of(currency, fee))
            .firstDays(firstDays)
            .creditor(creditor)
            .monthlyShare(monthly)
            .serviceIncluded(serviceIncluded);
    if (months != null) {
      way.months(months);
    }
    if (end != null) {
      way.endShare(end);
    }
    return way.build();
  }
}
