package io.github.brinewright.sale;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sale.Packages.Combination;
import io.github.brinewright.softener.Softener;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Packages side by side, and every total against a sum in plain decimals written out here. */
class PackagesTest {
  private static final BigDecimal TAX = new BigDecimal("0.0625");

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static Offer offer(String id, double cubicFeet, String price) {
    return Offer.of(Softener.withResin(id, Volume.ofCubicFeet(cubicFeet)).build(), usd(price))
        .installation(usd("380.35"))
        .build();
  }

  private static Comparison compare(List<Item> items) {
    return PriceList.builder(
            List.of(offer("s", 1, "890.10"), offer("m", 1.5, "1090.20"), offer("l", 2, "1380.30")))
        .items(items)
        .terms(Terms.builder().taxRate(TAX).build())
        .build()
        .compare(
            Site.of(
                    "h",
                    WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build(),
                    Household.of(4).build())
                .build(),
            Tariff.placeholder(CurrencyUnit.USD));
  }

  private static Item extra(String id, String price) {
    return Item.of(id, ItemKind.ACCESSORY, usd(price)).build();
  }

  @Test
  void packagesDifferAndTheRecommendedOneComesFirst() {
    Comparison comparison = compare(List.of());
    Packages packages = Packages.of(comparison);

    assertThat(packages.all().get(0).candidate()).isEqualTo(comparison.recommended().orElseThrow());
    assertThat(packages.all()).extracting(SalePackage::candidate).doesNotHaveDuplicates();
    assertThat(packages.all()).extracting(SalePackage::kind).isSorted();
    assertThat(packages.of(PackageKind.BIGGER).map(SalePackage::candidate))
        .isEqualTo(comparison.larger().filter(Candidate::feasible));
  }

  @Test
  void aWishStandsBesideTheRecommendationUnlessItIsTheSame() {
    Comparison comparison = compare(List.of());
    Candidate chosen = comparison.recommended().orElseThrow();
    Candidate other =
        comparison.candidates().stream()
            .filter(each -> each.feasible() && !each.equals(chosen))
            .reduce((a, b) -> b)
            .orElseThrow();

    assertThat(Packages.of(comparison, null, other).of(PackageKind.WISHED))
        .map(SalePackage::candidate)
        .isEqualTo(Optional.of(other));
    assertThat(Packages.of(comparison, null, chosen).of(PackageKind.WISHED)).isEmpty();
  }

  @Test
  void moreThanSixteenTotalsAreNotLaidOut() {
    List<Item> three = List.of(extra("a", "1"), extra("b", "2"), extra("c", "3"));

    assertThat(Packages.of(compare(three)).all()).hasSize(3);
    assertThat(Packages.of(compare(three.subList(0, 2))).combinations()).hasSize(3 * 4);
    assertThat(Packages.of(compare(three)).combinations()).as("24 of them").isEmpty();
    assertThat(Packages.of(compare(List.of())).combinations()).isEmpty();
  }

  /** Softener, installation and each tick with its tax, less a bundle where both are ticked. */
  @Test
  void everyTotalIsTheSumOfWhatIsTicked() {
    Random random = new Random(20_261_127);
    for (int n = 0; n < 60; n++) {
      List<Item> extras = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(2); i++) {
        String price = random.nextInt(500) + "." + (10 + random.nextInt(90));
        extras.add(
            Item.of("x" + i, ItemKind.ACCESSORY, usd(price)).taxed(random.nextBoolean()).build());
      }
      List<Item> items = new ArrayList<>(extras);
      if (extras.size() > 1) {
        items.add(
            Item.of("pair", ItemKind.BUNDLE, usd("12.34"))
                .bundled(List.of("x0", "x1"))
                .taxed(true)
                .build());
      }
      Packages packages = Packages.of(compare(items));
      assertThat(packages.extras()).isEqualTo(extras);
      assertThat(packages.combinations()).isNotEmpty();
      packages
          .combinations()
          .forEach(
              each ->
                  assertThat(each.total().getAmount())
                      .as("%s with %s", each.chosen().kind(), each.ticked())
                      .isEqualByComparingTo(reckoned(each, extras.size() > 1)));
    }
  }

  private static BigDecimal reckoned(Combination each, boolean pair) {
    BigDecimal unit = each.chosen().candidate().offer().equipment().getAmount();
    BigDecimal sum = unit.add(tax(unit)).add(new BigDecimal("380.35"));
    for (Item item : each.ticked()) {
      BigDecimal price = item.price().getAmount();
      sum = sum.add(price).add(item.taxed() ? tax(price) : BigDecimal.ZERO);
    }
    boolean both = each.ticked().stream().map(Item::id).toList().containsAll(List.of("x0", "x1"));
    BigDecimal off = new BigDecimal("12.34");
    return pair && both ? sum.subtract(off).subtract(tax(off)) : sum;
  }

  private static BigDecimal tax(BigDecimal amount) {
    return amount.multiply(TAX).setScale(2, RoundingMode.HALF_EVEN);
  }

  @Test
  void whatIsIncludedIsInEveryPackage() {
    Item permit = Item.of("p", ItemKind.PERMIT, usd("60")).need(ItemNeed.INCLUDED).build();

    assertThat(Packages.of(compare(List.of(permit))).all())
        .allSatisfy(each -> assertThat(each.quote().items()).containsExactly(permit));
  }
}
