package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Place;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.softener.Resin;
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
  private static final Column CUSTOMER = COLUMNS.column("customer");
  private static final Column LATIN = COLUMNS.column("customer_latin");
  private static final Column GPG = COLUMNS.column("hardness_gpg");
  private static final Column MG_PER_L = COLUMNS.column("hardness_mg_per_l");
  private static final Column TARGET = COLUMNS.column("target_hardness_gpg");
  private static final Column TREATED = COLUMNS.column("treated_hardness_gpg");
  private static final Column TARIFF = COLUMNS.column("tariff_id");

  private final Map<String, Resin> resins;
  private final Map<String, Tariff> tariffs;
  private final Tariff otherwise;
  private final Place place;
  private int refused;

  /** Where a site names no tariff, {@code otherwise} holds, and where it names no place, that. */
  SiteReader(
      Map<String, Resin> resins, Map<String, Tariff> tariffs, Tariff otherwise, Place place) {
    this.resins = resins;
    this.place = place;
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
    checkName(row, draft);
    checkHardness(row, draft);
    if (draft.saysTreated() && !row.has(TREATED.name())) {
      row.needed(TREATED);
    }
    row.bothOrNone(COLUMNS.column("bill_gal"), COLUMNS.column("bill_days"));
    PresentChecks.check(row, draft.present, resins);
    return tariff(row, draft)
        .flatMap(
            prices ->
                row.build(
                    () ->
                        new QuotedHome(draft.build(place), prices)
                            .reading(draft.language)
                            .recorded(draft.record())));
  }

  private static void checkName(Row row, SiteDraft draft) {
    List<Integer> lacking = Printable.lacking(draft.customer);
    if (!lacking.isEmpty() && !row.has(LATIN.name())) {
      row.note(
          CUSTOMER.name(),
          draft.customer,
          ProblemCode.LATIN_NEEDED,
          new Argument.Text(Printable.named(lacking)),
          new Argument.ColumnName(LATIN.name()));
    }
  }

  private static void checkHardness(Row row, SiteDraft draft) {
    Hardness softened = draft.softenedHardness();
    if (row.isWhole() && row.has(GPG.name()) == row.has(MG_PER_L.name())) {
      row.note(
          GPG.name(), "", ProblemCode.HARDNESS_NEEDED, new Argument.ColumnName(MG_PER_L.name()));
    } else if (draft.target != null && softened != null && draft.target.compareTo(softened) >= 0) {
      row.note(
          TARGET.name(),
          row.cell(TARGET.name()).orElse(""),
          ProblemCode.TARGET_TOO_HIGH,
          Argument.Number.of(softened.grainsPerGallon()));
    }
  }

  private Optional<Tariff> tariff(Row row, SiteDraft draft) {
    if (draft.tariffId.isEmpty() || draft.tariffId.equals(otherwise.id())) {
      return Optional.of(otherwise);
    }
    Tariff tariff = tariffs.get(draft.tariffId);
    if (tariff == null) {
      List<String> known =
          tariffs.isEmpty() ? List.of(otherwise.id()) : List.copyOf(tariffs.keySet());
      row.unknown(TARIFF.name(), draft.tariffId, known);
    }
    return Optional.ofNullable(tariff);
  }
}
