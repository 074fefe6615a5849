package io.github.brinewright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.brinewright.demand.DailyUse;
import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.FixtureUnits;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.demand.ReadInterval;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.demand.UseFromReadings;
import io.github.brinewright.demand.UseTotal;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.IonHardness;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.hydraulics.Backwash;
import io.github.brinewright.hydraulics.BeadSettling;
import io.github.brinewright.hydraulics.Fluid;
import io.github.brinewright.hydraulics.PackedBed;
import io.github.brinewright.hydraulics.WaterProperties;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Range;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Brine;
import io.github.brinewright.regeneration.BrineRefill;
import io.github.brinewright.regeneration.ClockSchedule;
import io.github.brinewright.regeneration.Cycle;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.regeneration.DrainFlow;
import io.github.brinewright.regeneration.MeterSetting;
import io.github.brinewright.regeneration.MeteredSchedule;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.sizing.ControlOptions;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.ColdWater;
import io.github.brinewright.softener.ColdWaterBasis;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.LogarithmicCurve;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.trace.DayCount;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Standing;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every type refuses what lies just outside its range, and accepts what lies just inside. */
class RangesTest {
  private static final double NUDGE = 1e-9;
  private static final LikelyUse LIKELY =
      new LikelyUse(DailyVariation.USUAL, UncertainMean.WITHOUT_BILL, YearDays.ALWAYS_AT_HOME);
  private static final RatedCapacityBasis RATED =
      new RatedCapacityBasis(
          HardnessAmount.ofGrains(32_000), Volume.ofCubicFeet(1), Regenerant.SODIUM_CHLORIDE);
  private static final FlowRate HALF = FlowRate.ofGallonsPerMinute(0.5);
  private static final Duration TENTH = Duration.ofSeconds(6);
  private static final Hardness GPG = Hardness.ofGrainsPerGallon(20);
  private static final Volume GALLONS = Volume.ofGallons(200);
  private static final HardnessAmount GRAINS = HardnessAmount.ofGrains(5_000);
  private static final Temperature WARM = Temperature.ofCelsius(20);
  private static final Fluid WATER = Fluid.water(WARM);
  private static final Length BEAD = Length.ofMillimetres(0.6);
  private static final Density WET = Density.ofKilogramsPerCubicMetre(1_280);

  /**
   * One end of one range of one type.
   *
   * @param says what the message must hold: the value and the limit
   */
  private record End(
      Class<?> type, String name, Runnable inside, Runnable outside, List<String> says) {
    @Override
    public String toString() {
      return type.getSimpleName() + " " + name + " " + says;
    }
  }

  private static final List<End> ENDS = new ArrayList<>();

  private static <T extends Comparable<? super T>> void ends(
      Class<?> type, String name, Bounds<T> bounds, T below, T above, Consumer<T> make) {
    String limits = "from " + bounds.low() + " to " + bounds.high();
    add(type, name, bounds.low(), below, limits, make);
    add(type, name, bounds.high(), above, limits, make);
  }

  private static <T> void add(
      Class<?> type, String name, T inside, T outside, String limit, Consumer<T> make) {
    ENDS.add(
        new End(
            type,
            name,
            () -> make.accept(inside),
            () -> make.accept(outside),
            List.of(name, outside.toString(), limit)));
  }

  private static <Q extends Quantity<Q>> void quantity(
      Class<?> type, String name, Bounds<Q> bounds, Consumer<Q> make) {
    Q little = bounds.high().times(NUDGE);
    ends(type, name, bounds, bounds.low().minus(little), bounds.high().plus(little), make);
    Q huge = bounds.high().times(1e290);
    add(type, name, bounds.high(), huge, bounds.high().toString(), make);
  }

  private static void number(
      Class<?> type, String name, Bounds<Double> bounds, Consumer<Double> make) {
    double below = bounds.low() == 0 ? -NUDGE : Math.nextDown(bounds.low());
    ends(type, name, bounds, below, Math.nextUp(bounds.high()), make);
    add(type, name, bounds.low(), Double.NaN, "from " + bounds.low(), make);
  }

  private static void whole(
      Class<?> type, String name, Bounds<Integer> bounds, Consumer<Integer> make) {
    ends(type, name, bounds, bounds.low() - 1, bounds.high() + 1, make);
  }

  private static void temperature(
      Class<?> type, String name, Bounds<Temperature> bounds, Consumer<Temperature> make) {
    ends(
        type,
        name,
        bounds,
        Temperature.ofCelsius(bounds.low().celsius() - NUDGE),
        Temperature.ofCelsius(bounds.high().celsius() + NUDGE),
        make);
  }

  private static <Q extends Quantity<Q>> void positive(
      Class<?> type, String name, DoubleFunction<Q> of, Consumer<Q> make) {
    for (double outside : new double[] {0, -NUDGE}) {
      add(type, name, of.apply(1), of.apply(outside), "more than zero", make);
    }
  }

  private static <Q extends Quantity<Q>> void notNegative(
      Class<?> type, String name, DoubleFunction<Q> of, Consumer<Q> make) {
    add(type, name, of.apply(0), of.apply(-NUDGE), "not be negative", make);
  }

  private static void notBlank(Class<?> type, String name, Consumer<String> make) {
    for (String blank : new String[] {"", " \t"}) {
      ENDS.add(
          new End(
              type,
              name,
              () -> make.accept("x"),
              () -> make.accept(blank),
              List.of(name, "\"" + blank + "\"")));
    }
  }

  private static <T> void some(Class<?> type, String name, T one, Consumer<List<T>> make) {
    add(type, name, List.of(one), List.of(), "at least one", make);
  }

  static {
    softener();
    curvesAndBases();
    home();
    presentSoftener();
    presentControl();
    demand();
    uncertainUse();
    hydraulics();
    regeneration();
    sizingAndTrace();
  }

  private static Softener.Builder bed() {
    return Softener.withResin("u", Volume.ofCubicFeet(1));
  }

  private static void softener() {
    Class<?> type = Softener.class;
    quantity(type, "resin volume", Softener.RESIN_VOLUME, v -> Softener.withResin("u", v).build());
    quantity(
        type,
        "resin volume",
        Softener.RESIN_VOLUME,
        v -> Softener.withRating("u", HardnessAmount.ofGrains(32_000)).resinVolume(v).build());
    quantity(
        type,
        "rated capacity",
        RatedCapacityBasis.RATING,
        v -> Softener.withRating("u", v).build());
    notBlank(type, "softener id", id -> Softener.withResin(id, Volume.ofCubicFeet(1)));
    notBlank(type, "softener name", name -> bed().name(name));
    some(type, "dosages", SaltDosage.ofPoundsPerCubicFoot(6), d -> bed().dosages(d).build());
    some(
        type,
        "controls",
        Control.CLOCK,
        c -> bed().controls(c.isEmpty() ? Set.of() : EnumSet.copyOf(c)).build());
    number(type, "design factor", DosageCurveBasis.DESIGN_FACTOR, f -> bed().designFactor(f));
    quantity(type, "refill rate", Softener.REFILL_RATE, v -> bed().refill(v, TENTH));
    steps(type, v -> bed().refill(HALF, v));
    quantity(type, "service flow", Softener.SERVICE_FLOW, v -> bed().serviceFlow(v, HALF));
    quantity(type, "peak service flow", Softener.SERVICE_FLOW, v -> bed().serviceFlow(HALF, v));
    quantity(type, "valve loss", Softener.VALVE_LOSS, v -> bed().valveLoss(v));
    quantity(
        type,
        "certified efficiency",
        Softener.CERTIFIED_EFFICIENCY,
        v -> bed().certifiedEfficiency(v));
    for (Arrangement each : Arrangement.values()) {
      whole(type, "tanks", each.tanks(), v -> bed().arrangement(each, v));
    }
    add(
        type,
        "controls",
        Control.METERED_AT_ONCE,
        Control.METERED_AT_NIGHT,
        "metered, at once",
        v -> bed().arrangement(Arrangement.TWIN_ALTERNATING, 2).controls(EnumSet.of(v)).build());
    quantity(type, "standby power", Softener.STANDBY, v -> bed().standby(v));
    quantity(type, "salt storage", Softener.SALT_STORAGE, v -> bed().saltStorage(v));
    quantity(type, "drain flow", Softener.DRAIN_FLOW, v -> bed().drainFlows(List.of(HALF, v)));
    Length foot = Length.ofFeet(1);
    quantity(Vessel.class, "vessel diameter", Vessel.SIDE, v -> new Vessel(v, foot));
    quantity(Vessel.class, "vessel height", Vessel.SIDE, v -> new Vessel(foot, v));
    quantity(BrineTank.class, "brine tank diameter", BrineTank.SIDE, v -> new BrineTank(v, foot));
    quantity(BrineTank.class, "brine tank height", BrineTank.SIDE, v -> new BrineTank(foot, v));
    Mass pound = Mass.ofPounds(1);
    positive(
        BrineTank.Filling.class,
        "salt stored",
        Mass::ofPounds,
        v -> new BrineTank.Filling(v, pound));
    positive(
        BrineTank.Filling.class,
        "salt of a year",
        Mass::ofPounds,
        v -> new BrineTank.Filling(pound, v));
  }

  private static void steps(Class<?> type, Consumer<Duration> make) {
    Bounds<Duration> bounds = Softener.REFILL_STEP;
    ends(type, "refill step", bounds, bounds.low().minusNanos(1), bounds.high().plusNanos(1), make);
  }

  private static void curvesAndBases() {
    CapacityCurve gel = ShippedResins.STANDARD_GEL.curve();
    quantity(Resin.class, "bead size", Resin.BEAD_SIZE, v -> new Resin("r", "r", gel, v, WET));
    quantity(
        Resin.class, "bead density", Resin.BEAD_DENSITY, v -> new Resin("r", "r", gel, BEAD, v));
    notBlank(Resin.class, "resin id", id -> Resin.of(id, "r", gel));
    notBlank(Resin.class, "resin name", name -> Resin.of("r", name, gel));
    ResinCapacity capacity = ResinCapacity.ofGrainsPerCubicFoot(1_000);
    SaltDosage six = SaltDosage.ofPoundsPerCubicFoot(6);
    quantity(
        TableCurve.Point.class,
        "dosage",
        CapacityCurve.DOSAGE,
        v -> new TableCurve.Point(v, capacity));
    quantity(
        TableCurve.Point.class,
        "capacity",
        CapacityCurve.CAPACITY,
        v -> new TableCurve.Point(six, v));
    TableCurve.Point point = new TableCurve.Point(six, capacity.times(20));
    TableCurve.Point next = new TableCurve.Point(six.times(2), capacity.times(30));
    ENDS.add(
        new End(
            TableCurve.class,
            "points",
            () -> new TableCurve(List.of(point, next), Sources.DEALER),
            () -> new TableCurve(List.of(point), Sources.DEALER),
            List.of("at least two")));
    quantity(
        LogarithmicCurve.class,
        "lowest dosage",
        Bounds.of(SaltDosage.ofPoundsPerCubicFoot(1), SaltDosage.ofPoundsPerCubicFoot(30)),
        v -> logarithmic(v, SaltDosage.ofPoundsPerCubicFoot(30), 2_000));
    quantity(
        LogarithmicCurve.class,
        "highest dosage",
        Bounds.of(six, SaltDosage.ofPoundsPerCubicFoot(30)),
        v -> logarithmic(six, v, 2_000));
    add(
        LogarithmicCurve.class,
        "slope",
        capacity,
        capacity.times(1 - NUDGE),
        "from 1000.0 grains/ft3",
        v -> new LogarithmicCurve(v, capacity.times(5), six, six.times(2), Sources.STANDARD_GEL));
    quantity(
        DosageCurveBasis.class,
        "resin volume",
        Softener.RESIN_VOLUME,
        v -> new DosageCurveBasis(ShippedResins.STANDARD_GEL, v, six, 0.9, RATED.regenerant()));
    number(
        DosageCurveBasis.class,
        "design factor",
        DosageCurveBasis.DESIGN_FACTOR,
        f ->
            new DosageCurveBasis(
                ShippedResins.STANDARD_GEL, RATED.resin(), six, f, RATED.regenerant()));
    quantity(
        DosageCurveBasis.class,
        "dosage",
        gel.dosages(),
        v ->
            new DosageCurveBasis(
                ShippedResins.STANDARD_GEL, RATED.resin(), v, 0.9, RATED.regenerant()));
    quantity(
        RatedCapacityBasis.class,
        "rated capacity",
        RatedCapacityBasis.RATING,
        v -> new RatedCapacityBasis(v, RATED.resin(), RATED.regenerant()));
    quantity(
        RatedCapacityBasis.class,
        "rated capacity",
        RatedCapacityBasis.RATING,
        RatedCapacityBasis::usualVolume);
    quantity(
        RatedCapacityBasis.class,
        "resin volume",
        RatedCapacityBasis.RESIN_VOLUME,
        v -> new RatedCapacityBasis(RATED.rated(), v, RATED.regenerant()));
  }

  private static LogarithmicCurve logarithmic(SaltDosage low, SaltDosage high, double slope) {
    return new LogarithmicCurve(
        ResinCapacity.ofGrainsPerCubicFoot(slope),
        ResinCapacity.ofGrainsPerCubicFoot(slope * 1.5),
        low,
        high,
        Sources.STANDARD_GEL);
  }

  private static WaterAnalysis.Builder water() {
    return WaterAnalysis.ofHardness(GPG);
  }

  private static void home() {
    quantity(WaterAnalysis.class, "hardness", WaterAnalysis.HARDNESS, WaterAnalysis::ofHardness);
    quantity(
        WaterAnalysis.class,
        "hardness",
        WaterAnalysis.HARDNESS,
        v -> water().build().withHardness(v));
    number(WaterAnalysis.class, "pH", WaterAnalysis.PH, v -> water().ph(v));
    temperature(
        WaterAnalysis.class,
        "water temperature",
        WaterAnalysis.TEMPERATURE,
        v -> water().temperature(v));
    for (Substance each : Substance.values()) {
      quantity(WaterAnalysis.class, each.name(), Substance.FOUND, v -> water().found(each, v));
    }
    Concentration none = Concentration.ofMilligramsPerLitre(0);
    quantity(LabResult.class, "lab result", Substance.FOUND, LabResult::measured);
    Concentration much = Concentration.ofMilligramsPerLitre(50_001);
    Concentration some = Concentration.ofMilligramsPerLitre(0.05);
    add(LabResult.class, "lab result", some, much, "to 50000.0 mg/L", LabResult::below);
    add(LabResult.class, "reporting limit", some, none, "more than zero", LabResult::below);
    add(
        LabResult.class,
        "not detected",
        none,
        some,
        "no amount",
        v -> new LabResult(LabResult.Kind.NOT_DETECTED, v));
    quantity(WaterAnalysis.class, "turbidity", WaterAnalysis.TURBIDITY, v -> water().turbidity(v));
    quantity(
        TreatedWater.class, "treated hardness", WaterAnalysis.HARDNESS, TreatedWater::ofHardness);
    TreatedWater treated = TreatedWater.ofHardness(GPG);
    quantity(TreatedWater.class, "treated hardness", WaterAnalysis.HARDNESS, treated::withHardness);
    number(TreatedWater.class, "treated pH", WaterAnalysis.PH, treated::withPh);
    for (String wrong : new String[] {"us", "USA", "XX", "US-", "US-CALI", "US CA", ""}) {
      add(Place.class, "place", "US-CA", wrong, "ISO 3166", Place::of);
    }
    quantity(Household.class, "peak flow", Household.PEAK_FLOW, v -> Household.of(3).peakFlow(v));
    quantity(
        Supply.class,
        "flowing pressure",
        Supply.FLOWING_PRESSURE,
        Supply.NOT_MEASURED::withFlowingPressure);
    temperature(
        Site.class,
        "brine tank temperature",
        Site.BRINE_TANK_TEMPERATURE,
        v -> site("h").brineTankTemperature(v));
    add(
        Site.class,
        "target hardness",
        Hardness.ofGrainsPerGallon(5),
        Hardness.ofGrainsPerGallon(6),
        "not below the 6.0 gpg",
        v ->
            site("h")
                .treated(TreatedWater.ofHardness(Hardness.ofGrainsPerGallon(6)))
                .target(v)
                .build());
    quantity(IonHardness.class, "calcium", Substance.FOUND, v -> IonHardness.of(v, none));
    quantity(IonHardness.class, "magnesium", Substance.FOUND, v -> IonHardness.of(none, v));
    whole(Household.class, "people", Household.PEOPLE, Household::of);
    whole(Household.class, "people", Household.PEOPLE, v -> Household.of(3).build().withPeople(v));
    number(Household.class, "bathrooms", Household.BATHROOMS, v -> Household.of(3).bathrooms(v));
    quantity(
        Household.class,
        "use per person",
        Household.PER_PERSON,
        v -> Household.of(3).perPersonDaily(v));
    whole(
        Household.class,
        "number of fixtures",
        Household.FIXTURES,
        v -> Household.of(3).fixture(Fixture.BIDET, v));
    whole(Household.class, "days away", Household.DAYS_OF_YEAR, v -> Household.of(3).away(v));
    whole(Household.class, "guests", Household.GUESTS, v -> Household.of(3).guests(v, 1));
    whole(
        Household.class,
        "days with guests",
        Household.DAYS_OF_YEAR,
        v -> Household.of(3).guests(1, v));
    quantity(Bill.class, "billed volume", Bill.BILLED, v -> new Bill(v, 30));
    whole(Bill.class, "billed days", Bill.DAYS, v -> new Bill(GALLONS, v));
    notBlank(Customer.class, "name", Customer::named);
    FoulingAllowances usual = FoulingAllowances.USUAL;
    quantity(
        FoulingAllowances.class,
        "iron allowance",
        FoulingAllowances.ALLOWANCE,
        v -> new FoulingAllowances(v, usual.manganese()));
    quantity(
        FoulingAllowances.class,
        "manganese allowance",
        FoulingAllowances.ALLOWANCE,
        v -> new FoulingAllowances(usual.iron(), v));
    quantity(Supply.class, "supply pressure", Supply.PRESSURE, v -> Supply.of(v, HALF));
    quantity(Supply.class, "supply flow", Supply.FLOW, v -> Supply.of(Pressure.ofPsi(60), v));
    quantity(Site.class, "target hardness", Site.TARGET, v -> site("h").target(v).build());
    notBlank(Site.class, "site id", RangesTest::site);
    add(
        Site.class,
        "target hardness",
        Hardness.ofGrainsPerGallon(0.4),
        Hardness.ofGrainsPerGallon(0.5),
        "not below the 0.5 gpg",
        v ->
            Site.of(
                    "h",
                    WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(0.5)).build(),
                    Household.of(1).build())
                .target(v)
                .build());
  }

  private static void yearTold(Volume before, Volume ofYear, double deviation) {
    UseFromReadings.ofYear(before, LIKELY, ofYear, deviation);
  }

  private static void presentSoftener() {
    Class<?> type = PresentSoftener.class;
    quantity(type, "rating", PresentSoftener.RATING, v -> present().rated(v));
    quantity(type, "resin volume", Softener.RESIN_VOLUME, v -> present().resinVolume(v));
    whole(type, "age", PresentSoftener.AGE_YEARS, v -> present().ageYears(v));
    whole(type, "regeneration hour", PresentSoftener.HOUR, v -> present().hour(v));
    quantity(type, "salt bought", PresentSoftener.SALT_BOUGHT, v -> present().saltBought(v));
    quantity(
        type,
        "hardness after the softener",
        PresentSoftener.HARDNESS_AFTER,
        v -> present().hardnessAfter(v));
    quantity(PresentSalt.Dosed.class, "salt dosage", CapacityCurve.DOSAGE, PresentSalt.Dosed::new);
    quantity(
        PresentSalt.EachTime.class,
        "salt of a regeneration",
        PresentSalt.EACH_TIME,
        PresentSalt.EachTime::new);
    Bounds<Duration> refill = PresentSalt.REFILL;
    ends(
        PresentSalt.Refill.class,
        "refill minutes",
        refill,
        refill.low().minusNanos(1),
        refill.high().plusNanos(1),
        v -> new PresentSalt.Refill(v, Optional.empty()));
    quantity(
        PresentSalt.Refill.class,
        "refill flow",
        Softener.REFILL_RATE,
        v -> new PresentSalt.Refill(TENTH, Optional.of(v)));
    LocalDate day = LocalDate.of(2026, 3, 31);
    quantity(
        MeterReading.class, "meter reading", MeterReading.COUNTER, v -> new MeterReading(day, v));
    whole(
        ReadInterval.class,
        "days between two readings",
        ReadInterval.DAYS,
        v -> new ReadInterval(day, v, GALLONS));
    quantity(
        ReadInterval.class,
        "volume between two readings",
        ReadInterval.USED,
        v -> new ReadInterval(day, 30, v));
    List<ReadInterval> month = List.of(new ReadInterval(day, 30, GALLONS));
    Class<?> read = UseFromReadings.class;
    DoubleFunction<Volume> gallons = Volume::ofGallons;
    positive(read, "mean use before", gallons, v -> UseFromReadings.of(v, LIKELY, month));
    positive(read, "mean use before", gallons, v -> yearTold(v, GALLONS, 0.2));
    notNegative(read, "use of a year", gallons, v -> yearTold(GALLONS, v, 0.2));
    number(
        read,
        "standard deviation of the use of a year",
        UseFromReadings.OTHERWISE_TOLD,
        v -> yearTold(GALLONS, GALLONS, v));
    some(read, "readings", month.get(0), v -> UseFromReadings.of(GALLONS, LIKELY, v));
    Bounds<Double> loss = FoundUnknowns.LOSS_A_YEAR;
    number(FoundUnknowns.class, "lost a year", loss, v -> new FoundUnknowns(v, 0.5));
    number(FoundUnknowns.class, "salt", FoundUnknowns.PLACE, v -> new FoundUnknowns(0.03, v));
    number(FoundUnknowns.class, "of a year", FoundUnknowns.PLACE, v -> FoundUnknowns.at(v, 0.5));
    quantity(KnownUse.class, "known use", KnownUse.MEAN, v -> new KnownUse(v, 0.1));
    number(
        KnownUse.class,
        "coefficient of variation",
        KnownUse.COEFFICIENT,
        v -> new KnownUse(GALLONS, v));
  }

  private static PresentSoftener.Builder present() {
    return PresentSoftener.of(PresentControl.clock(7));
  }

  private static void presentControl() {
    whole(PresentControl.Clock.class, "days", PresentControl.DAYS, PresentControl.Clock::new);
    some(
        PresentControl.Weekdays.class,
        "weekdays",
        DayOfWeek.MONDAY,
        v -> new PresentControl.Weekdays(Set.copyOf(v)));
    Optional<Volume> none = Optional.empty();
    Optional<Integer> any = Optional.empty();
    Class<?> byVolume = PresentControl.ByVolume.class;
    quantity(
        byVolume,
        "volume",
        PresentControl.SET_VOLUME,
        v -> new PresentControl.ByVolume(v, false, none, any));
    Volume most = PresentControl.SET_VOLUME.high();
    quantity(
        byVolume,
        "reserve",
        PresentControl.RESERVE,
        v -> new PresentControl.ByVolume(most, true, Optional.of(v), any));
    add(
        byVolume,
        "reserve",
        GALLONS.times(0.999),
        GALLONS,
        "leaves nothing of the " + GALLONS,
        v -> new PresentControl.ByVolume(GALLONS, true, Optional.of(v), any));
    whole(
        byVolume,
        "longest interval",
        PresentControl.DAYS,
        v -> new PresentControl.ByVolume(GALLONS, false, none, Optional.of(v)));
    Class<?> byHardness = PresentControl.ByHardness.class;
    quantity(
        byHardness, "hardness", PresentControl.SET_HARDNESS, v -> PresentControl.metered(v, null));
    quantity(
        byHardness, "capacity", PresentControl.SET_CAPACITY, v -> PresentControl.metered(GPG, v));
    quantity(byHardness, "reserve", PresentControl.RESERVE, v -> told(Optional.empty(), v, 7));
    Optional<HardnessAmount> set = Optional.of(GRAINS);
    add(
        byHardness,
        "reserve",
        GRAINS.asWaterOf(GPG).times(0.999),
        GRAINS.asWaterOf(GPG),
        "leaves nothing of the",
        v -> told(set, v, 7));
    whole(
        byHardness,
        "longest interval",
        PresentControl.DAYS,
        v -> told(set, Volume.ofGallons(1), v));
  }

  private static PresentControl told(Optional<HardnessAmount> set, Volume reserve, int days) {
    return new PresentControl.ByHardness(GPG, set, true, Optional.of(reserve), Optional.of(days));
  }

  private static Site.Builder site(String id) {
    return Site.of(id, water().build(), Household.of(3).build());
  }

  private static void uncertainUse() {
    Class<?> type = UncertainMean.class;
    DailyVariation usual = DailyVariation.USUAL;
    number(
        type, "coefficient of variation of the mean use", Bounds.of(0.0, 1.0), UncertainMean::new);
    Class<?> likely = LikelyUse.class;
    number(likely, "share of cases", LikelyUse.SHARE, v -> LIKELY.factor(1, v));
    whole(likely, "days together", LikelyUse.DAYS_TOGETHER, v -> LIKELY.factor(v, 0.9));
    whole(likely, "days together", LikelyUse.DAYS_TOGETHER, v -> LIKELY.factors(v, 0.9));
    number(likely, "risk of running out", DailyVariation.RISK, LIKELY::reserveForRisk);
    Class<?> days = YearDays.class;
    whole(days, "days away", YearDays.STRETCH, v -> new YearDays(v, 0, 1));
    whole(days, "days with guests", YearDays.STRETCH, v -> new YearDays(0, v, 1));
    number(days, "guest factor", YearDays.GUEST_FACTOR, v -> new YearDays(0, 0, v));
    Household three = Household.of(3).build();
    number(
        DailyUse.class,
        "share of days",
        LikelyUse.SHARE,
        v -> new DailyUse(three, usual, OptionalDouble.of(v)));
    number(
        HomeLoad.class,
        "share of days",
        LikelyUse.SHARE,
        v -> HomeLoad.coveringShare(site("h").build(), v));
    number(
        UncertainMean.Draw.class,
        "weight of a home",
        Bounds.of(0.0, 1.0),
        v -> new UncertainMean.Draw(1, v));
    number(UseTotal.class, "mean use", Bounds.of(0.0, 1e12), v -> new UseTotal(v, 1));
  }

  private static void demand() {
    Class<?> type = DailyVariation.class;
    DailyVariation usual = DailyVariation.USUAL;
    List<Double> even = DailyVariation.NONE.weekdays();
    number(
        type,
        "coefficient of variation",
        DailyVariation.COEFFICIENT,
        v -> new DailyVariation(v, 0, even));
    number(
        type,
        "correlation of days",
        DailyVariation.NEXT_DAY,
        v -> new DailyVariation(0.5, v, even));
    number(
        type,
        "weekday factor",
        DailyVariation.WEEKDAY,
        v -> new DailyVariation(0.5, 0, List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, v)));
    for (int days : new int[] {6, 8}) {
      add(
          type,
          "number of weekday factors",
          7,
          days,
          "from 7 to 7",
          v -> new DailyVariation(0.5, 0, Collections.nCopies(v, 1.0)));
    }
    number(type, "risk of running out", DailyVariation.RISK, usual::reserveForRisk);
    number(type, "share of days", Bounds.of(0.0, 0.999_999), usual::quantile);
    Bounds<Double> any = Bounds.of(0.0, Double.MAX_VALUE);
    number(type, "multiple of the mean use", any, usual::exceedance);
    number(type, "multiple of the mean use", any, usual::excessBeyond);
    number(type, "multiple of the mean use", any, v -> usual.totalBeyond(7, v));
    whole(type, "days together", Bounds.of(1, 365), v -> usual.totalBeyond(v, 3));
    number(FixtureUnits.class, "fixture units", FixtureUnits.UNITS, FixtureUnits::flow);
  }

  private static void hydraulics() {
    temperature(
        WaterProperties.class,
        "water temperature",
        WaterProperties.TEMPERATURE,
        WaterProperties::density);
    temperature(
        WaterProperties.class,
        "water temperature",
        WaterProperties.TEMPERATURE,
        WaterProperties::viscosity);
    temperature(Fluid.class, "water temperature", WaterProperties.TEMPERATURE, Fluid::water);
    positive(
        Fluid.class,
        "density",
        Density::ofKilogramsPerCubicMetre,
        v -> new Fluid(v, WATER.viscosity()));
    positive(
        Fluid.class,
        "viscosity",
        Viscosity::ofMillipascalSeconds,
        v -> new Fluid(WATER.density(), v));
    positive(PackedBed.class, "bed depth", Length::ofFeet, v -> new PackedBed(v, BEAD, 0.4));
    positive(PackedBed.class, "bead size", Length::ofFeet, v -> new PackedBed(BEAD, v, 0.4));
    number(PackedBed.class, "voidage", PackedBed.VOIDAGE, v -> new PackedBed(BEAD, BEAD, v));
    PackedBed bed = new PackedBed(Length.ofFeet(2), BEAD, 0.4);
    notNegative(
        PackedBed.class, "velocity", FlowVelocity::ofMetresPerSecond, v -> bed.loss(v, WATER));
    ENDS.add(
        new End(
            PackedBed.class,
            "bead density",
            () -> bed.liftingLoss(WET, WATER),
            () -> bed.liftingLoss(WATER.density(), WATER),
            List.of("bead density", "0.0 kg/m3", "more than zero")));
    number(BeadSettling.class, "Reynolds number", BeadSettling.REYNOLDS, BeadSettling::drag);
    number(BeadSettling.class, "Reynolds number", BeadSettling.REYNOLDS, BeadSettling::exponent);
    add(
        BeadSettling.class,
        "bead diameter",
        BEAD,
        Length.ofInches(0),
        "more than zero",
        v -> BeadSettling.terminal(v, WET, WATER));
    add(
        BeadSettling.class,
        "beads",
        WET,
        WATER.density(),
        "do not settle",
        v -> BeadSettling.terminal(BEAD, v, WATER));
    Resin gel = ShippedResins.STANDARD_GEL;
    number(Backwash.class, "bed expansion", Backwash.EXPANSION, v -> new Backwash(gel, WARM, v));
    temperature(
        Backwash.class,
        "water temperature",
        WaterProperties.TEMPERATURE,
        v -> new Backwash(gel, v, 0.5));
    positive(Backwash.class, "bed depth", Length::ofFeet, v -> Backwash.depthAfter(v, 0.4, 0.5));
    number(
        Backwash.class, "voidage before", Backwash.VOIDAGE, v -> Backwash.depthAfter(BEAD, v, 0.5));
    number(
        Backwash.class, "voidage after", Backwash.VOIDAGE, v -> Backwash.depthAfter(BEAD, 0.5, v));
  }

  private static void regeneration() {
    temperature(Brine.class, "brine temperature", Brine.TEMPERATURE, Brine::saturation);
    temperature(Brine.class, "brine temperature", Brine.TEMPERATURE, v -> Brine.density(0.2, v));
    temperature(
        Brine.class, "brine temperature", Brine.TEMPERATURE, v -> Brine.saltToSaturate(GALLONS, v));
    temperature(
        Brine.class, "brine temperature", Brine.TEMPERATURE, v -> Brine.saturatedFrom(GALLONS, v));
    number(Brine.class, "share of salt", Brine.SHARE, v -> Brine.density(v, WARM));
    notNegative(
        Brine.class, "volume of water", Volume::ofGallons, v -> Brine.saltToSaturate(v, WARM));
    notNegative(
        Brine.class, "volume of water", Volume::ofGallons, v -> Brine.saturatedFrom(v, WARM));
    quantity(
        BrineRefill.class,
        "refill rate",
        Softener.REFILL_RATE,
        v -> new BrineRefill(RATED, v, TENTH, WARM));
    steps(BrineRefill.class, v -> new BrineRefill(RATED, HALF, v, WARM));
    DoubleFunction<HardnessAmount> grains = HardnessAmount::ofGrains;
    Class<?> clock = ClockSchedule.class;
    List<Double> factors = List.of(1.63);
    positive(clock, "usable capacity", grains, v -> new ClockSchedule(v, GRAINS, GRAINS, factors));
    positive(clock, "daily load", grains, v -> new ClockSchedule(GRAINS, v, GRAINS, factors));
    positive(clock, "mean load", grains, v -> new ClockSchedule(GRAINS, GRAINS, v, factors));
    whole(
        clock,
        "longest interval in days",
        Bounds.of(1, 14),
        v -> new ClockSchedule(GRAINS, GRAINS, GRAINS, Collections.nCopies(v, 1.5)));
    Class<?> meter = MeteredSchedule.class;
    DoubleFunction<Hardness> gpg = Hardness::ofGrainsPerGallon;
    DoubleFunction<Volume> gallons = Volume::ofGallons;
    positive(
        meter,
        "usable capacity",
        grains,
        v -> MeteredSchedule.of(Control.METERED_AT_ONCE, v).serving(GPG, GALLONS));
    positive(meter, "compensated hardness", gpg, v -> metered().serving(v, GALLONS));
    positive(meter, "design use", gallons, v -> metered().serving(GPG, v));
    whole(
        meter,
        "longest interval in days",
        MeteredSchedule.LONGEST,
        v -> metered().longestDays(v).serving(GPG, GALLONS));
    add(
        meter,
        "CLOCK",
        Control.METERED_AT_NIGHT,
        Control.CLOCK,
        "has no meter",
        v -> MeteredSchedule.of(v, GRAINS));
    positive(Reserve.class, "design use", gallons, v -> Reserve.ofDay(v, GPG));
    positive(Reserve.class, "compensated hardness", gpg, v -> Reserve.ofDay(GALLONS, v));
    positive(Reserve.class, "expected use", gallons, v -> Reserve.forRisk(0.05, LIKELY, v, GPG));
    positive(
        Reserve.class, "compensated hardness", gpg, v -> Reserve.forRisk(0.05, LIKELY, GALLONS, v));
    number(
        Reserve.class,
        "risk of running out",
        DailyVariation.RISK,
        v -> Reserve.forRisk(v, LIKELY, GALLONS, GPG));
    whole(WeekdayClock.class, "longest gap", WeekdayClock.GAP, WeekdayClock::forGap);
    some(WeekdayClock.class, "weekdays", DayOfWeek.MONDAY, v -> new WeekdayClock(Set.copyOf(v)));
    DoubleFunction<FlowRate> gpm = FlowRate::ofGallonsPerMinute;
    positive(DrainFlow.class, "drain flow needed", gpm, v -> new DrainFlow(v, List.of()));
    quantity(
        DrainFlow.class,
        "stocked drain flow",
        Softener.DRAIN_FLOW,
        v -> new DrainFlow(HALF, List.of(v)));
    CycleStep.Kind kind = CycleStep.Kind.BACKWASH;
    positive(CycleStep.class, "flow of BACKWASH", gpm, v -> new CycleStep(kind, TENTH, v));
    add(
        CycleStep.class,
        "BACKWASH",
        TENTH,
        Duration.ZERO,
        "more than zero",
        v -> new CycleStep(kind, v, HALF));
    BrineRefill refill = new BrineRefill(RATED, HALF, TENTH, WARM);
    positive(
        Cycle.class, "resin volume", gallons, v -> new Cycle(CyclePlan.EVERYDAY, v, HALF, refill));
    positive(
        Cycle.class,
        "flow of BACKWASH",
        gpm,
        v -> new Cycle(CyclePlan.EVERYDAY, RATED.resin(), v, refill));
    meterSetting();
  }

  private static void meterSetting() {
    Class<?> type = MeterSetting.class;
    DoubleFunction<Volume> gallons = Volume::ofGallons;
    Volume none = Volume.ofGallons(0);
    positive(type, "volume of the meter", gallons, v -> new MeterSetting(v, GRAINS, GPG, none));
    positive(
        type,
        "capacity of the meter",
        HardnessAmount::ofGrains,
        v -> new MeterSetting(GALLONS, v, GPG, none));
    positive(
        type,
        "hardness of the meter",
        Hardness::ofGrainsPerGallon,
        v -> new MeterSetting(GALLONS, GRAINS, v, none));
    notNegative(
        type, "reserve of the meter", gallons, v -> new MeterSetting(GALLONS, GRAINS, GPG, v));
    add(
        type,
        "reserve",
        none,
        GALLONS,
        "leaves nothing",
        v -> new MeterSetting(GALLONS, GRAINS, GPG, v));
  }

  private static MeteredSchedule.Builder metered() {
    return MeteredSchedule.of(Control.METERED_AT_NIGHT, GRAINS);
  }

  private static void sizingAndTrace() {
    HomeLoad load = new HomeLoad(site("h").build());
    number(Sizer.class, "risk of running out", DailyVariation.RISK, v -> new Sizer(load, v));
    number(ColdWater.class, "share of the capacity at 40 °F", ColdWater.AT_FORTY, ColdWater::new);
    number(
        ColdWaterBasis.class,
        "share of the capacity in cold water",
        ColdWaterBasis.SHARE,
        v -> new ColdWaterBasis(RATED, v));
    ControlOptions usual = ControlOptions.on(LocalDate.EPOCH);
    whole(ControlOptions.class, "hour of the regeneration", PresentSoftener.HOUR, v -> usual.at(v));
    Softener unit = bed().build();
    ENDS.add(
        new End(
            Setup.class,
            "basis",
            () -> new Setup(unit, unit.bases().get(0), Control.CLOCK),
            () ->
                new Setup(
                    unit,
                    Softener.withResin("v", RATED.resin().times(2)).build().bases().get(0),
                    Control.CLOCK),
            List.of("basis of", unit.name())));
    for (double wrong : new double[] {-NUDGE, Double.NaN, Double.POSITIVE_INFINITY}) {
      add(DayCount.class, "days", 0.0, wrong, "not be negative", DayCount::new);
    }
    notBlank(Source.class, "name and a citation", Source::given);
    notBlank(Source.class, "name and a citation", id -> new Source(id, Standing.GIVEN, "c"));
    Length foot = Length.ofFeet(1);
    add(Bounds.class, "bound", foot, Length.ofFeet(0.9), "below", v -> Bounds.of(foot, v));
    add(Range.class, "limit", foot, Length.ofFeet(0.9), "below", v -> new Range<>(foot, v));
    for (double wrong : new double[] {-273.151, Double.NaN, Double.POSITIVE_INFINITY}) {
      add(Temperature.class, "temperature", -273.15, wrong, "not exist", Temperature::ofCelsius);
    }
    number(Minutes.class, "minutes", Bounds.of(-52_560_000.0, 52_560_000.0), Minutes::toDuration);
    add(HardnessAmount.class, "hardness", GPG, GPG.times(0), "more than zero", GRAINS::asWaterOf);
    add(Volume.class, "ratio", GALLONS, GALLONS.times(0), "no ratio", GALLONS::ratioTo);
  }

  static Stream<End> ends() {
    return ENDS.stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ends")
  void bothEndsOfARangeHold(End end) {
    assertThatCode(end.inside()::run).as("just inside").doesNotThrowAnyException();
    assertThatThrownBy(end.outside()::run)
        .isInstanceOf(IllegalArgumentException.class)
        .satisfies(refused -> assertThat(refused.getMessage()).contains(end.says()));
  }

  /** Types that are made of types that have checked themselves, or of nothing that has a range. */
  private static final Set<String> MADE_OF_CHECKED_PARTS =
      Set.of(
          "CalendarYear",
          "MolarMass",
          "Require",
          "Step",
          "Sources",
          "Worked",
          "ShippedResins",
          "CompensatedHardness",
          "CurveBasis",
          "DailyUse",
          "HomeLoad",
          "WeekdaySchedule",
          "PeakFlow",
          "BedFlow",
          "YearlyUse",
          "AddedIons",
          "Efficiency",
          "Assumption",
          "Design",
          "FoundSoftener",
          "ReadUse",
          "Rough");

  @Test
  void noTypeIsForgotten() {
    Set<String> untried = new TreeSet<>();
    for (JavaClass each : publicTypes()) {
      boolean tried = ENDS.stream().anyMatch(end -> each.isEquivalentTo(end.type()));
      if (!tried && !MADE_OF_CHECKED_PARTS.contains(each.getSimpleName())) {
        untried.add(each.getName());
      }
    }
    assertThat(untried).isEmpty();
  }

  private static Stream<JavaClass> types() {
    String[] packages =
        Stream.of(
                "quantity",
                "trace",
                "softener",
                "home",
                "demand",
                "hydraulics",
                "regeneration",
                "sizing")
            .map("io.github.brinewright."::concat)
            .toArray(String[]::new);
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(packages)
            .stream();
  }

  private static List<JavaClass> publicTypes() {
    return types()
        .filter(each -> each.getModifiers().contains(JavaModifier.PUBLIC))
        .filter(each -> !each.isInterface() && !each.isEnum())
        .filter(each -> !each.isAssignableTo(Quantity.class))
        .filter(each -> !each.getName().contains("Figure$"))
        .filter(each -> !each.getSimpleName().equals("Builder"))
        .toList();
  }

  /** Each kind of quantity, by one of its factories. */
  static Stream<Method> factories() {
    return new ClassFileImporter()
        .importPackages("io.github.brinewright.quantity").stream()
            .filter(each -> each.isAssignableTo(Quantity.class))
            .flatMap(each -> Arrays.stream(each.reflect().getDeclaredMethods()))
            .filter(method -> Modifier.isStatic(method.getModifiers()))
            .filter(method -> Modifier.isPublic(method.getModifiers()))
            .filter(
                method -> Arrays.equals(method.getParameterTypes(), new Class<?>[] {double.class}));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("factories")
  void noQuantityIsInfiniteOrNoNumber(Method factory) throws ReflectiveOperationException {
    assertThat(factory.invoke(null, -1.5).toString()).startsWith("-");
    for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> factory.invoke(null, wrong))
          .isInstanceOf(InvocationTargetException.class)
          .cause()
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("finite");
    }
  }

  /** Written down once more, so that a range does not move unseen. */
  @Test
  void rangesAreThoseWrittenDown() throws Exception {
    List<String> stated = new ArrayList<>();
    for (JavaClass type : types().toList()) {
      for (Field field : type.reflect().getDeclaredFields()) {
        if (field.getType() == Bounds.class && Modifier.isPublic(field.getModifiers())) {
          Bounds<?> bounds = (Bounds<?>) field.get(null);
          stated.add(
              String.format(
                  Locale.ROOT,
                  "%s.%s %s to %s",
                  type.getSimpleName(),
                  field.getName(),
                  bounds.low(),
                  bounds.high()));
        }
      }
    }
    Collections.sort(stated);
    assertThat(stated)
        .containsExactlyElementsOf(Files.readAllLines(Path.of("src/test/resources/ranges.txt")));
  }
}
