package io.github.brinewright.area;

import io.github.brinewright.area.HomeReader.Read;
import io.github.brinewright.area.HomeReader.Refused;
import io.github.brinewright.area.Totals.Count;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.softener.Regenerant;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every scenario at one home that has a softener. */
final class StudiedHome {
  private static final double MILLION = 1e6;
  private static final double MILLILITRES = 1e3;

  /** Blended water is harder than nothing: its source stays this much above it. */
  private static final double ABOVE_TARGET_GPG = 0.1;

  private final Settings now;
  private final Optional<Settings> softer;
  private final Regenerant regenerant;
  private final Map<Scenario, Setting> settings = new EnumMap<>(Scenario.class);

  private StudiedHome(Settings now, Optional<Settings> softer, Regenerant regenerant) {
    this.now = now;
    this.softer = softer;
    this.regenerant = regenerant;
    Setting found = now.asFound();
    Setting right = now.right().orElse(found);
    Setting metered = now.clock() ? now.metered().orElse(right) : found;
    settings.put(Scenario.AS_FOUND, found);
    settings.put(Scenario.CLOCKS_SET_RIGHT, now.clock() ? right : found);
    settings.put(Scenario.ALL_SET_RIGHT, right);
    settings.put(Scenario.CLOCKS_METERED, metered);
    settings.put(Scenario.LEAN_DOSAGE, now.lean().orElse(found));
    Setting untouched =
        softer.map(then -> found.softened(now.hardness(), then.hardness())).orElse(found);
    settings.put(Scenario.SOFTER_SOURCE, untouched);
    settings.put(
        Scenario.SOFTER_SOURCE_SET_RIGHT,
        softer.isPresent() ? softer.get().right().orElse(untouched) : right);
  }

  /** The home of a row; empty when it has no softener. */
  static Optional<StudiedHome> of(Map<String, String> cells, Read read, Assumed assumed)
      throws Refused {
    Site site = read.home().site();
    if (site.present().isEmpty()) {
      return Optional.empty();
    }
    PresentSoftener present = site.present().get();
    Settings now = settings(read, present);
    Optional<Map<String, String>> treated = treated(cells, site, assumed.source());
    Optional<Settings> softer =
        treated.isPresent()
            ? Optional.of(settings(HomeReader.read(treated.get()), present))
            : Optional.empty();
    return Optional.of(new StudiedHome(now, softer, present.regenerant()));
  }

  private static Settings settings(Read read, PresentSoftener present) {
    return new Settings(
        read.job().prices().home(read.home().site()),
        present,
        read.home().tariff(),
        read.job().prices());
  }

  /** The row behind a treatment of the source; empty where that does not reach or change it. */
  private static Optional<Map<String, String>> treated(
      Map<String, String> cells, Site site, Hardness source) {
    double least = site.target().grainsPerGallon() + ABOVE_TARGET_GPG;
    double then = Math.max(source.grainsPerGallon(), least);
    if (site.water().source() != WaterSource.PUBLIC_SUPPLY
        || site.softenedWater().hardness().grainsPerGallon() <= then) {
      return Optional.empty();
    }
    Map<String, String> softer = new LinkedHashMap<>(cells);
    softer.remove("hardness_mg_per_l");
    softer.put("hardness_gpg", Double.toString(then));
    softer.computeIfPresent("treated_hardness_gpg", (name, value) -> Double.toString(then));
    return Optional.of(softer);
  }

  void addTo(Totals totals, String district, Assumed assumed) {
    totals.count(Count.SOFTENERS);
    if (now.clock()) {
      totals.count(Count.CLOCKS);
    }
    if (now.right().isEmpty()) {
      totals.count(Count.NOT_SERVED);
    }
    if (softer.isPresent()) {
      totals.count(Count.SOURCE_TREATED);
    }
    add(totals, 0, Uncertain.NOTHING);
    for (int draw = 1; draw <= assumed.draws(); draw++) {
      add(totals, draw, Uncertain.draw(assumed.seed(), draw, district, now.home()));
    }
  }

  private void add(Totals totals, int draw, Uncertain unknown) {
    Map<Setting, long[]> done = new IdentityHashMap<>();
    for (Scenario scenario : Scenario.values()) {
      Setting setting = settings.get(scenario);
      totals.add(draw, scenario, done.computeIfAbsent(setting, one -> amounts(one, unknown)));
    }
  }

  private long[] amounts(Setting setting, Uncertain unknown) {
    BedSettings bed = setting.in(unknown);
    HardWater year = setting.forecast().yearAt(bed, unknown.use());
    double salt = bed.salt().times(year.regenerations()).kilograms() * MILLION;
    Volume meanDay = now.home().softenedExpected().times(unknown.use());
    long[] amounts = new long[Measure.values().length];
    put(amounts, Measure.SALT_MG, salt);
    put(amounts, Measure.POTASSIUM_CHLORIDE_MG, potassium() ? salt : 0);
    put(amounts, Measure.CHLORIDE_MG, salt * regenerant.chlorideShare());
    put(amounts, Measure.WATER_ML, bed.water().times(year.regenerations()).litres() * MILLILITRES);
    put(amounts, Measure.REGENERATIONS_MILLIONTHS, year.regenerations() * MILLION);
    put(amounts, Measure.HARD_WATER_ML, year.total().litres() * MILLILITRES);
    put(amounts, Measure.HARD_DAYS_MILLIONTHS, year.daysOf(meanDay) * MILLION);
    put(amounts, Measure.RUN_OUT_DAYS_MILLIONTHS, year.runOutDays() * MILLION);
    return amounts;
  }

  private boolean potassium() {
    return regenerant == Regenerant.POTASSIUM_CHLORIDE;
  }

  private static void put(long[] amounts, Measure measure, double value) {
    amounts[measure.ordinal()] = Math.round(value);
  }
}
