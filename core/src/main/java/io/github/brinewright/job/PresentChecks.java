package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.job.Problem.Argument.ColumnName;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What must agree between the cells of the softener that is already in the house. */
final class PresentChecks {
  private static final String CONTROL = "present_control";
  private static final String DAYS = "present_days";
  private static final String WEEKDAYS = "present_weekdays";
  private static final String VOLUME = "present_volume_gal";
  private static final String SET_HARDNESS = "present_set_hardness_gpg";
  private static final String SET_CAPACITY = "present_set_capacity_grains";
  private static final String RESERVE = "present_reserve_gal";
  private static final String RATED = "present_rated_grains";
  private static final String RESIN_VOLUME = "present_resin_ft3";
  private static final String DIAMETER = "present_vessel_diameter_in";
  private static final String HEIGHT = "present_vessel_height_in";
  private static final String RESIN = "present_resin_id";
  private static final String DOSAGE = "present_dosage_lb_per_ft3";
  private static final String SALT = "present_salt_lb";
  private static final String REFILL = "present_refill_min";
  private static final String REFILL_FLOW = "present_refill_gpm";
  private static final String READINGS = "present_readings";
  private static final String READ_METER = "present_read_meter";

  private static final List<String> SETTINGS =
      List.of(DAYS, WEEKDAYS, VOLUME, SET_HARDNESS, SET_CAPACITY, RESERVE);
  private static final List<String> OF_METERS =
      List.of(DAYS, VOLUME, SET_HARDNESS, SET_CAPACITY, RESERVE);
  private static final Map<Control, List<String>> FITTING =
      Map.of(
          Control.CLOCK,
          List.of(DAYS),
          Control.WEEKDAYS,
          List.of(WEEKDAYS),
          Control.METERED_AT_ONCE,
          OF_METERS,
          Control.METERED_AT_NIGHT,
          OF_METERS);

  private final Row row;
  private final PresentDraft draft;

  private PresentChecks(Row row, PresentDraft draft) {
    this.row = row;
    this.draft = draft;
  }

  /** Notes whatever is wrong with the softener of a row, and finds its resin. */
  static void check(Row row, PresentDraft draft, Map<String, Resin> resins) {
    draft.found = columns().map(Column::name).anyMatch(row::has);
    if (draft.found) {
      new PresentChecks(row, draft).check(resins);
    }
  }

  private static Stream<Column> columns() {
    return SiteColumns.all().stream().filter(column -> column.part().equals(PresentColumns.PART));
  }

  private void check(Map<String, Resin> resins) {
    checkControl();
    checkBed();
    checkSalt();
    if (row.has(READ_METER) && !row.has(READINGS)) {
      row.note(READINGS, "", ProblemCode.READINGS_NEEDED, new ColumnName(READ_METER));
    }
    if (!draft.resinId.isEmpty()) {
      draft.resin = resins.get(draft.resinId);
      if (draft.resin == null) {
        row.unknown(RESIN, draft.resinId, List.copyOf(resins.keySet()));
      }
    }
  }

  private void checkControl() {
    if (!row.has(CONTROL)) {
      Argument words = new Argument.Words(column(CONTROL).choices());
      row.note(CONTROL, "", ProblemCode.PRESENT_CONTROL_NEEDED, words);
    }
    if (draft.control == null) {
      return;
    }
    List<String> fitting = FITTING.get(draft.control);
    SETTINGS.stream().filter(row::has).filter(each -> !fitting.contains(each)).forEach(this::unfit);
    switch (draft.control) {
      case CLOCK -> filled(DAYS);
      case WEEKDAYS -> checkWeekdays();
      default -> checkMeter();
    }
  }

  private void unfit(String setting) {
    row.note(
        setting,
        row.cell(setting).orElse(""),
        ProblemCode.SETTING_UNFIT,
        new ColumnName(CONTROL),
        new Argument.Text(row.cell(CONTROL).orElse("")));
  }

  private void checkWeekdays() {
    if (!row.has(WEEKDAYS)) {
      row.note(WEEKDAYS, "", ProblemCode.WEEKDAYS_NEEDED);
    }
  }

  private void checkMeter() {
    Stream.of(SET_HARDNESS, SET_CAPACITY)
        .filter(each -> row.has(VOLUME) && row.has(each))
        .findFirst()
        .ifPresent(second -> beside(second, VOLUME, ProblemCode.METER_SET_TWICE));
    if (!row.has(VOLUME) && !row.has(SET_HARDNESS)) {
      if (row.has(SET_CAPACITY)) {
        filled(SET_HARDNESS);
      } else {
        row.note(VOLUME, "", ProblemCode.METER_SETTING_NEEDED, new ColumnName(SET_HARDNESS));
      }
    }
    draft.setToPass().ifPresent(this::checkReserve);
  }

  private void checkReserve(Volume set) {
    if (draft.reserve != null && draft.reserve.compareTo(set) >= 0) {
      double tenths = Math.round(set.gallons() * 10) / 10.0;
      String held = row.cell(RESERVE).orElse("");
      row.note(RESERVE, held, ProblemCode.RESERVE_TOO_LARGE, Argument.Number.of(tenths));
    }
  }

  private void checkBed() {
    row.bothOrNone(column(DIAMETER), column(HEIGHT));
    if (Stream.of(RATED, RESIN_VOLUME, DIAMETER, HEIGHT).noneMatch(row::has)) {
      row.note(
          RATED,
          "",
          ProblemCode.PRESENT_BED_NEEDED,
          new ColumnName(RESIN_VOLUME),
          new ColumnName(DIAMETER));
    }
  }

  /** The salt is said in one way alone. */
  private void checkSalt() {
    List<String> ways = Stream.of(DOSAGE, SALT, REFILL, REFILL_FLOW).filter(row::has).toList();
    boolean refill = ways.equals(List.of(REFILL, REFILL_FLOW));
    if (ways.size() > 1 && !refill) {
      ways.stream()
          .skip(1)
          .forEach(way -> beside(way, ways.get(0), ProblemCode.PRESENT_SALT_TWICE));
    } else if (ways.equals(List.of(REFILL_FLOW))) {
      filled(REFILL);
    }
  }

  /** Notes a cell that says once more what another one says. */
  private void beside(String second, String first, ProblemCode code) {
    row.note(second, row.cell(second).orElse(""), code, new ColumnName(first));
  }

  private void filled(String name) {
    if (!row.has(name)) {
      row.needed(column(name));
    }
  }

  private static Column column(String name) {
    return SiteColumns.COLUMNS.column(name);
  }
}
