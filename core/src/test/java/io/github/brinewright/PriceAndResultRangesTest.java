package io.github.brinewright;

import static io.github.brinewright.treatment.NeutralizerMineral.CALCITE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.cost.AnnualRate;
import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Escalation;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.PresentValue;
import io.github.brinewright.cost.RunningYear;
import io.github.brinewright.cost.RunningYears;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.YearDays;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.finding.OwnRule;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Payback;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.simulation.YearSimulation;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.study.Draws;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.treatment.Neutralizer;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentPosition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Both ends of every range of prices, rules, simulations and comparisons. */
class PriceAndResultRangesTest {
  private static final CurrencyUnit USD = CurrencyUnit.USD;
  private static final Volume GALLON = Volume.ofGallons(1);
  private static final Mass POUND = Mass.ofPounds(1);
  private static final Softener SOFTENER = Softener.withResin("u", Volume.ofCubicFeet(2)).build();
  private static final Comparison COMPARISON =
      PriceList.of(List.of(Offer.unpriced(SOFTENER, USD)))
          .compare(
              Site.of(
                      "h",
                      WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(12)).build(),
                      Household.of(3).build())
                  .build(),
              Tariff.placeholder(USD));

  /** A range: values it takes and values it refuses, always with 1e300 and, where real, NaN. */
  private record Case(
      Class<?> type, String name, DoubleFunction<?> make, double[] good, double[] bad) {
    @Override
    public String toString() {
      return type.getSimpleName() + ", " + name;
    }
  }

  private final List<Case> cases = new ArrayList<>();

  private void real(Class<?> type, String name, double low, double high, DoubleFunction<?> make) {
    double step = 1e-6;
    add(type, name, low, high, new double[] {low - step, high * (1 + step) + step}, make);
  }

  private void above(Class<?> type, String name, double low, double high, DoubleFunction<?> make) {
    add(type, name, low + 1e-6, high, new double[] {low, high * (1 + 1e-6)}, make);
  }

  private void add(
      Class<?> type, String name, double low, double high, double[] bad, DoubleFunction<?> make) {
    double[] refused =
        DoubleStream.concat(DoubleStream.of(bad), DoubleStream.of(-1e300, 1e300, Double.NaN))
            .toArray();
    cases.add(new Case(type, name, make, new double[] {low, high}, refused));
  }

  private void whole(Class<?> type, String name, int low, int high, DoubleFunction<?> make) {
    double[] bad = {low - 1, high + 1, Integer.MAX_VALUE, Integer.MIN_VALUE};
    cases.add(new Case(type, name, make, new double[] {low, high}, bad));
  }

  private void zeroOrMore(Class<?> type, String name, DoubleFunction<?> make) {
    double[] bad = {-1e-6, -1e300, Double.NaN};
    cases.add(new Case(type, name, make, new double[] {0, 1e9}, bad));
  }

  /** A price: 0 to 10^12 of the units of its currency. */
  private void price(Class<?> type, String name, DoubleFunction<?> make) {
    double[] bad = {-0.01, 1.01e12, 1e300};
    cases.add(new Case(type, name, make, new double[] {0, 1e12}, bad));
  }

  private static BigMoney price(double amount) {
    return BigMoney.of(USD, BigDecimal.valueOf(amount));
  }

  private static Money money(double amount) {
    return Money.of(USD, BigDecimal.valueOf(amount).stripTrailingZeros());
  }

  static Stream<Case> ranges() {
    PriceAndResultRangesTest test = new PriceAndResultRangesTest();
    test.prices();
    test.costs();
    test.findings();
    test.simulations();
    test.beds();
    test.margins();
    test.results();
    return test.cases.stream();
  }

  private void prices() {
    Offer.Builder offer = Offer.of(SOFTENER, money(1));
    price(Offer.class, "equipment", v -> Offer.of(SOFTENER, money(v)));
    price(Offer.class, "installation", v -> offer.installation(money(v)));
    price(Offer.class, "service", v -> offer.yearlyService(money(v)));
    price(Offer.class, "meter", v -> offer.meterExtra(money(v)));
    Item.Builder item = Item.of("i", ItemKind.ACCESSORY, money(1));
    price(Item.class, "price", v -> Item.of("i", ItemKind.PERMIT, money(v)));
    price(Item.class, "upkeep", v -> item.yearlyUpkeep(money(v)));
    price(Item.class, "renewal", v -> item.renewedEvery(3, money(v)));
    whole(Item.class, "quantity", 1, 99, v -> item.quantity((int) v));
    whole(Item.class, "years to renewal", 1, 30, v -> item.renewedEvery((int) v));
    rate(Item.class, "share", 1, v -> share(BigDecimal.valueOf(v)));
    PaymentWay.Builder way = PaymentWay.of("w", PaymentKind.CREDIT, money(0));
    price(PaymentWay.class, "fee", v -> way.fee(money(v)));
    rate(PaymentWay.class, "deposit", 1, v -> way.depositShare(BigDecimal.valueOf(v)));
    rate(PaymentWay.class, "rate", 0.6, v -> way.yearlyRate(BigDecimal.valueOf(v)));
    rate(PaymentWay.class, "rent", 1, v -> way.monthlyShare(BigDecimal.valueOf(v)));
    rate(PaymentWay.class, "end", 1, v -> way.endShare(BigDecimal.valueOf(v)));
    whole(PaymentWay.class, "months", 1, 240, v -> way.months((int) v));
    whole(PaymentWay.class, "first days", 3, 360, v -> way.firstDays((int) v));
    price(PaymentPlan.class, "price", v -> new PaymentPlan(way.months(12).build(), money(v)));
    real(
        AnnualRate.class,
        "first period",
        0.1,
        12,
        v -> AnnualRate.ofMonthly(money(1), List.of(money(1)), v));
    Tariff.Builder tariff = Tariff.builder("t", USD);
    price(Tariff.class, "salt", v -> tariff.salt(price(v)));
    price(Tariff.class, "potassium", v -> tariff.potassium(price(v)));
    price(Tariff.class, "electricity", v -> tariff.perKilowattHour(price(v)));
    price(BlockRate.class, "price", v -> BlockRate.flat(price(v)));
    price(BlockRate.Block.class, "price", v -> new BlockRate.Block(GALLON, price(v)));
    above(
        BlockRate.Block.class,
        "upTo",
        0,
        1e12,
        v -> new BlockRate.Block(Volume.ofGallons(v), price(1)));
    price(ServicePrices.class, "meter", v -> ServicePrices.of(money(v), money(1)));
    price(ServicePrices.class, "visit", v -> ServicePrices.of(money(1), money(v)));
    BlockRate rate = BlockRate.flat(price(1));
    real(BlockRate.class, "monthly", 0, 1e12, v -> rate.monthly(Volume.ofGallons(v)));
    zeroOrMore(BlockRate.class, "more", v -> rate.yearlyCostOf(GALLON, Volume.ofGallons(v)));
  }

  private static Item.Builder share(BigDecimal share) {
    return Item.ofShare("i", ItemKind.DISCOUNT, share, money(0));
  }

  private void costs() {
    Terms.Builder terms = Terms.builder();
    rate(Terms.class, "tax", 0.5, v -> terms.taxRate(BigDecimal.valueOf(v)));
    rate(Terms.class, "deposit", 1, v -> terms.depositShare(BigDecimal.valueOf(v)));
    whole(Terms.class, "years", 1, 30, v -> terms.years((int) v));
    real(Terms.class, "discount", -0.05, 0.2, terms::discountRate);
    rate(Credit.class, "rate", 0.6, v -> new Credit(BigDecimal.valueOf(v), 12));
    whole(Credit.class, "months", 1, 240, v -> new Credit(BigDecimal.ZERO, (int) v));
    Credit credit = new Credit(new BigDecimal("0.00000001"), 240);
    price(Credit.class, "amount", v -> credit.payment(money(v)));
    whole(Credit.class, "periods", 1, 1_200, v -> Credit.recovery(BigDecimal.ONE, (int) v));
    real(Escalation.class, "salt", -0.05, 0.2, v -> new Escalation(v, 0));
    real(Escalation.class, "water", -0.05, 0.2, v -> new Escalation(0, v));
    real(PresentValue.class, "discount", -0.5, 1, v -> PresentValue.uniform(v, 10));
    real(PresentValue.class, "rise", -0.5, 1, v -> PresentValue.escalating(0.03, v, 10));
    whole(PresentValue.class, "years", 0, 200, v -> PresentValue.single(0.03, (int) v));
    LifeCost life = COMPARISON.closest().life();
    whole(LifeCost.class, "year", 0, 30, v -> life.after((int) v));
    Map<CostKind, Money> lines = life.yearly().lines();
    RunningYears running = new RunningYears(lines, Escalation.USUAL, 0.03);
    real(
        RunningYears.class, "discount", -0.5, 1, v -> new RunningYears(lines, Escalation.USUAL, v));
    whole(RunningYears.class, "years", 0, 30, v -> running.after((int) v));
    whole(RunningYears.class, "years of a line", 0, 200, v -> running.of(CostKind.SALT, (int) v));
    zeroOrMore(RunningYear.class, "salt", v -> year(v, 1, 1));
    zeroOrMore(RunningYear.class, "water", v -> year(1, v, 1));
    zeroOrMore(RunningYear.class, "electricity", v -> year(1, 1, v));
  }

  private static RunningYear year(double salt, double water, double electricity) {
    return new RunningYear(
        Regenerant.SODIUM_CHLORIDE,
        POUND.times(salt),
        GALLON.times(water),
        Energy.ofKilowattHours(electricity),
        money(1));
  }

  private void rate(Class<?> type, String name, double high, DoubleFunction<?> make) {
    double[] bad = {-0.001, high + 0.001, 1e300, 1e-9, Double.MIN_VALUE};
    cases.add(new Case(type, name, make, new double[] {0, high, 1e-8}, bad));
  }

  private void findings() {
    Limits.Builder limits = Limits.builder();
    real(Limits.class, "pressure", 1, 80, v -> limits.leastPressure(Pressure.ofPsi(v)));
    real(Limits.class, "depth", 6, 60, v -> limits.leastBedDepth(Length.ofInches(v)));
    real(Limits.class, "freeboard", 0, 1, limits::leastFreeboard);
    real(Limits.class, "days covered", 0.5, 0.999, limits::designUse);
    cases.add(
        new Case(
            Limits.class,
            "reserve risk",
            limits::reserveRisk,
            new double[] {0, 0.0001, 0.5},
            new double[] {-1, 0.00009, 0.51, 7, 1e300, Double.NaN}));
    whole(OwnRule.class, "letters of the code", 1, 60, v -> ownRule((int) v));
  }

  private static Object ownRule(int letters) {
    int length = Math.max(0, Math.min(letters, 1_000));
    return OwnRule.of("a".repeat(length), (Object any) -> Rule.when(true)).build();
  }

  private void simulations() {
    HardWaterForecast forecast = HardWaterForecast.of(demand(100, 0, 0, 1));
    real(
        HardWaterForecast.class,
        "multiple",
        0.01,
        100,
        v -> forecast.yearAt(bed(1_000, 1_000, 5, 1, 1, 1), v));
    whole(DemandModel.class, "days away", 0, 300, v -> demand(1, (int) v, 0, 1));
    whole(DemandModel.class, "guest days", 0, 300, v -> demand(1, 0, (int) v, 1));
    real(DemandModel.class, "guest factor", 1, 5, v -> demand(1, 0, 0, v));
    above(DemandModel.class, "mean", 0, 1e6, v -> demand(v, 0, 0, 1));
    whole(YearSimulation.class, "years", 1, 100_000, v -> years((int) v));
    cases.add(
        new Case(
            Spread.class,
            "factor",
            new Spread(1, 1, 1)::times,
            new double[] {0, 1e200},
            new double[] {-0.001, Double.NaN, Double.POSITIVE_INFINITY}));
    cases.add(
        new Case(
            Spread.class,
            "ends",
            v -> new Spread(v, -1, v),
            new double[] {-1, 1e300},
            new double[] {-1.001, Double.NaN, Double.POSITIVE_INFINITY}));
  }

  private static DemandModel demand(double mean, int away, int guests, double factor) {
    return new DemandModel(
        Volume.ofGallons(mean), DailyVariation.NONE, new YearDays(away, guests, factor));
  }

  private static YearSimulation years(int count) {
    return new YearSimulation(DemandModel.of(GALLON), count, 1);
  }

  private void beds() {
    above(BedSettings.class, "capacity", 0, 1e9, v -> bed(v, v, 5, 1, 1, 1));
    real(BedSettings.class, "set volume", 0, 1e9, v -> bed(1_000, v, 5, 1, 1, 1));
    whole(BedSettings.class, "days", 1, 365, v -> bed(1, 1, (int) v, 1, 1, 1));
    zeroOrMore(BedSettings.class, "salt", v -> bed(1, 1, 5, v, 1, 1));
    zeroOrMore(BedSettings.class, "water", v -> bed(1, 1, 5, 1, v, 1));
    real(BedSettings.class, "hours", 0, 24, v -> bed(1, 1, 5, 1, 1, v));
    whole(BedSettings.class, "hour", 0, 23, v -> bed(1, 1, 5, 1, 1, 1).withHour((int) v));
  }

  private static BedSettings bed(
      double capacity, double set, int days, double salt, double water, double hours) {
    return new BedSettings(
        Control.CLOCK,
        Volume.ofGallons(capacity),
        Volume.ofGallons(set),
        days,
        Set.of(),
        POUND.times(salt),
        Volume.ofGallons(water),
        hours);
  }

  private void margins() {
    real(Margins.class, "days at mean use", 0.5, 14, v -> changed().meanDays(v));
    real(Margins.class, "days at design use", 0.5, 14, v -> changed().designDays(v));
    real(Margins.class, "days of a twin", 0.5, 14, v -> changed().twinDays(v));
    real(Margins.class, "peak share", 0.1, 5, v -> changed().peakShare(v));
    real(Margins.class, "loading", 1, 100, v -> changed().serviceLoading(loading(v)));
    real(Margins.class, "peak loading", 1, 100, v -> changed().peakLoading(loading(v)));
    real(Margins.class, "loss", 1, 80, v -> changed().pressureLoss(Pressure.ofPsi(v)));
    real(Margins.class, "left", 1, 80, v -> changed().pressureLeft(Pressure.ofPsi(v)));
    real(Margins.class, "run out", 0.0001, 1, v -> changed().runOutBeyondRisk(v));
    real(Margins.class, "hard water", 0.0001, 1, v -> changed().hardWaterMean(v));
    real(Margins.class, "hard water high", 0.0001, 1, v -> changed().hardWaterHigh(v));
    real(
        Margins.class,
        "lean dosage",
        1,
        30,
        v -> changed().leanDosage(SaltDosage.ofPoundsPerCubicFoot(v)));
  }

  private static Margins.Builder changed() {
    return Margins.builder();
  }

  private static FlowVelocity loading(double value) {
    return FlowVelocity.ofGallonsPerMinutePerSquareFoot(value);
  }

  private void results() {
    whole(Comparison.class, "columns", 1, 100, v -> COMPARISON.columns((int) v));
    cases.add(
        new Case(
            HomeStudy.class,
            "years",
            v -> HomeStudy.of(COMPARISON, (int) v),
            new double[] {1},
            new double[] {0, 100_001}));
    whole(Draws.class, "draws", 1, 100_000, v -> new Draws(COMPARISON.home(), (int) v, 1));
    paybacks();
    treatments();
    cases.add(
        new Case(
            Revision.Item.class,
            "people now",
            v -> new Revision.Item(Revision.Kind.PEOPLE, Figure.of(3), Figure.of((int) v)),
            new double[] {2, 4},
            new double[] {3}));
  }

  private void treatments() {
    Treatment.Builder treatment = Treatment.at(TreatmentPosition.METALS);
    ends(Neutralizer.class, "pH after", 6.5, 8.5, v -> new Neutralizer(CALCITE, v));
    ends(Treatment.class, "share", 0, 1, v -> treatment.takes(Substance.IRON, v));
    ends(Treatment.class, "share of turbidity", 0, 1, treatment::takesTurbidity);
    ends(Treatment.class, "least pH", 0, 14, treatment::leastPh);
    ends(
        Treatment.class,
        "most",
        0,
        50_000,
        v -> treatment.most(Substance.IRON, Concentration.ofMilligramsPerLitre(v)));
    ends(
        Treatment.class,
        "flow",
        0.5,
        200,
        v -> treatment.serviceFlow(FlowRate.ofGallonsPerMinute(v)));
    ends(Treatment.class, "loss", 0, 30, v -> treatment.pressureLoss(Pressure.ofPsi(v)));
    ends(Treatment.class, "backwash", 1, 2_000, v -> treatment.backwash(Volume.ofGallons(v), 1));
    whole(
        Treatment.class,
        "days between backwashes",
        1,
        365,
        v -> treatment.backwash(Volume.ofGallons(1), (int) v));
  }

  private void ends(Class<?> type, String what, double low, double high, DoubleFunction<?> make) {
    double beyond = 1e-6 * Math.max(1, high);
    cases.add(
        new Case(
            type,
            what,
            make,
            new double[] {low, high},
            new double[] {low - beyond, high + beyond, Double.NaN}));
  }

  private void paybacks() {
    cases.add(
        new Case(
            Payback.class,
            "low end",
            v -> payback(v, 2, 3),
            new double[] {0, 2},
            new double[] {-1e-6, 2.000001, Double.NaN}));
    cases.add(
        new Case(
            Payback.class,
            "high end",
            v -> payback(1, 2, v),
            new double[] {2, 1e300},
            new double[] {1.999999, Double.NaN}));
  }

  private static Payback payback(double low, double years, double high) {
    return new Payback(OptionalDouble.of(years), OptionalDouble.of(low), OptionalDouble.of(high));
  }

  @ParameterizedTest
  @MethodSource("ranges")
  void takesBothEndsAndRefusesWhatLiesBeyond(Case range) {
    for (double value : range.good()) {
      assertThatCode(() -> range.make().apply(value))
          .as("%s: %s", range, value)
          .doesNotThrowAnyException();
    }
    for (double value : range.bad()) {
      assertThatThrownBy(() -> range.make().apply(value))
          .as("%s: %s", range, value)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageNotContaining("null");
    }
  }

  /** Types that take no number of their own: what they are made of was checked before. */
  private static final Set<String> WITHOUT_NUMBERS =
      Set.of(
          "Advice",
          "BillLine",
          "Candidate",
          "Caution",
          "CostKind",
          "DesignRule",
          "DosageStudy",
          "Fault",
          "FaultKind",
          "Finding",
          "Grade",
          "Grid",
          "HardWater",
          "HomeRule",
          "HowSure",
          "ItemKind",
          "ItemNeed",
          "Kind",
          "LocalText",
          "Margin",
          "MarginCheck",
          "Mark",
          "MeterSaving",
          "OwnReason",
          "Part",
          "PaymentKind",
          "Point",
          "PriceList",
          "Quote",
          "Reason",
          "ReasonRule",
          "Revision",
          "Row",
          "Rule",
          "RuleBook",
          "Sensitivity",
          "PresentBed",
          "ServiceOption",
          "ServiceStudy",
          "Sense",
          "Severity",
          "SimulatedYears",
          "HomeOutcome",
          "Subject",
          "TreatmentPosition",
          "TreatmentStage",
          "TreatmentTrain",
          "NeutralizerMineral",
          "TypicalYear",
          "Undominated",
          "Verdict",
          "VerdictKind",
          "VerdictRule",
          "WhatIf",
          "YearlyCost");

  @Test
  void noPublicTypeIsLeftOut() {
    Set<String> tried = new TreeSet<>(ranges().map(range -> range.type().getSimpleName()).toList());
    tried.addAll(WITHOUT_NUMBERS);
    List<String> all =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(
                    "io.github.brinewright.finding",
                    "io.github.brinewright.cost",
                    "io.github.brinewright.simulation",
                    "io.github.brinewright.comparison",
                    "io.github.brinewright.service",
                    "io.github.brinewright.study",
                    "io.github.brinewright.treatment")
                .stream()
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getSimpleName)
                .filter(name -> !name.equals("Builder") && !name.isEmpty())
                .filter(name -> !name.equals("package-info"))
                .distinct()
                .toList();
    assertThat(tried).containsAll(all);
  }
}
