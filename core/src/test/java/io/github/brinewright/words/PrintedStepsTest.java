package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Fixture;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.KnownUse;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The arithmetic that a proposal prints gives the result that it prints. */
class PrintedStepsTest {
  private static final FlowRate NINE = FlowRate.ofGallonsPerMinute(9);

  /** Printed numbers are rounded; a reader's result may stray by this share. */
  private static final double ROUNDING = 0.02;

  private static final Set<StepKind> ROUNDED_TO_A_LIMIT =
      EnumSet.of(
          StepKind.CLOCK_DAYS,
          StepKind.CLOCK_DAYS_MARGIN,
          StepKind.WEEKDAYS_SET,
          StepKind.DESIGN_COVERAGE);

  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  @Test
  void aReaderWithAPocketCalculatorGetsThePrintedResult() {
    Set<StepKind> seen = new TreeSet<>();
    for (Comparison comparison : comparisons()) {
      for (Candidate candidate : comparison.candidates()) {
        for (Step step : candidate.steps()) {
          check(step);
          seen.add(step.kind());
        }
      }
    }
    assertThat(seen).as("every kind of step was printed").containsExactly(StepKind.values());
  }

  private void check(Step step) {
    WorkedStep printed = words.step(step);
    if (step.kind() == StepKind.CLOCK_DAYS_SET) {
      assertThat(number(printed.result())).isEqualTo(smallest(printed.numbers()));
      return;
    }
    String[] sides = printed.numbers().split(" = ");
    String result = ROUNDED_TO_A_LIMIT.contains(step.kind()) ? sides[1] : number(printed.result());
    PrintedArithmetic.Interval redone = PrintedArithmetic.evaluate(sides[0]);
    PrintedArithmetic.Interval shown = PrintedArithmetic.Interval.of(result);

    assertThat(redone.meets(shown)).as(printed + " redone: " + redone).isTrue();
    double half = (shown.high() - shown.low()) / 2;
    assertThat(redone.middle())
        .as(printed.toString())
        .isCloseTo(shown.middle(), within(half + ROUNDING * Math.abs(shown.middle())));
  }

  /** The smallest of the numbers, at least 1. */
  private static String smallest(String printed) {
    double least =
        Stream.of(printed.replaceAll("[^\\d;]", "").split(";"))
            .mapToDouble(Double::parseDouble)
            .min()
            .orElseThrow();
    return Integer.toString((int) Math.max(1, least));
  }

  private static String number(String result) {
    return result.replace("$", "").split(" ")[0].replace("−", "-");
  }

  @Test
  void aBedHoldsWholeDays() {
    List<Step> clocks =
        comparisons().stream()
            .flatMap(comparison -> comparison.candidates().stream())
            .flatMap(candidate -> candidate.steps().stream())
            .filter(step -> step.kind() == StepKind.CLOCK_DAYS)
            .toList();
    assertThat(clocks)
        .isNotEmpty()
        .allSatisfy(
            step -> {
              WorkedStep printed = words.step(step);
              double exact = Double.parseDouble(printed.numbers().split(" = ")[1]);
              double set = Double.parseDouble(number(printed.result()));
              assertThat(set).isEqualTo(Math.floor(exact));
            });
  }

  /** Something that is bought again every three years. */
  private static Item cartridge() {
    return Item.of("cartridge", ItemKind.ACCESSORY, Money.parse("USD 48.50"))
        .need(ItemNeed.INCLUDED)
        .renewedEvery(3)
        .build();
  }

  /** Homes and softeners in which every formula is used. */
  static List<Comparison> comparisons() {
    PriceList comparer = PriceList.of(offers());
    PriceList byRisk =
        PriceList.builder(offers())
            .limits(Limits.builder().reserveRisk(0.05).build())
            .items(List.of(cartridge()))
            .build();
    return List.of(
        byRisk.compare(site(15, 0.3, Household.of(4)), tariff()),
        comparer.compare(site(18, 0.8, Household.of(3)), tariff()),
        comparer.compare(site(7.3, 0, Household.of(1)), tariff()),
        comparer.compare(
            site(21, 0.1, hotWaterOnly().fixture(Fixture.SHOWER, 2).fixture(Fixture.LAVATORY, 4)),
            tariff()),
        comparer.compare(
            site(12, 0, Household.of(2).guests(2, 60).away(40).peakFlow(NINE)), tariff()),
        comparer.compare(site(25, 0, hotWaterOnly().bathrooms(2)), tariff()),
        comparer.compare(lodging(), tariff()),
        comparer.compare(
            site(16, 0, Household.of(3).knownUse(new KnownUse(Volume.ofGallons(187), 0.12))),
            tariff()),
        comparer.compare(
            site(33, 2.4, Household.of(5).bill(new Bill(Volume.ofGallons(31_000), 61))), tariff()));
  }

  /** Cold water, blended, more people than a household. */
  private static Site lodging() {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(14))
            .temperature(Temperature.ofFahrenheit(44))
            .build();
    return Site.of("h", water, Household.of(12).build())
        .target(Hardness.ofGrainsPerGallon(3))
        .build();
  }

  private static Household.Builder hotWaterOnly() {
    return Household.of(4).softened(SoftenedShare.HOT_WATER);
  }

  private static Site site(double gpg, double iron, Household.Builder household) {
    WaterAnalysis water =
        WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(gpg))
            .found(Substance.IRON, Concentration.ofMilligramsPerLitre(iron))
            .found(Substance.MANGANESE, Concentration.ofMilligramsPerLitre(iron / 4))
            .build();
    return Site.of("h", water, household.build()).build();
  }

  private static Tariff tariff() {
    return Tariff.placeholder(CurrencyUnit.USD);
  }

  private static List<Offer> offers() {
    FlowRate quarter = FlowRate.ofGallonsPerMinute(0.25);
    List<Offer> offers = new ArrayList<>(several(quarter));
    offers.add(
        priced(
            Softener.withResin("twin", Volume.ofCubicFeet(1.5))
                .arrangement(Arrangement.TWIN_ALTERNATING, 2)
                .build()));
    return offers;
  }

  private static List<Offer> several(FlowRate quarter) {
    return List.of(
            Softener.withRating("rated", HardnessAmount.ofGrains(32_000)),
            Softener.withResin("gel", Volume.ofCubicFeet(1.5))
                .brineTank(new BrineTank(Length.ofInches(18), Length.ofInches(33)))
                .valveLoss(Pressure.ofPsi(6))
                .dosages(dosages(4, 7.5, 12)),
            Softener.withResin("fine", Volume.ofCubicFeet(2.25))
                .resin(Resin.of("table", "Table", ShippedResins.KELLER_FINE_MESH))
                .refill(quarter, Duration.ofMinutes(1))
                .dosages(dosages(5, 8.5, 14)),
            Softener.withResin("potassium", Volume.ofCubicFeet(2))
                .regenerant(Regenerant.POTASSIUM_CHLORIDE),
            Softener.withResin("three", Volume.ofCubicFeet(2)).arrangement(Arrangement.PARALLEL, 3))
        .stream()
        .map(unit -> unit.controls(EnumSet.allOf(Control.class)).build())
        .map(PrintedStepsTest::priced)
        .toList();
  }

  private static Offer priced(Softener softener) {
    Money price = Money.parse("USD 1234.56");
    return Offer.of(softener, price)
        .installation(Money.parse("USD 321.09"))
        .yearlyService(Money.parse("USD 45.60"))
        .build();
  }

  private static List<SaltDosage> dosages(double... pounds) {
    return java.util.Arrays.stream(pounds)
        .mapToObj(SaltDosage::ofPoundsPerCubicFoot)
        .collect(Collectors.toList());
  }
}
