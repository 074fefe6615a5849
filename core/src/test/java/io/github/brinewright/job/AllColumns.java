package io.github.brinewright.job;

import java.util.List;
import java.util.stream.Stream;

/** The columns of all files. */
final class AllColumns {
  private AllColumns() {}

  static List<Column> list() {
    return Stream.of(
            SiteColumns.all(),
            UnitColumns.all(),
            ItemColumns.all(),
            PaymentColumns.all(),
            ResinColumns.all(),
            TariffColumns.all(),
            DealerColumns.all())
        .flatMap(List::stream)
        .toList();
  }
}
