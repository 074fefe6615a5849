package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.job.Problem.Argument;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads sites.csv: one row for each home. */
final class SiteReader {
  private static final Columns<SiteDraft, QuotedHome> COLUMNS = SiteColumns.COLUMNS;
  private static final Column ID = COLUMNS.column("site_id");
  private static final Column GPG = COLUMNS.column("hardness_gpg");
  private static final Column MG_PER_L = COLUMNS.column("hardness_mg_per_l");
  private static final Column TARGET = COLUMNS.column("target_hardness_gpg");
  private static final Column TARIFF = COLUMNS.column("tariff_id");

  private final Map<String, Tariff> tariffs;
  private final Tariff otherwise;
  private int refused;

  /** Sites may name one of the tariffs; where they name none, {@code otherwise} holds. */
  SiteReader(Map<String, Tariff> tariffs, Tariff otherwise) {
    this.tariffs = tariffs;
    this.otherwise = otherwise;
  }

  /** How many rows had errors. */
  int refused() {
    return refused;
  }

  List<QuotedHome> read(JobFiles files, List<Problem> problems) {
    int before = problems.size();
    List<QuotedHome> homes = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Row row : Table.read(files, COLUMNS, problems)) {
      Optional<QuotedHome> home = home(row, ids);
      refused += home.isPresent() ? 0 : 1;
      home.ifPresent(homes::add);
    }
    if (homes.isEmpty() && problems.size() == before) {
      problems.add(Problem.whole(COLUMNS.file(), ProblemCode.NO_HOME));
    }
    return homes;
  }

  private Optional<QuotedHome> home(Row row, Set<String> ids) {
    SiteDraft draft = new SiteDraft();
    COLUMNS.read(row, draft);
    if (!draft.id.isEmpty() && !ids.add(draft.id.toLowerCase(Locale.ROOT))) {
      row.note(ID.name(), draft.id, ProblemCode.ID_TWICE);
    }
    checkHardness(row, draft);
    row.bothOrNone(COLUMNS.column("bill_gal"), COLUMNS.column("bill_days"));
    return tariff(row, draft)
        .flatMap(
            prices ->
                row.build(() -> new QuotedHome(draft.build(), prices).reading(draft.language)));
  }

  private static void checkHardness(Row row, SiteDraft draft) {
    if (row.isWhole() && row.has(GPG.name()) == row.has(MG_PER_L.name())) {
      row.note(
          GPG.name(), "", ProblemCode.HARDNESS_NEEDED, new Argument.ColumnName(MG_PER_L.name()));
    } else if (draft.target != null
        && draft.hardness != null
        && draft.target.compareTo(draft.hardness) >= 0) {
      row.note(
          TARGET.name(),
          row.cell(TARGET.name()).orElse(""),
          ProblemCode.TARGET_TOO_HIGH,
          Argument.Number.of(draft.hardness.grainsPerGallon()));
    }
  }

  private Optional<Tariff> tariff(Row row, SiteDraft draft) {
    if (draft.tariffId.isEmpty() || draft.tariffId.equals(otherwise.id())) {
      return Optional.of(otherwise);
    }
    Tariff tariff = tariffs.get(draft.tariffId);
    if (tariff == null) {
      row.unknown(TARIFF.name(), draft.tariffId, List.copyOf(tariffs.keySet()));
    }
    return Optional.ofNullable(tariff);
  }
}
