package io.github.brinewright;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.AnnualRate;
import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.PresentValue;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.demand.CompensatedHardness;
import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.FixtureUnits;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.demand.PeakFlow;
import io.github.brinewright.demand.ReadInterval;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.demand.UseFromReadings;
import io.github.brinewright.demand.UseTotal;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.IonHardness;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.BeadSettling;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.hydraulics.WaterProperties;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.regeneration.WeekdaySchedule;
import io.github.brinewright.sale.HomeSale;
import io.github.brinewright.sale.SigningTerms;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.ColdWater;
import io.github.brinewright.softener.ColdWaterBasis;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.treatment.NeutralizerMineral;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentPosition;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The numbers that the worked examples of the Javadoc print are those that the code computes. */
class DocExamplesTest {
  private static final Pattern DOC = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
  private static final Pattern EXAMPLE = Pattern.compile("Example: ([^{]+?)\\.(?= [A-Z@{<]|\\s*$)");
  private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d.,])\\d[\\d,]*(?:\\.\\d+)?");

  private static final Temperature SIXTY = Temperature.ofFahrenheit(60);
  private static final Volume GALLON = Volume.ofGallons(1);
  private static final DailyVariation USUAL = DailyVariation.USUAL;
  private static final Fluid THIN = fluid(1000, 1);
  private static final PackedBed BED = bed(1, 0.8, 0.4);
  private static final RatedCapacityBasis RATED =
      new RatedCapacityBasis(grains(32_000), Volume.ofCubicFeet(1), Regenerant.SODIUM_CHLORIDE);
  private static final BrineRefill REFILL =
      new BrineRefill(
          RATED,
          FlowRate.ofGallonsPerMinute(0.5),
          Duration.ofSeconds(6),
          Temperature.ofFahrenheit(60));
  private static final LikelyUse LIKELY =
      new LikelyUse(USUAL, UncertainMean.WITHOUT_BILL, YearDays.ALWAYS_AT_HOME);
  private static final LikelyUse LIKELY_BILLED =
      new LikelyUse(USUAL, UncertainMean.WITH_BILL, YearDays.ALWAYS_AT_HOME);
  private static final Hardness COMPENSATED = gpg(22.4);

  /** Type and example, as the Javadoc has them, with what the code computes. */
  private static final Map<String, Supplier<?>> COMPUTED =
      Map.ofEntries(
          entry("AgeLoss: 10 years at 3 % → 0.737", DocExamplesTest::leftAfterTenYears),
          entry(
              "Vessel: 9 × 48 in → 1 ft3",
              () -> new Vessel(Length.ofInches(9), Length.ofInches(48)).usualBed().cubicFeet()),
          entry(
              "BrineTank: 18 in wide, 33 in high, filled to 6 in below the rim → 286 lb of salt",
              () -> new BrineTank(Length.ofInches(18), Length.ofInches(33)).storage().pounds()),
          entry(
              "DosageCurveBasis: 1 ft3 of standard gel at 6 lb/ft3, factor 0.9 → 17,781 grains and"
                  + " 6 lb",
              DocExamplesTest::byCurve),
          entry(
              "RatedCapacityBasis: 32,000 rated → 25,600 usable, 7.68 lb",
              () -> List.of(RATED.usable().grains(), RATED.saltPerRegeneration().pounds())),
          entry(
              "Regenerant: 7.864 mg/L of sodium, 13.374 mg/L of potassium",
              () ->
                  Arrays.stream(Regenerant.values())
                      .map(salt -> salt.addedForOneGrain().milligramsPerLitre())
                      .toList()),
          entry(
              "ShippedResins: 6 lb/ft3 → 19,756 grains/ft3",
              () ->
                  ShippedResins.STANDARD_GEL
                      .curve()
                      .at(SaltDosage.ofPoundsPerCubicFoot(6))
                      .grainsPerCubicFoot()),
          entry(
              "ShippedResins: 10 lb/ft3 → 27,087 grains/ft3",
              () ->
                  ShippedResins.FINE_MESH
                      .curve()
                      .at(SaltDosage.ofPoundsPerCubicFoot(10))
                      .grainsPerCubicFoot()),
          entry(
              "IonHardness: Ca 20, Mg 10 → 91.12 mg/L",
              () -> IonHardness.of(mg(20), mg(10)).milligramsPerLitre()),
          entry(
              "CompensatedHardness: 18 + 4 × 0.8 + 6 × 0.2 = 22.4 gpg",
              () ->
                  new CompensatedHardness(water(), FoulingAllowances.USUAL)
                      .value()
                      .grainsPerGallon()),
          entry("DailyVariation: 0.461 → 4.705", USUAL::shape),
          entry(
              "DailyVariation: 0.95 at 0.457 → 1.851",
              () -> new DailyVariation(0.457, 0, USUAL.weekdays()).quantile(0.95)),
          entry("DailyVariation: 1.5 at 0.461 → 0.137", () -> USUAL.exceedance(1.5)),
          entry("DailyVariation: 1.48 at 0.461 → 0.05", () -> USUAL.excessBeyond(1.48)),
          entry("DailyVariation: 5 days, 6 → 0.185", () -> USUAL.totalBeyond(5, 6)),
          entry("DailyVariation: 0.461 → 0.606", USUAL::meanExcess),
          entry("DailyVariation: 0.05 at 0.461 → 1.480", () -> USUAL.reserveForRisk(0.05)),
          entry(
              "UncertainMean: 0.75 at 0.457 → 1.22",
              () -> UncertainMean.WITHOUT_BILL.quantile(0.75)),
          entry(
              "UseFromReadings: 150 gal a day at 0.457 before, 90 days of 2026 from January 1 with"
                  + " 18,000 gal → 195.7 gal, known to 0.128",
              DocExamplesTest::read),
          entry("LikelyUse: 1.59 → 0.89", () -> LIKELY.coverage(1.59)),
          entry(
              "LikelyUse: 1 day and 0.9 → 1.63 with a bill and 1.85 without",
              () -> List.of(LIKELY_BILLED.factor(1, 0.9), LIKELY.factor(1, 0.9))),
          entry(
              "LikelyUse: 0.05 → 1.51 with a bill, 2.06 without",
              () -> List.of(LIKELY_BILLED.reserveForRisk(0.05), LIKELY.reserveForRisk(0.05))),
          entry(
              "LikelyUse: 0.75 → 1.22 without a bill, 1.06 with one",
              () -> List.of(LIKELY.highMean(0.75), LIKELY_BILLED.highMean(0.75))),
          entry(
              "ColdWater: 45 °F → 0.875",
              () -> ColdWater.USUAL.share(Temperature.ofFahrenheit(45))),
          entry(
              "ColdWaterBasis: a share of 0.875 of 17,781 grains → 15,558 grains",
              () -> new ColdWaterBasis(onCurve(), 0.875).usable().grains()),
          entry(
              "Regenerant: potassium chloride at 10 °C → 2.60 lb",
              () ->
                  Regenerant.POTASSIUM_CHLORIDE
                      .dissolvedByOneGallon(Temperature.ofCelsius(10))
                      .pounds()),
          entry(
              "UseTotal: mean 1, variance 0.2125, more than 1.5 → 0.137",
              () -> new UseTotal(1, 0.2125).beyond(1.5)),
          entry(
              "UseTotal: mean 1, variance 0.2125, beyond 1.5 → 0.047",
              () -> new UseTotal(1, 0.2125).excess(1.5)),
          entry("FixtureUnits: 10 → 14.6 gpm", () -> FixtureUnits.flow(10).gallonsPerMinute()),
          entry(
              "FixtureUnits: 2 showers and a lavatory → 3.5",
              () -> FixtureUnits.of(Map.of(Fixture.SHOWER, 2, Fixture.LAVATORY, 1))),
          entry(
              "HomeLoad: 225 gal × 22.4 gpg = 5,040 grains",
              () -> new HomeLoad(site()).dailyLoad().grains()),
          entry(
              "PeakFlow: 2 bathrooms → 9 gpm",
              () -> new PeakFlow(Household.of(3).bathrooms(2).build()).value().gallonsPerMinute()),
          entry(
              "Backwash: 0.60 mm beads of 1,280 kg/m3, 50 % at 50 °F → 5.14 gpm/ft2",
              () ->
                  new Backwash(ShippedResins.STANDARD_GEL, Temperature.ofFahrenheit(50), 0.5)
                      .velocity()
                      .gallonsPerMinutePerSquareFoot()),
          entry(
              "Backwash: 0.475 m from 0.3498 to 0.460 → 0.572 m",
              () -> Backwash.depthAfter(Length.ofMetres(0.475), 0.3498, 0.460).metres()),
          entry("BeadSettling: Reynolds 200 → 0.76822", () -> BeadSettling.drag(200)),
          entry(
              "BeadSettling: 70 μm, 2,600 kg/m3 in water of 1,000 kg/m3 and 1 mPa s → 4.14 mm/s",
              () ->
                  1000
                      * BeadSettling.terminal(
                              Length.ofMillimetres(0.07),
                              Density.ofKilogramsPerCubicMetre(2_600),
                              THIN)
                          .metresPerSecond()),
          entry("BeadSettling: 10 → 3.535", () -> BeadSettling.exponent(10)),
          entry(
              "PackedBed: 0.8 mm beads, voidage 0.4, 1 mm/s of water (1,000 kg/m3, 1 mPa s), 1 m →"
                  + " 1,338.9 Pa",
              () -> BED.loss(FlowVelocity.ofMetresPerSecond(1e-3), THIN).pascals()),
          entry(
              "PackedBed: 0.8 mm beads, voidage 0.4, 1 mm/s of water (1,000 kg/m3, 1 mPa s) →"
                  + " 1.333",
              () -> BED.reynolds(FlowVelocity.ofMetresPerSecond(1e-3), THIN)),
          entry(
              "PackedBed: 1.724 m, voidage 0.42, beads of 1,000 in a gas of 2.374 kg/m3 → 9,783 Pa",
              () ->
                  bed(1.724, 1, 0.42)
                      .liftingLoss(Density.ofKilogramsPerCubicMetre(1_000), fluid(2.374, 1))
                      .pascals()),
          entry(
              "WaterProperties: 20 °C → 998.20 kg/m3",
              () -> WaterProperties.density(Temperature.ofCelsius(20)).kilogramsPerCubicMetre()),
          entry(
              "WaterProperties: 10 °C → 1.307 mPa s",
              () -> WaterProperties.viscosity(Temperature.ofCelsius(10)).millipascalSeconds()),
          entry("Brine: 60 °F → 0.26395", () -> Brine.saturation(SIXTY)),
          entry(
              "Brine: 20 % at 20 °C → 1,147.8 kg/m3",
              () -> Brine.density(0.2, Temperature.ofCelsius(20)).kilogramsPerCubicMetre()),
          entry(
              "Brine: 1 gal at 60 °F → 2.99 lb",
              () -> Brine.saltToSaturate(GALLON, SIXTY).pounds()),
          entry(
              "Brine: 1 gal at 60 °F → 1.13 gal",
              () -> Brine.saturatedFrom(GALLON, SIXTY).gallons()),
          entry(
              "BrineRefill: 7.68 lb → 2.56 gal → 5.12 min at 0.5 gpm, set 5.2 min, giving 7.8 lb",
              () ->
                  List.of(
                      REFILL.exactWater().gallons(),
                      Minutes.of(REFILL.exact()),
                      REFILL.rate().gallonsPerMinute(),
                      Minutes.of(REFILL.set()),
                      REFILL.saltGiven().pounds())),
          entry("ClockSchedule: 25,600 ÷ 5,040 = 5.08 → 5 days", DocExamplesTest::byClock),
          entry(
              "MeteredSchedule: 25,600 − 5,040 grains at 22.4 gpg → 918 gal",
              DocExamplesTest::byMeter),
          entry(
              "Reserve: 225 gal at 22.4 gpg → 5,040 grains",
              () -> Reserve.ofDay(Volume.ofGallons(225), COMPENSATED).held().grains()),
          entry(
              "Reserve: 5 % at 100 gallons a day of 10 gpg, which vary as usual and are known by a bill"
                  + " → 1,508 grains",
              () ->
                  Reserve.forRisk(0.05, LIKELY_BILLED, Volume.ofGallons(100), gpg(10))
                      .held()
                      .grains()),
          entry(
              "WeekdayClock: 3 days → Monday, Wednesday, Friday",
              () -> WeekdayClock.forGap(3).days()),
          entry(
              "WeekdaySchedule: a bed for a clock of 5 days → Monday, Thursday",
              () -> new WeekdaySchedule(clock()).weekdays()),
          entry(
              "AddedIons: 10 gpg → 78.6 mg/L of sodium",
              () -> design(10, 1).addedIons().sodium().milligramsPerLitre()),
          entry(
              "Efficiency: 25,600 grains with 7.8 lb → 3,282 grains a pound",
              () -> design(18, 3).efficiency().salt().grainsPerPound()),
          entry(
              "Quote: 999.99 and 333.33 for the installation, 6.25 % tax on the softener → 62.50"
                  + " tax, 1,395.82 in all",
              DocExamplesTest::quoted),
          entry(
              "Credit: 1,200.00 without interest in 12 months → 100.00",
              () -> amount(new Credit(BigDecimal.ZERO, 12).payment(Money.parse("USD 1200.00")))),
          entry(
              "BlockRate: 6.00 for each 1,000 gal, 3,000 gal more → 18.00",
              () ->
                  BlockRate.flat(BigMoney.parse("USD 6"))
                      .yearlyCostOf(Volume.ofGallons(50_000), Volume.ofGallons(3_000))
                      .getAmount()
                      .doubleValue()),
          entry(
              "AnnualRate: 5,000.00, 24 payments of 230.00, the first after a month → 0.0969",
              () ->
                  AnnualRate.ofMonthly(
                          Money.parse("USD 5000"),
                          Collections.nCopies(24, Money.parse("USD 230")),
                          1)
                      .doubleValue()),
          entry(
              "PaymentPlan: 1,525.00 with a quarter down, the rest in 36 months at 8.9 % → 36.32 a"
                  + " month",
              () ->
                  amount(
                      new PaymentPlan(
                              PaymentWay.of("w", PaymentKind.CREDIT, Money.parse("USD 0"))
                                  .depositShare(new BigDecimal("0.25"))
                                  .yearlyRate(new BigDecimal("0.089"))
                                  .months(36)
                                  .build(),
                              Money.parse("USD 1525.00"))
                          .monthly()
                          .get(0))),
          entry(
              "SigningTerms: a price of 1,525.00 in California → 152.50",
              () ->
                  amount(
                      SigningTerms.of(
                              Place.of("US-CA"),
                              HomeSale.USUAL,
                              Locale.US,
                              LocalDate.of(2026, 11, 27))
                          .highestDeposit(Money.parse("USD 1525.00"))
                          .orElseThrow())),
          entry(
              "Credit: 18 %, 15 → 0.196403",
              () -> Credit.recovery(new BigDecimal("0.18"), 15).doubleValue()),
          entry(
              "NeutralizerMineral: calcite → 2.274",
              NeutralizerMineral.CALCITE::hardnessPerCarbonDioxide),
          entry(
              "Treatment: 60 gal every 3 days → 7,300 gal",
              () ->
                  Treatment.at(TreatmentPosition.METALS)
                      .backwash(Volume.ofGallons(60), 3)
                      .build()
                      .drainOfYear()
                      .gallons()),
          entry(
              "Treatment: 3.4 mg/L of iron, of which 95 % are taken → 0.17 mg/L",
              DocExamplesTest::ironLeft),
          entry("PresentValue: 3 %, 10 years → 0.7441", () -> PresentValue.single(0.03, 10)),
          entry("PresentValue: 3 %, 10 years → 8.5302", () -> PresentValue.uniform(0.03, 10)),
          entry(
              "PresentValue: 3 %, 2 %, 10 years → 9.4813",
              () -> PresentValue.escalating(0.03, 0.02, 10)));

  private static double ironLeft() {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(10))
            .found(Substance.IRON, LabResult.measured(Concentration.ofMilligramsPerLitre(3.4)))
            .build();
    return Treatment.at(TreatmentPosition.METALS)
        .takes(Substance.IRON, 0.95)
        .build()
        .treat(water)
        .foundOrNone(Substance.IRON)
        .milligramsPerLitre();
  }

  private static List<Double> quoted() {
    Softener softener = Softener.withResin("u", Volume.ofCubicFeet(1)).build();
    Offer offer =
        Offer.of(softener, Money.parse("USD 999.99"))
            .installation(Money.parse("USD 333.33"))
            .build();
    Terms terms = Terms.builder().taxRate(new BigDecimal("0.0625")).build();
    Quote quote = new Quote(offer, Control.METERED_AT_NIGHT, terms);
    return List.of(amount(quote.tax()), amount(quote.total()));
  }

  private static double amount(Money money) {
    return money.getAmount().doubleValue();
  }

  private static DosageCurveBasis onCurve() {
    return new DosageCurveBasis(
        ShippedResins.STANDARD_GEL,
        Volume.ofCubicFeet(1),
        SaltDosage.ofPoundsPerCubicFoot(6),
        0.9,
        Regenerant.SODIUM_CHLORIDE);
  }

  private static List<Double> read() {
    ReadInterval interval =
        new ReadInterval(LocalDate.of(2026, 1, 1), 90, Volume.ofGallons(18_000));
    UseFromReadings use = UseFromReadings.of(Volume.ofGallons(150), LIKELY, List.of(interval));
    return List.of(use.mean().gallons(), use.coefficient());
  }

  private static List<Double> byCurve() {
    DosageCurveBasis basis = onCurve();
    return List.of(basis.usable().grains(), basis.saltPerRegeneration().pounds());
  }

  private static List<Double> byClock() {
    ClockSchedule clock = clock();
    return List.of(clock.exactDays(), (double) clock.setDays());
  }

  private static ClockSchedule clock() {
    return new ClockSchedule(grains(25_600), grains(5_040), grains(3_000), LIKELY.factors(14, 0.9));
  }

  private static List<Double> byMeter() {
    MeteredSchedule meter =
        MeteredSchedule.of(Control.METERED_AT_NIGHT, grains(25_600))
            .reserve(Reserve.ofDay(Volume.ofGallons(225), COMPENSATED))
            .serving(COMPENSATED, Volume.ofGallons(225));
    return List.of(meter.setVolume().orElseThrow().gallons());
  }

  private static Design design(double hardness, int people) {
    WaterAnalysis water = WaterAnalysis.ofHardness(gpg(hardness)).build();
    Site site = Site.of("h", water, Household.of(people).build()).build();
    Softener softener =
        Softener.withRating("u", grains(32_000)).controls(EnumSet.of(Control.CLOCK)).build();
    return new Sizer(new HomeLoad(site)).design(Setup.of(softener).get(0));
  }

  private static Site site() {
    return Site.of("h", water(), Household.of(3).build()).build();
  }

  private static WaterAnalysis water() {
    return WaterAnalysis.ofHardness(gpg(18))
        .found(Substance.IRON, mg(0.8))
        .found(Substance.MANGANESE, mg(0.2))
        .build();
  }

  private static Hardness gpg(double grains) {
    return Hardness.ofGrainsPerGallon(grains);
  }

  private static HardnessAmount grains(double grains) {
    return HardnessAmount.ofGrains(grains);
  }

  private static Concentration mg(double perLitre) {
    return Concentration.ofMilligramsPerLitre(perLitre);
  }

  private static Fluid fluid(double density, double millipascalSeconds) {
    return new Fluid(
        Density.ofKilogramsPerCubicMetre(density),
        Viscosity.ofMillipascalSeconds(millipascalSeconds));
  }

  private static PackedBed bed(double metres, double beadMillimetres, double voidage) {
    return new PackedBed(Length.ofMetres(metres), Length.ofMillimetres(beadMillimetres), voidage);
  }

  private static List<String> examples() throws IOException {
    List<String> examples = new ArrayList<>();
    for (Path file : FormulaDocsTest.files()) {
      String type = file.getFileName().toString().replace(".java", "");
      DOC.matcher(Files.readString(file))
          .results()
          .map(doc -> doc.group(1).replaceAll("\\n\\s*\\*", " ").replaceAll("\\s+", " ").strip())
          .flatMap(doc -> EXAMPLE.matcher(doc).results())
          .forEach(example -> examples.add(type + ": " + example.group(1)));
    }
    return examples;
  }

  private static double leftAfterTenYears() {
    PresentSoftener.Builder bed =
        PresentSoftener.of(PresentControl.clock(7)).resinVolume(Volume.ofCubicFeet(1));
    HomeLoad home = new HomeLoad(site());
    HardnessAmount fresh = FoundSoftener.of(bed.ageYears(0).build(), home).usable();
    return FoundSoftener.of(bed.ageYears(10).build(), home).usable().ratioTo(fresh);
  }

  @Test
  void everyExampleOfTheJavadocIsComputed() throws IOException {
    assertThat(COMPUTED.keySet()).containsExactlyInAnyOrderElementsOf(examples());
  }

  @Test
  void theNumbersPrintedAreTheNumbersComputed() {
    new TreeMap<>(COMPUTED).forEach(DocExamplesTest::check);
  }

  private static void check(String example, Supplier<?> computed) {
    String result = example.replaceFirst("^.*?[→=]", "");
    List<String> printed = NUMBER.matcher(result).results().map(MatchResult::group).toList();
    List<?> values =
        computed.get() instanceof Collection<?> several
            ? List.copyOf(several)
            : List.of(computed.get());
    if (printed.isEmpty()) {
      values.forEach(value -> assertThat(result).containsIgnoringCase(value.toString()));
      return;
    }
    assertThat(printed).as(example).hasSameSizeAs(values);
    for (int i = 0; i < printed.size(); i++) {
      BigDecimal shown = new BigDecimal(printed.get(i).replace(",", ""));
      assertThat((double) values.get(i))
          .as(example)
          .isCloseTo(shown.doubleValue(), within(0.5 * Math.pow(10, -shown.scale()) * (1 + 1e-9)));
    }
  }
}
