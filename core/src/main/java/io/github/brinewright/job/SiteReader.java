package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Place;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.softener.Resin;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

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
  private final JobFiles files;
  private final Stamp stamp;
  private @Nullable IdHashes ids;
  private @Nullable Problem unreadable;

  /** Size and time of a file, by which a change is noticed. */
  private record Stamp(long size, Instant changed) {
    static Stamp of(JobFiles files) {
      try {
        return new Stamp(files.size(SiteCells.FILE), files.changed(SiteCells.FILE));
      } catch (IOException gone) {
        return new Stamp(-1, Instant.EPOCH);
      }
    }
  }

  /** Where a site names no tariff, {@code otherwise} holds, and where it names no place, that. */
  SiteReader(
      JobFiles files,
      Map<String, Resin> resins,
      Map<String, Tariff> tariffs,
      Tariff otherwise,
      Place place) {
    this.files = files;
    this.resins = resins;
    this.place = place;
    this.tariffs = tariffs;
    this.otherwise = otherwise;
    stamp = Stamp.of(files);
    try {
      ids = IdHashes.of(files, COLUMNS.file(), ID.name());
    } catch (IOException failure) {
      unreadable = TextFile.problem(COLUMNS.file(), failure);
    }
  }

  /** How many rows stand below the header. */
  int rows() {
    return ids == null ? 0 : ids.rows();
  }

  /** Makes a home of each row; counts those of which none could be made. */
  OpenJob.Count each(Consumer<HomeRow> homes, Consumer<Problem> problems) {
    if (unreadable != null) {
      problems.accept(unreadable);
      return new OpenJob.Count(0, 0);
    }
    Tally tally = new Tally(homes, problems);
    Table.each(files, COLUMNS, tally::problem, row -> tally.count(home(row)));
    if (!stamp.equals(Stamp.of(files))) {
      tally.problem(Problem.whole(COLUMNS.file(), ProblemCode.FILE_CHANGED));
    }
    if (tally.homes == 0 && !tally.troubled) {
      tally.problem(Problem.whole(COLUMNS.file(), ProblemCode.NO_HOME));
    }
    return new OpenJob.Count(tally.homes, tally.refused);
  }

  /** Counts what it passes on. */
  private static final class Tally {
    private final Consumer<HomeRow> taker;
    private final Consumer<Problem> problems;
    private int homes;
    private int refused;
    private boolean troubled;

    Tally(Consumer<HomeRow> taker, Consumer<Problem> problems) {
      this.taker = taker;
      this.problems = problems;
    }

    void problem(Problem problem) {
      troubled = true;
      problems.accept(problem);
    }

    void count(Optional<HomeRow> home) {
      homes += home.isPresent() ? 1 : 0;
      refused += home.isPresent() ? 0 : 1;
      home.ifPresent(taker);
    }
  }

  private Optional<HomeRow> home(Row row) {
    SiteDraft draft = new SiteDraft();
    COLUMNS.read(row, draft);
    if (!draft.id.isEmpty() && Objects.requireNonNull(ids).repeats(draft.id)) {
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
                        new HomeRow(
                            new QuotedHome(draft.build(place), prices)
                                .reading(draft.language)
                                .recorded(draft.record()),
                            row.cells())));
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
