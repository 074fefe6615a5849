package io.github.brinewright.job;

import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The columns of payments.csv: one row for each way to pay. */
public final class PaymentColumns {
  /** All of them. */
  static final Columns<PaymentDraft, PaymentWay> COLUMNS =
      monthly(texts(new Columns<PaymentDraft, PaymentWay>("payments.csv")));

  private PaymentColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<PaymentDraft, PaymentWay> texts(
      Columns<PaymentDraft, PaymentWay> columns) {
    columns
        .always(Typed.shortName("way_id").needed(), (draft, id) -> draft.id = id, PaymentWay::id)
        .always(
            Typed.choice("kind", PaymentKind.class).needed(),
            (draft, kind) -> draft.kind = kind,
            PaymentWay::kind);
    LocalTexts.add(
        columns,
        "name",
        (draft, change) -> draft.name = change.apply(draft.name),
        PaymentWay::name);
    return LocalTexts.add(
        columns,
        "text",
        (draft, change) -> draft.text = change.apply(draft.text),
        PaymentWay::text);
  }

  private static Columns<PaymentDraft, PaymentWay> monthly(
      Columns<PaymentDraft, PaymentWay> columns) {
    return columns
        .always(
            Typed.fraction("deposit_percent", 0, 100).usual(BigDecimal.ZERO),
            (draft, share) -> draft.deposit = share,
            PaymentWay::depositShare)
        .always(
            Typed.fraction("percent_per_year", 0, 60).usual(BigDecimal.ZERO),
            (draft, rate) -> draft.rate = rate,
            PaymentWay::yearlyRate)
        .add(
            Typed.whole("months", PaymentWay.MONTHS).unit("months"),
            (draft, months) -> draft.months = months,
            way -> Optional.of(way.months()).filter(months -> months > 0))
        .always(
            Measures.price("fee").usual(BigDecimal.ZERO),
            (draft, fee) -> draft.fee = fee,
            way -> way.fee().getAmount())
        .always(
            Typed.whole("first_payment_days", PaymentWay.FIRST_DAYS)
                .unit("days")
                .usual(PaymentWay.USUAL_FIRST_DAYS),
            (draft, days) -> draft.firstDays = days,
            PaymentWay::firstDays)
        .add(
            Typed.text("creditor"),
            (draft, creditor) -> draft.creditor = creditor,
            way -> Optional.of(way.creditor()).filter(known -> !known.isEmpty()))
        .always(
            Typed.fraction("rent_percent_per_month", 0, 100).usual(BigDecimal.ZERO),
            (draft, share) -> draft.monthly = share,
            PaymentWay::monthlyShare)
        .add(
            Typed.fraction("end_percent", 0, 100),
            (draft, share) -> draft.end = share,
            PaymentWay::endShare)
        .always(
            Typed.yesNo("service_included").usual(false),
            (draft, yes) -> draft.serviceIncluded = yes,
            PaymentWay::serviceIncluded);
  }
}
