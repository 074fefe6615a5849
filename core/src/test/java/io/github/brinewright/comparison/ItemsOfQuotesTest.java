package io.github.brinewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.StepKind;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Items in the quotes of a comparison: which stand there, and what they do to the years. */
class ItemsOfQuotesTest {
  private static final Tariff TARIFF = Tariff.placeholder(CurrencyUnit.USD);
  private static final Item VALVE =
      item("valve", "140").requiredBy(List.of("pressure-high")).build();
  private static final Item PERMIT = item("permit", "60").need(ItemNeed.INCLUDED).build();
  private static final Item ALARM = item("alarm", "85").build();
  private static final Item FILTER =
      item("filter", "200")
          .need(ItemNeed.INCLUDED)
          .yearlyUpkeep(usd("24"))
          .renewedEvery(4, usd("100"))
          .build();

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static Item.Builder item(String id, String price) {
    return Item.of(id, ItemKind.ACCESSORY, usd(price)).taxed(false);
  }

  private static Site home(double psi) {
    return Site.of(
            "h",
            WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build(),
            Household.of(4).build())
        .supply(Supply.NOT_MEASURED.withPressure(Pressure.ofPsi(psi)))
        .build();
  }

  private static Comparison compare(double psi, Item... items) {
    Softener unit = Softener.withResin("u", Volume.ofCubicFeet(1.5)).build();
    return PriceList.builder(List.of(Offer.of(unit, usd("1000")).build()))
        .items(List.of(items))
        .terms(Terms.builder().years(10).discountRate(0.03).build())
        .build()
        .compare(home(psi), TARIFF);
  }

  @Test
  void aRequiredItemStandsWhereItsFindingApplies() {
    assertThat(compare(95, VALVE).closest().quote().items()).containsExactly(VALVE);
    assertThat(compare(60, VALVE).closest().quote().items()).isEmpty();
  }

  @Test
  void anIncludedItemAlwaysStandsAndAnOfferedOneNever() {
    Comparison comparison = compare(60, PERMIT, ALARM);

    assertThat(comparison.candidates())
        .allSatisfy(each -> assertThat(each.quote().items()).containsExactly(PERMIT));
    assertThat(comparison.priceList().extras()).containsExactly(ALARM);
    assertThat(comparison.closest().quote().with(List.of(ALARM)).total()).isEqualTo(usd("1145.00"));
  }

  /**
   * Upkeep of 24 a year and 100 again after four and eight years of ten, at 2 % rise and 3 %
   * discount: 100 × (1.02 ÷ 1.03)^4 + 100 × (1.02 ÷ 1.03)^8, worked apart. Source of the factors:
   * NIST Handbook 135.
   */
  @Test
  void upkeepAndRenewalAreInTheYears() {
    Candidate with = compare(60, FILTER).closest();
    Candidate without = compare(60).closest();
    double rise = 1 + TARIFF.escalation().salt();
    double renewals = 100 * Math.pow(rise / 1.03, 4) + 100 * Math.pow(rise / 1.03, 8);

    assertThat(with.yearly().of(CostKind.SERVICE).minus(without.yearly().of(CostKind.SERVICE)))
        .isEqualTo(usd("24.00"));
    assertThat(with.life().renewals().getAmount().doubleValue())
        .as("factors are rounded to six decimals, each renewal to a cent")
        .isCloseTo(renewals, within(0.01));
    double upkeep =
        with.life()
            .of(CostKind.SERVICE)
            .minus(without.life().of(CostKind.SERVICE))
            .getAmount()
            .doubleValue();
    assertThat(with.life().total().minus(without.life().total()).getAmount().doubleValue())
        .isCloseTo(200 + upkeep + renewals, within(0.02));
    assertThat(with.life().steps())
        .extracting(step -> step.kind())
        .containsExactly(StepKind.LIFE_COST_RENEWED);
    assertThat(without.life().steps())
        .extracting(step -> step.kind())
        .containsExactly(StepKind.LIFE_COST);
  }

  @Test
  void whatIsBoughtAgainOnTheLastDayIsNotCounted() {
    Item tenYears = item("t", "1").need(ItemNeed.INCLUDED).renewedEvery(10, usd("500")).build();
    Item nineYears = item("n", "1").need(ItemNeed.INCLUDED).renewedEvery(9, usd("500")).build();

    assertThat(compare(60, tenYears).closest().life().renewals().isZero()).isTrue();
    assertThat(compare(60, nineYears).closest().life().renewals().isPositive()).isTrue();
  }

  /** Cash is what the life costs; a rent with service leaves out the service of its five years. */
  @Test
  void aWayToPayOverTheYearsIsWhatItComesToAndTheRunning() {
    LifeCost life = compare(60, FILTER).closest().life();
    Money price = life.quote().total();
    Money nothing = Money.zero(CurrencyUnit.USD);
    PaymentWay cash = PaymentWay.of("c", PaymentKind.CASH, nothing).build();
    PaymentWay.Builder rental =
        PaymentWay.of("r", PaymentKind.RENTAL, nothing)
            .months(60)
            .monthlyShare(new BigDecimal("0.02"));
    PaymentPlan plain = new PaymentPlan(rental.build(), price);
    PaymentPlan served = new PaymentPlan(rental.serviceIncluded(true).build(), price);

    assertThat(new PaymentPlan(cash, price).over(life)).isEqualTo(life.total());
    assertThat(plain.over(life).minus(life.total())).isEqualTo(plain.total().minus(price));
    assertThat(plain.over(life).minus(served.over(life)))
        .isEqualTo(life.of(CostKind.SERVICE, 5))
        .isGreaterThan(usd("100"));
  }

  @Test
  void twoItemsOfOneIdAreRefused() {
    assertThatThrownBy(() -> compare(60, PERMIT, PERMIT)).hasMessageContaining("id permit");
  }
}
