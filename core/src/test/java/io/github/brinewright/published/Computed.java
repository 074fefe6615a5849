package io.github.brinewright.published;

import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.PresentValue;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.FixtureUnits;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.IonHardness;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.Substance;
import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.BeadSettling;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.hydraulics.WaterProperties;
import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;

/** What the library computes for each published figure. */
final class Computed {
  private final Map<String, DoubleSupplier> all = new TreeMap<>();

  private Computed() {}

  static Map<String, DoubleSupplier> all() {
    Computed computed = new Computed();
    computed.units();
    computed.capacity();
    computed.salt();
    computed.brine();
    computed.waterAndBeds();
    computed.beads();
    computed.otherBeds();
    computed.money();
    computed.demand();
    computed.levels();
    return computed.all;
  }

  private void put(String id, DoubleSupplier value) {
    all.put(id, value);
  }

  private static Hardness gpg(double grains) {
    return Hardness.ofGrainsPerGallon(grains);
  }

  private static ResinCapacity perCubicFoot(double grains) {
    return ResinCapacity.ofGrainsPerCubicFoot(grains);
  }

  private void levels() {
    put("CHL-01", () -> Threshold.of(HomeRule.CHLORINE_PRESENT, Substance.FREE_CHLORINE, Place.US));
    put("IRON-CA", () -> Threshold.of(HomeRule.IRON_ABOVE_OBJECTIVE, Substance.IRON, Place.CANADA));
  }

  private void units() {
    put("U01", () -> gpg(1).milligramsPerLitre());
    put("U02", () -> Hardness.ofMillimolesPerLitre(1).milligramsPerLitre());
    put("U03", () -> Hardness.ofGermanDegrees(1).milligramsPerLitre());
    put("U04", () -> Hardness.ofEnglishDegrees(1).milligramsPerLitre());
    put("U05", () -> Hardness.ofFrenchDegrees(1).milligramsPerLitre());
    put("U07", () -> ResinCapacity.ofEquivalentsPerLitre(1).grainsPerCubicFoot());
    put("H01", () -> ions(20, 10));
    put("H02", () -> ions(51, 0));
    put("E09", () -> HardnessAmount.ofGrains(24_000).asWaterOf(gpg(20)).gallons());
    put("E12", () -> Volume.ofGallons(2_400).ratioTo(Volume.ofGallons(80)));
    put("E16", () -> perCubicFoot(24_000).of(Volume.ofCubicFeet(70)).grains());
    Volume bed = Area.ofCircle(Length.ofFeet(7)).volumeOf(Length.ofFeet(5));
    put("E17.a", bed::cubicFeet);
    put("E17.b", () -> perCubicFoot(22_000).of(bed).grains());
    FlowRate perHour = FlowRate.ofGallonsPerMinute(25_000 / 60.0);
    put("E19", () -> Minutes.of(perHour.timeFor(Volume.ofGallons(642_000))) / 60);
    SaltEfficiency efficiency = SaltEfficiency.ofGrainsPerPound(1000 / 0.3);
    put("E20", () -> HardnessAmount.ofGrains(1_310_000).saltAt(efficiency).pounds());
    put("K09", () -> perCubicFoot(20_000).of(Volume.ofCubicFeet(1)).saltAt(efficiency).pounds());
    put("SALT-09", efficiency::grainsPerPound);
    put("F01", () -> SaltEfficiency.ofGrainsPerPound(3_350).gramsPerKilogram());
  }

  private static double ions(double calcium, double magnesium) {
    return IonHardness.of(
            Concentration.ofMilligramsPerLitre(calcium),
            Concentration.ofMilligramsPerLitre(magnesium))
        .milligramsPerLitre();
  }

  private void capacity() {
    put("K01", () -> capacity(ShippedResins.STANDARD_GEL, 6));
    put("K02.a", () -> at(ShippedResins.MICHAUD_GENERAL_PURPOSE, 5));
    put("K02.b", () -> at(ShippedResins.KELLER_STANDARD_MESH, 5));
    put("K02.c", () -> capacity(ShippedResins.STANDARD_GEL, 5));
    put("K10.a", () -> ResinCapacity.ofEquivalentsPerLitre(1.9).grainsPerCubicFoot());
    put("K10.b", () -> ResinCapacity.ofEquivalentsPerLitre(2.0).grainsPerCubicFoot());
  }

  private static double capacity(Resin resin, double pounds) {
    return at(resin.curve(), pounds);
  }

  private static double at(CapacityCurve curve, double pounds) {
    return curve.at(SaltDosage.ofPoundsPerCubicFoot(pounds)).grainsPerCubicFoot();
  }

  private void salt() {
    double limit = CapacityCurve.CHEMICAL_LIMIT.grainsPerPound();
    put("S01", () -> limit);
    for (int celsius : new int[] {0, 10, 20}) {
      Temperature tank = Temperature.ofCelsius(celsius);
      put(
          "KCL-01@" + celsius,
          () -> Regenerant.POTASSIUM_CHLORIDE.dissolvedByOneGallon(tank).pounds());
    }
    put("S02", () -> Regenerant.POTASSIUM_CHLORIDE.chemicalLimit().grainsPerPound());
    put("S03", Regenerant.POTASSIUM_CHLORIDE::massRatio);
    put("K-01", Regenerant.POTASSIUM_CHLORIDE::massRatio);
    put("S04", () -> chloride(Regenerant.SODIUM_CHLORIDE));
    put("K-03.a", () -> chloride(Regenerant.SODIUM_CHLORIDE));
    put("K-03.b", () -> chloride(Regenerant.POTASSIUM_CHLORIDE));
    put("S05", () -> 1000 / limit);
    put("SALT-07", () -> 1000 / limit);
    put("F05", () -> SaltEfficiency.ofGrainsPerPound(4000).ratioTo(CapacityCurve.CHEMICAL_LIMIT));
    put("N01", () -> Homes.sodiumAdded(gpg(1)));
    put("NA-02", () -> Homes.sodiumAdded(gpg(1)));
    put("N02", () -> Homes.sodiumAdded(Hardness.ofMilligramsPerLitre(100)));
    put("N05", () -> Homes.potassiumAdded(gpg(1)));
  }

  private static double chloride(Regenerant regenerant) {
    return regenerant.chlorideIn(Mass.ofPounds(1)).pounds();
  }

  private void brine() {
    for (String celsius : new String[] {"0", "10", "15.56", "21.11", "26.67", "37.78", "51.67"}) {
      put("B01@" + celsius, () -> 100 * Brine.saturation(celsius(celsius)));
    }
    for (String celsius : new String[] {"0", "10", "20", "25", "30", "40", "50"}) {
      put("B02@" + celsius, () -> 100 * Brine.saturation(celsius(celsius)));
    }
    for (String percent : new String[] {"10", "20", "26"}) {
      double share = Double.parseDouble(percent) / 100;
      put("B03@" + percent, () -> kg(Brine.density(share, celsius("20"))));
    }
    Temperature warm = Temperature.ofFahrenheit(60);
    Volume gallon = Volume.ofGallons(1);
    put("B04", () -> Brine.saltToSaturate(gallon, warm).pounds());
    put("B06", () -> Brine.saturatedFrom(gallon, warm).gallons());
    put("B07.a", () -> 1 / Brine.saltToSaturate(gallon, warm).pounds());
    put(
        "B07.b",
        () ->
            Brine.saturatedFrom(gallon, warm).gallons()
                / Brine.saltToSaturate(gallon, warm).pounds());
  }

  private static Temperature celsius(String degrees) {
    return Temperature.ofCelsius(Double.parseDouble(degrees));
  }

  private static double kg(Density density) {
    return density.kilogramsPerCubicMetre();
  }

  private void waterAndBeds() {
    for (String c : new String[] {"00", "05", "10", "20", "25", "30", "40", "45", "50", "60"}) {
      put("VISC-" + c, () -> viscosity(celsius(c)));
    }
    for (String c : new String[] {"00", "04", "10", "20", "22", "25", "40"}) {
      put("DENS-" + c, () -> kg(WaterProperties.density(celsius(c))));
    }
    for (String f : new String[] {"40", "60", "77", "80"}) {
      Temperature t = Temperature.ofFahrenheit(Double.parseDouble(f));
      put("WATF-" + f + ".a", () -> kg(WaterProperties.density(t)));
      put("WATF-" + f + ".b", () -> viscosity(t));
    }
    put("PB-01", () -> bed(1, 8e-4, 0.4).loss(metres(1e-3), fluid(1000, 1)).pascals());
    put("PB-06", () -> bed(1, 0.6 * 8e-4, 0.4).loss(metres(1e-3), fluid(1000, 1)).pascals());
    put(
        "PB-09",
        () ->
            bed(0.3048, 0.03 * 0.0254, 0.33)
                .loss(metres(0.6096), fluid(62.3 * 16.01846, 1e-9))
                .psi());
    put("PB-11", Computed::airThroughSpheres);
    put("PB-17", () -> softenerLoss("60"));
  }

  private static double viscosity(Temperature t) {
    return WaterProperties.viscosity(t).millipascalSeconds();
  }

  private static double airThroughSpheres() {
    double meanAtmospheres = 1.10 - 0.049 / 2;
    double density = meanAtmospheres * 101_325 * 28.97e-3 / (8.314 * 311);
    double area = Math.PI / 4 * 0.61 * 0.61;
    return bed(2.44, 0.0127, 0.38)
        .loss(metres(0.358 / (density * area)), fluid(density, 1.90e-2))
        .pascals();
  }

  private static double softenerLoss(String fahrenheit) {
    Temperature t = Temperature.ofFahrenheit(Double.parseDouble(fahrenheit));
    FlowVelocity ten = FlowVelocity.ofGallonsPerMinutePerSquareFoot(10);
    return bed(0.3048, 0.65e-3, 0.38).loss(ten, Fluid.water(t)).pascals();
  }

  private static PackedBed bed(double metres, double bead, double voidage) {
    return new PackedBed(Length.ofMetres(metres), Length.ofMetres(bead), voidage);
  }

  private static FlowVelocity metres(double perSecond) {
    return FlowVelocity.ofMetresPerSecond(perSecond);
  }

  private static Fluid fluid(double density, double millipascalSeconds) {
    return new Fluid(
        Density.ofKilogramsPerCubicMetre(density),
        Viscosity.ofMillipascalSeconds(millipascalSeconds));
  }

  private void beads() {
    put("FB-01", () -> terminal(70e-6, 2600, fluid(1000, 1)));
    Fluid gas = fluid(2.07 * 16.01846, 1.2e-2);
    put("FB-02", () -> terminal(150e-6, 31.2 * 16.01846, gas) / 0.3048);
    put("FB-03", () -> BeadSettling.drag(200));
    put("FB-04", () -> terminal(0.40e-3, 7870, fluid(820, 10)));
    for (String re : new String[] {"0.1", "0.5", "1", "10", "100", "500", "1000"}) {
      put("FB-10@" + re, () -> BeadSettling.exponent(Double.parseDouble(re)));
    }
    for (String f : new String[] {"40", "50", "60", "70", "77"}) {
      Temperature t = Temperature.ofFahrenheit(Double.parseDouble(f));
      put(
          "FB-14@" + f,
          () ->
              new Backwash(ShippedResins.STANDARD_GEL, t, 0.5)
                  .velocity()
                  .gallonsPerMinutePerSquareFoot());
    }
  }

  private void otherBeds() {
    PackedBed fluidised = bed(1, 3e-3, 0.4);
    Fluid liquid = fluid(1100, 3);
    Density bead = Density.ofKilogramsPerCubicMetre(4200);
    put(
        "FB-05",
        () -> fluidised.loss(metres(36.4e-3), liquid).ratioTo(fluidised.liftingLoss(bead, liquid)));
    double settled = 300 / (1000 * 0.30 * (1 - 0.42));
    put(
        "PB-13",
        () ->
            bed(settled, 1e-3, 0.42)
                .liftingLoss(Density.ofKilogramsPerCubicMetre(1000), fluid(2.374, 1))
                .pascals());
    put("FB-09", () -> Backwash.depthAfter(Length.ofMetres(0.475), 0.3498, 0.460).metres());
    Fluid viscousOnly = fluid(1e-9, 1.002);
    put(
        "PB-08",
        () ->
            bed(0.3048, 0.03 * 0.0254, 0.33).loss(metres(0.012422 * 0.3048), viscousOnly).pascals()
                / (62.3 * 16.01846 * 9.80665 * 0.3048));
    for (String id : new String[] {"PB-02", "PB-04", "PB-05.a", "PB-05.b", "PB-05.c"}) {
      put(id, () -> bed(1, 8e-4, 0.4).loss(metres(1e-3), fluid(1000, 1)).pascals());
    }
    put("PB-07", () -> (PackedBed.DENSE + PackedBed.LOOSE) / 2);
    put("ZEO-02", () -> hardnessTaken(200 * 50e-3, 10_000));
    put("ZEO-03", () -> hardnessTaken(30 * 1500e-6, 1_000));
  }

  /** Hardness in mg/L that a mass of salt in kg exchanges from a volume of water in litres. */
  private static double hardnessTaken(double kilograms, double litres) {
    double grains =
        CapacityCurve.CHEMICAL_LIMIT.grainsPerPound() * Mass.ofKilograms(kilograms).pounds();
    return HardnessAmount.ofGrains(grains).grams() * 1000 / litres;
  }

  private static double terminal(double diameter, double bead, Fluid fluid) {
    return BeadSettling.terminal(
            Length.ofMetres(diameter), Density.ofKilogramsPerCubicMetre(bead), fluid)
        .metresPerSecond();
  }

  private void money() {
    for (int years : new int[] {1, 5, 10, 15, 20, 30}) {
      String id = String.format("PV3-%02d", years);
      put(id + ".a", () -> PresentValue.single(0.03, years));
      put(id + ".b", () -> PresentValue.uniform(0.03, years));
    }
    for (int years : new int[] {10, 15, 20}) {
      put("PV-ESC@" + years, () -> PresentValue.escalating(0.03, 0.02, years));
    }
    double energyFactorOfTheHandbook = 15.13;
    put(
        "PV-NIST1",
        () ->
            103_000
                + 12_000 * rounded(PresentValue.single(0.03, 12), 3)
                - 3_500 * rounded(PresentValue.single(0.03, 20), 3)
                + 20_000 * energyFactorOfTheHandbook
                + 7_000 * rounded(PresentValue.uniform(0.03, 20), 2));
    put("PV-01", () -> 1e6 * Credit.recovery(new BigDecimal("0.18"), 15).doubleValue());
    put("PV-03", () -> 1e6 * PresentValue.uniform(0.15, 20));
  }

  /** As the handbook prints its factors. */
  private static double rounded(double factor, int decimals) {
    return BigDecimal.valueOf(factor).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  private void demand() {
    for (int units :
        new int[] {
          1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45,
          50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200
        }) {
      put(String.format("WSFU-%03d", units), () -> FixtureUnits.flow(units).gallonsPerMinute());
    }
    for (int people = 1; people <= 5; people++) {
      int n = people;
      put("USE-04@" + people, () -> expected(n) / 0.78);
    }
    DailyVariation days = new DailyVariation(0.457143, 0, DailyVariation.NONE.weekdays());
    for (String share : new String[] {"0.90", "0.95", "0.99"}) {
      put("USE-10@" + share, () -> days.quantile(Double.parseDouble(share)));
    }
    put("STAT-RES1", () -> DailyVariation.USUAL.exceedance(1));
    put("STAT-RES2", () -> days.quantile(0.95));
    put("USE-02", () -> expected(2) + 0.65 * (expected(3) - expected(2)));
  }

  private static double expected(int people) {
    Household household = Household.of(people).perPersonDaily(Volume.ofGallons(300)).build();
    return new DailyUse(household, DailyVariation.USUAL, OptionalDouble.empty())
        .expected()
        .gallons();
  }
}
