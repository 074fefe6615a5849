package io.github.brinewright.job;

import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** Reads payments.csv: one row for each way to pay. */
final class PaymentReader {
  private static final Columns<PaymentDraft, PaymentWay> COLUMNS = PaymentColumns.COLUMNS;

  private PaymentReader() {}

  static List<PaymentWay> read(JobFiles files, CurrencyUnit currency, List<Problem> problems) {
    List<PaymentWay> ways = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : Table.read(files, COLUMNS, problems)) {
      PaymentDraft draft = new PaymentDraft();
      COLUMNS.read(row, draft);
      if (!draft.id.isEmpty() && !ids.add(draft.id)) {
        row.note("way_id", draft.id, ProblemCode.ID_TWICE);
      }
      if (draft.kind != null && draft.kind != PaymentKind.CASH && !row.has("months")) {
        row.needed(COLUMNS.column("months"));
      }
      if (draft.kind == PaymentKind.RENTAL && draft.monthly.signum() == 0) {
        row.needed(COLUMNS.column("rent_percent_per_month"));
      }
      row.checkMoney("fee", draft.fee, currency);
      row.build(() -> draft.build(currency)).ifPresent(ways::add);
    }
    return ways;
  }
}
