package io.github.brinewright.home;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.demand.UncertainMean;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Turbidity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.regeneration.Reserve;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.TableCurve;
import io.github.brinewright.softener.Vessel;
import io.github.brinewright.trace.Sources;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Equal inputs are equal, anything told otherwise makes another, and all print readably. */
class EqualInputsTest {
  private static final Hardness GPG = Hardness.ofGrainsPerGallon(18);
  private static final Volume FOOT = Volume.ofCubicFeet(1);
  private static final Concentration MG = Concentration.ofMilligramsPerLitre(0.1);
  private static final Length INCHES = Length.ofInches(20);
  private static final FlowRate GPM = FlowRate.ofGallonsPerMinute(2);

  /** Makes values of one type, no two of which are the same. */
  private static final List<Supplier<List<Object>>> TYPES =
      List.of(
          EqualInputsTest::waters,
          EqualInputsTest::households,
          EqualInputsTest::supplies,
          EqualInputsTest::treatedWaters,
          EqualInputsTest::presentSofteners,
          EqualInputsTest::presentControls,
          EqualInputsTest::sites,
          EqualInputsTest::softeners,
          EqualInputsTest::curves,
          EqualInputsTest::reserves);

  private static WaterAnalysis.Builder water() {
    return WaterAnalysis.ofHardness(GPG);
  }

  private static List<Object> waters() {
    return List.of(
        water().build(),
        WaterAnalysis.ofHardness(GPG.times(2)).build(),
        water().from(WaterSource.PRIVATE_WELL).build(),
        water().bacteria(BacteriaResult.NONE_FOUND).build(),
        water().found(Substance.IRON, Concentration.ofMilligramsPerLitre(0)).build(),
        water().found(Substance.SODIUM, Concentration.ofMilligramsPerLitre(0)).build(),
        water().ph(7).build(),
        water().temperature(Temperature.ofCelsius(12)).build(),
        water().date(LocalDate.of(2026, 1, 2)).build(),
        water().found(Substance.IRON, LabResult.NOT_DETECTED).build(),
        water().found(Substance.IRON, LabResult.below(MG)).build(),
        water().found(Substance.IRON, MG).build(),
        water().found(Substance.NITRATE, MG).build(),
        water().hardnessBy(HardnessMethod.STRIP).build(),
        water().eColi(BacteriaResult.FOUND).build(),
        water().ironBacteria(BacteriaResult.FOUND).build(),
        water().bacteria(BacteriaResult.FOUND).build(),
        water().ironAtTap(TapIron.CLEAR).build(),
        water().turbidity(Turbidity.ofNtu(0)).build());
  }

  private static Household.Builder people() {
    return Household.of(3);
  }

  private static List<Object> households() {
    return List.of(
        people().build(),
        Household.of(4).build(),
        people().bathrooms(2.5).build(),
        people().perPersonDaily(Volume.ofGallons(60)).build(),
        people().bill(new Bill(Volume.ofGallons(9_000), 60)).build(),
        people().fixture(Fixture.SHOWER, 2).build(),
        people().softened(SoftenedShare.HOT_WATER).build(),
        people().away(20).build(),
        people().knownUse(new KnownUse(FOOT, 0.1)).build(),
        people().knownUse(new KnownUse(FOOT, 0.2)).build(),
        people().guests(2, 0).build(),
        people().guests(0, 2).build(),
        people().peakFlow(GPM).build());
  }

  private static List<Object> supplies() {
    Pressure psi = Pressure.ofPsi(50);
    return List.of(
        Supply.NOT_MEASURED,
        Supply.NOT_MEASURED.withPressure(psi),
        Supply.NOT_MEASURED.withFlow(GPM),
        Supply.NOT_MEASURED.withFlowingPressure(psi),
        Supply.of(psi, GPM));
  }

  private static List<Object> treatedWaters() {
    TreatedWater plain = TreatedWater.ofHardness(GPG);
    return List.of(
        plain,
        plain.withHardness(GPG.times(2)),
        plain.withIron(LabResult.NOT_DETECTED),
        plain.withManganese(LabResult.NOT_DETECTED),
        plain.withPh(7));
  }

  private static PresentSoftener.Builder present() {
    return PresentSoftener.of(PresentControl.clock(7)).resinVolume(FOOT);
  }

  private static List<Object> presentSofteners() {
    HardnessAmount grains = HardnessAmount.ofGrains(32_000);
    LocalDate day = LocalDate.of(2026, 1, 2);
    List<MeterReading> readings =
        List.of(new MeterReading(day, FOOT), new MeterReading(day.plusDays(1), FOOT));
    return Stream.of(
            present(),
            PresentSoftener.of(PresentControl.clock(8)).resinVolume(FOOT),
            PresentSoftener.of(PresentControl.clock(7)).rated(grains),
            present().rated(grains),
            present().vessel(new Vessel(INCHES, INCHES)),
            present().resin(ShippedResins.FINE_MESH),
            present().ageYears(0),
            present().salt(new PresentSalt.EachTime(Mass.ofPounds(6))),
            present().salt(new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(6))),
            present().salt(new PresentSalt.Refill(Duration.ofMinutes(6), Optional.empty())),
            present().salt(new PresentSalt.Refill(Duration.ofMinutes(6), Optional.of(GPM))),
            present().hour(2),
            present().regenerant(Regenerant.POTASSIUM_CHLORIDE),
            present().saltBought(Mass.ofPounds(0)),
            present().hardnessAfter(GPG.times(0)),
            present().readings(ReadMeter.SOFTENER, readings),
            present().readings(ReadMeter.HOUSE, readings))
        .<Object>map(PresentSoftener.Builder::build)
        .toList();
  }

  private static List<Object> presentControls() {
    HardnessAmount grains = HardnessAmount.ofGrains(32_000);
    Optional<Volume> reserve = Optional.of(FOOT);
    return List.of(
        PresentControl.clock(7),
        PresentControl.clock(8),
        PresentControl.weekdays(Set.of(DayOfWeek.MONDAY)),
        PresentControl.weekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)),
        PresentControl.metered(FOOT.times(50)),
        new PresentControl.ByVolume(FOOT.times(50), true, Optional.empty(), Optional.empty()),
        new PresentControl.ByVolume(FOOT.times(50), false, reserve, Optional.empty()),
        new PresentControl.ByVolume(FOOT.times(50), false, reserve, Optional.of(14)),
        PresentControl.metered(GPG, null),
        PresentControl.metered(GPG, grains),
        new PresentControl.ByHardness(
            GPG, Optional.of(grains), true, Optional.empty(), Optional.empty()),
        new PresentControl.ByHardness(GPG, Optional.of(grains), false, reserve, Optional.empty()),
        new PresentControl.ByHardness(GPG, Optional.of(grains), false, reserve, Optional.of(14)));
  }

  private static Site.Builder site() {
    return Site.of("A1", water().build(), people().build());
  }

  private static List<Object> sites() {
    return List.of(
        site().build(),
        Site.of("A2", water().build(), people().build()).contact(Customer.named("A1")).build(),
        site().contact(Customer.named("Someone")).build(),
        site().build().withHardness(GPG.times(2)),
        site().build().withPeople(5),
        site().supply(Supply.NOT_MEASURED.withFlow(GPM)).build(),
        site()
            .allowances(
                new FoulingAllowances(
                    FoulingAllowances.USUAL.manganese(), FoulingAllowances.USUAL.iron()))
            .build(),
        site().target(GPG.times(0.1)).build(),
        site().place(Place.of("US-CA")).build(),
        site().treated(TreatedWater.ofHardness(GPG)).build(),
        site().brineTankTemperature(Temperature.ofCelsius(10)).build(),
        site().softerWanted(true).build(),
        site().present(present().build()).build(),
        site().present(present().hour(3).build()).build());
  }

  private static Softener.Builder unit() {
    return Softener.withResin("u", FOOT);
  }

  private static List<Object> softeners() {
    return Stream.of(
            unit(),
            Softener.withResin("v", FOOT).name("u"),
            unit().name("a name"),
            unit().resinVolume(FOOT.times(2)),
            Softener.withRating("u", HardnessAmount.ofGrains(32_000)),
            Softener.withRating("u", HardnessAmount.ofGrains(32_000)).resinVolume(FOOT),
            unit().resin(ShippedResins.FINE_MESH),
            unit().dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(8))),
            unit().designFactor(0.8),
            unit().controls(EnumSet.of(Control.CLOCK)),
            unit().vessel(new Vessel(INCHES, INCHES)),
            unit().refill(GPM, Duration.ofSeconds(6)),
            unit().refill(FlowRate.ofGallonsPerMinute(0.5), Duration.ofSeconds(7)),
            unit().serviceFlow(GPM, GPM.times(2)),
            unit().serviceFlow(GPM.times(2), GPM),
            unit().valveLoss(Pressure.ofPsi(5)),
            unit().standby(Power.ofWatts(5)),
            unit().saltStorage(Mass.ofPounds(200)),
            unit().brineTank(new BrineTank(INCHES, INCHES)),
            unit().drainFlows(List.of(GPM)),
            unit().plan(CyclePlan.EVERYDAY),
            unit().regenerant(Regenerant.POTASSIUM_CHLORIDE),
            unit().arrangement(Arrangement.PARALLEL, 2),
            unit().arrangement(Arrangement.PARALLEL, 3),
            unit().arrangement(Arrangement.TWIN_ALTERNATING, 2),
            unit().controls(EnumSet.of(Control.METERED_AT_ONCE)),
            unit().certifiedEfficiency(SaltEfficiency.ofGrainsPerPound(4_000)))
        .<Object>map(Softener.Builder::build)
        .toList();
  }

  private static List<Object> curves() {
    List<TableCurve.Point> two = List.of(point(5, 20_000), point(10, 28_000));
    List<TableCurve.Point> other = List.of(point(5, 20_000), point(10, 27_000));
    return List.of(
        new TableCurve(two, Sources.DEALER),
        new TableCurve(other, Sources.DEALER),
        new TableCurve(two, Sources.MICHAUD_2015));
  }

  private static TableCurve.Point point(double pounds, double grains) {
    return new TableCurve.Point(
        SaltDosage.ofPoundsPerCubicFoot(pounds), ResinCapacity.ofGrainsPerCubicFoot(grains));
  }

  private static List<Object> reserves() {
    Volume gallons = Volume.ofGallons(200);
    LikelyUse likely =
        new LikelyUse(DailyVariation.USUAL, UncertainMean.WITH_BILL, YearDays.ALWAYS_AT_HOME);
    return List.of(
        Reserve.NONE,
        Reserve.ofDay(gallons, GPG),
        Reserve.forRisk(0.05, likely, gallons, GPG),
        Reserve.forRisk(0.06, likely, gallons, GPG));
  }

  static Stream<Supplier<List<Object>>> types() {
    return TYPES.stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void equalInputsAreEqualAndOthersAreNot(Supplier<List<Object>> type) {
    List<Object> ones = type.get();
    List<Object> others = type.get();

    assertThat(ones).isEqualTo(others).hasSameHashCodeAs(others);
    assertThat(new HashSet<>(ones)).as("told apart").hasSameSizeAs(ones);
    assertThat(ones.get(0)).isNotEqualTo("something else");
  }

  @ParameterizedTest
  @MethodSource("types")
  void allPrintWhatTheyHold(Supplier<List<Object>> type) {
    assertThat(type.get())
        .allSatisfy(
            value -> assertThat(value.toString()).doesNotContain("@").doesNotContain("null"));
  }
}
