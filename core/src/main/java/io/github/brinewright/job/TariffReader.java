package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.Volume;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/** Reads tariffs.csv: one row for each tariff; rates in steps are lists separated by spaces. */
final class TariffReader {
  private static final Columns<TariffDraft, Tariff> COLUMNS = TariffColumns.COLUMNS;

  private TariffReader() {}

  static Map<String, Tariff> read(JobFiles files, CurrencyUnit currency, List<Problem> problems) {
    Map<String, Tariff> tariffs = new LinkedHashMap<>();
    int before = problems.size();
    for (Row row : Table.read(files, COLUMNS, problems)) {
      TariffDraft draft = new TariffDraft();
      COLUMNS.read(row, draft);
      if (tariffs.containsKey(draft.id)) {
        row.note("tariff_id", draft.id, ProblemCode.ID_TWICE);
      }
      checkSteps(row, "water_steps_gal_per_month", draft.waterPrices.size(), draft.waterSteps);
      checkSteps(row, "sewer_steps_gal_per_month", draft.sewerPrices.size(), draft.sewerSteps);
      row.build(() -> draft.build(currency)).ifPresent(tariff -> tariffs.put(tariff.id(), tariff));
    }
    if (tariffs.isEmpty() && problems.size() == before) {
      problems.add(Problem.whole(COLUMNS.file(), ProblemCode.NO_TARIFF));
    }
    return tariffs;
  }

  private static void checkSteps(Row row, String column, int prices, List<Volume> steps) {
    if (row.broken()) {
      return;
    }
    if (steps.size() != prices - 1) {
      row.note(
          column,
          row.cell(column).orElse(""),
          ProblemCode.STEP_COUNT,
          Argument.Number.of(prices),
          Argument.Number.of(prices - 1));
    }
    for (int i = 1; i < steps.size(); i++) {
      if (!steps.get(i).exceeds(steps.get(i - 1))) {
        row.note(column, row.cell(column).orElse(""), ProblemCode.STEPS_NOT_RISING);
        return;
      }
    }
  }
}
