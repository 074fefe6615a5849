package io.github.brinewright.job;

import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.TapIron;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Turbidity;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** The columns of sites.csv that speak of the water, raw and after a treatment. */
final class WaterColumns {
  static final Typed<Hardness> GPG = Measures.gpg("hardness_gpg", WaterAnalysis.HARDNESS);
  static final Typed<Hardness> MG_PER_L =
      Typed.number(
              "hardness_mg_per_l",
              WaterAnalysis.HARDNESS,
              Hardness::ofMilligramsPerLitre,
              Hardness::milligramsPerLitre)
          .unit("mg/L");

  private WaterColumns() {}

  static Columns<SiteDraft, QuotedHome> add(Columns<SiteDraft, QuotedHome> columns) {
    return treated(living(dissolved(metals(general(columns.part("water"))))));
  }

  private static Columns<SiteDraft, QuotedHome> general(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .add(GPG, (draft, hardness) -> draft.hardness = hardness, home -> hardness(home, false))
        .add(MG_PER_L, (draft, hardness) -> draft.hardness = hardness, home -> hardness(home, true))
        .add(
            Typed.choice("hardness_method", HardnessMethod.class),
            (draft, method) -> draft.water(water -> water.hardnessBy(method)),
            of(WaterAnalysis::hardnessMethod))
        .always(
            Typed.choice("water_source", WaterSource.class).usual(WaterSource.PUBLIC_SUPPLY),
            (draft, source) -> draft.water(water -> water.from(source)),
            of(WaterAnalysis::source))
        .add(
            Typed.date("tested_on"),
            (draft, day) -> draft.water(water -> water.date(day)),
            of(WaterAnalysis::date));
  }

  private static Columns<SiteDraft, QuotedHome> metals(Columns<SiteDraft, QuotedHome> columns) {
    found(columns, "iron_mg_per_l", Substance.IRON);
    found(columns, "dissolved_iron_mg_per_l", Substance.DISSOLVED_IRON);
    columns.add(
        Typed.yesNo("iron_clear_at_tap"),
        (draft, clear) -> draft.water(w -> w.ironAtTap(clear ? TapIron.CLEAR : TapIron.CLOUDY)),
        of(water -> water.ironAtTap().map(TapIron.CLEAR::equals)));
    found(columns, "manganese_mg_per_l", Substance.MANGANESE);
    return columns;
  }

  private static Columns<SiteDraft, QuotedHome> dissolved(Columns<SiteDraft, QuotedHome> columns) {
    columns.add(
        Typed.number("ph", WaterAnalysis.PH),
        (draft, ph) -> draft.water(water -> water.ph(ph)),
        home -> home.site().water().ph().stream().boxed().findFirst());
    found(columns, "alkalinity_mg_per_l", Substance.ALKALINITY);
    found(columns, "carbon_dioxide_mg_per_l", Substance.CARBON_DIOXIDE);
    found(columns, "tds_mg_per_l", Substance.TOTAL_DISSOLVED_SOLIDS);
    found(columns, "sodium_mg_per_l", Substance.SODIUM);
    found(columns, "chloride_mg_per_l", Substance.CHLORIDE);
    found(columns, "nitrate_mg_per_l", Substance.NITRATE);
    found(columns, "free_chlorine_mg_per_l", Substance.FREE_CHLORINE);
    found(columns, "chloramine_mg_per_l", Substance.CHLORAMINE);
    found(columns, "hydrogen_sulfide_mg_per_l", Substance.HYDROGEN_SULFIDE);
    return columns
        .add(
            Typed.number("turbidity_ntu", WaterAnalysis.TURBIDITY, Turbidity::ofNtu, Turbidity::ntu)
                .unit("NTU"),
            (draft, turbidity) -> draft.water(water -> water.turbidity(turbidity)),
            of(WaterAnalysis::turbidity))
        .add(
            Typed.number(
                    "temperature_f",
                    WaterAnalysis.TEMPERATURE,
                    Temperature::ofFahrenheit,
                    Temperature::fahrenheit)
                .unit("°F"),
            (draft, temperature) -> draft.water(water -> water.temperature(temperature)),
            of(WaterAnalysis::temperature));
  }

  private static Columns<SiteDraft, QuotedHome> living(Columns<SiteDraft, QuotedHome> columns) {
    test(columns, "bacteria", WaterAnalysis.Builder::bacteria, WaterAnalysis::bacteria);
    test(columns, "e_coli", WaterAnalysis.Builder::eColi, WaterAnalysis::eColi);
    test(
        columns, "iron_bacteria", WaterAnalysis.Builder::ironBacteria, WaterAnalysis::ironBacteria);
    return columns;
  }

  private static Columns<SiteDraft, QuotedHome> treated(Columns<SiteDraft, QuotedHome> columns) {
    return columns
        .part("treated")
        .add(
            Measures.gpg("treated_hardness_gpg", WaterAnalysis.HARDNESS),
            (draft, hardness) -> draft.treatedHardness = hardness,
            after(treated -> Optional.of(treated.hardness())))
        .add(
            lab("treated_iron_mg_per_l"),
            (draft, left) -> draft.treated(treated -> treated.withIron(left)),
            after(TreatedWater::iron))
        .add(
            lab("treated_manganese_mg_per_l"),
            (draft, left) -> draft.treated(treated -> treated.withManganese(left)),
            after(TreatedWater::manganese))
        .add(
            Typed.number("treated_ph", WaterAnalysis.PH),
            (draft, ph) -> draft.treated(treated -> treated.withPh(ph)),
            after(treated -> treated.ph().stream().boxed().findFirst()));
  }

  private static void test(
      Columns<SiteDraft, QuotedHome> columns,
      String name,
      BiConsumer<WaterAnalysis.Builder, BacteriaResult> set,
      Function<WaterAnalysis, BacteriaResult> get) {
    columns.always(
        Typed.choice(name, BacteriaResult.class).usual(BacteriaResult.NOT_DONE),
        (draft, result) -> draft.water(water -> set.accept(water, result)),
        of(get));
  }

  private static void found(
      Columns<SiteDraft, QuotedHome> columns, String name, Substance substance) {
    columns.add(
        lab(name),
        (draft, result) -> draft.water(water -> water.found(substance, result)),
        of(water -> water.result(substance)));
  }

  private static Typed<LabResult> lab(String name) {
    return Typed.labResult(name, Substance.FOUND).unit("mg/L");
  }

  /** A hardness stands in the column that writes it exactly, or else shorter. */
  private static Optional<Hardness> hardness(QuotedHome home, boolean milligrams) {
    Hardness hardness = home.site().water().hardness();
    String gpg = GPG.format().write(hardness);
    String mg = MG_PER_L.format().write(hardness);
    boolean gpgIsExact = Hardness.ofGrainsPerGallon(Double.parseDouble(gpg)).equals(hardness);
    boolean mgIsExact = Hardness.ofMilligramsPerLitre(Double.parseDouble(mg)).equals(hardness);
    boolean mgIsBetter = mgIsExact && !(gpgIsExact && gpg.length() <= mg.length());
    return Optional.of(hardness).filter(any -> milligrams == mgIsBetter);
  }

  private static <T> Function<QuotedHome, T> of(Function<WaterAnalysis, T> get) {
    return home -> get.apply(home.site().water());
  }

  private static <T> Function<QuotedHome, Optional<T>> after(
      Function<TreatedWater, Optional<T>> get) {
    return home -> home.site().treated().flatMap(get);
  }
}
