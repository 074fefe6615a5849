package io.github.brinewright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Bills against sums in plain decimals that are written out here. */
class BillTest {
  private static final Softener UNIT = Softener.withResin("u", Volume.ofCubicFeet(1)).build();
  private static final Money NOTHING = Money.zero(CurrencyUnit.USD);

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static Quote quote(String tax, boolean taxAll, List<Item> items) {
    Terms terms = Terms.builder().taxRate(new BigDecimal(tax)).taxOnInstallation(taxAll).build();
    Offer offer = Offer.of(UNIT, usd("999.99")).installation(usd("333.33")).build();
    return new Quote(offer, Control.METERED_AT_NIGHT, terms, items);
  }

  private static Item.Builder extra(String id, String price) {
    return Item.of(id, ItemKind.ACCESSORY, usd(price));
  }

  private static Item off(String id, String price, boolean taxed) {
    return Item.of(id, ItemKind.DISCOUNT, usd(price)).taxed(taxed).build();
  }

  private static Item.Builder percentOff(String share) {
    return Item.ofShare("percent", ItemKind.DISCOUNT, new BigDecimal(share), NOTHING);
  }

  /** 999.99 + 333.33 + 85.00 − 133.33 and 62.50 + 5.31 − 6.25 of tax, worked by hand. */
  @Test
  void aShareIsTakenOffTheSoftenerAndItsInstallationButNotOffWhatTheCustomerAdds() {
    Quote quote =
        quote(
            "0.0625",
            false,
            List.of(extra("alarm", "85.00").build(), percentOff("0.10").taxed(true).build()));

    assertThat(quote.lines())
        .extracting(line -> line.amount().getAmount().toPlainString())
        .containsExactly("999.99", "333.33", "85.00", "-133.33");
    assertThat(quote.lines())
        .extracting(line -> line.tax().getAmount().toPlainString())
        .containsExactly("62.50", "0.00", "5.31", "-6.25");
    assertThat(quote.total()).isEqualTo(usd("1346.55"));
  }

  @Test
  void whatIsTakenOffNeverMakesABillNegative() {
    for (boolean taxed : new boolean[] {true, false}) {
      Quote free = quote("0.07", true, List.of(off("all", "5000", taxed), off("more", "9", taxed)));

      assertThat(free.net()).isEqualTo(NOTHING);
      assertThat(free.total().isNegative()).isFalse();
      assertThat(free.tax()).as("taxed " + taxed).isEqualTo(taxed ? NOTHING : usd("93.33"));
    }
  }

  @Test
  void aBundleAppliesOnlyWhereAllThatItNamesIsThere() {
    Item bundle =
        Item.of("pair", ItemKind.BUNDLE, usd("30")).bundled(List.of("a", "b")).taxed(true).build();
    Item a = extra("a", "100").build();
    Item b = extra("b", "50").build();

    assertThat(quote("0", false, List.of(a, bundle)).lines()).hasSize(3);
    assertThat(quote("0", false, List.of(a, b, bundle)).net()).isEqualTo(usd("1453.32"));
  }

  @Test
  void quantityMultipliesPriceUpkeepAndRenewal() {
    Item two =
        extra("filter", "40.10")
            .quantity(2)
            .yearlyUpkeep(usd("12.50"))
            .renewedEvery(3, usd("19.99"))
            .build();

    assertThat(quote("0.10", false, List.of(two)).lines().get(2).total()).isEqualTo(usd("88.22"));
    assertThat(quote("0.10", false, List.of(two)).upkeep()).isEqualTo(usd("25.00"));
    assertThat(two.renewal()).isEqualTo(usd("39.98"));
  }

  @Test
  void wrongItemsAreRefused() {
    assertThatThrownBy(() -> extra("a", "-1")).hasMessageContaining("must be from 0");
    assertThatThrownBy(() -> extra("a", "1").need(ItemNeed.REQUIRED).build())
        .hasMessageContaining("by no finding");
    assertThatThrownBy(() -> Item.of("a", ItemKind.BUNDLE, usd("1")).build())
        .hasMessageContaining("bundle of no items");
    assertThatThrownBy(() -> extra("a", "1").bundled(List.of("b")).build())
        .hasMessageContaining("names items");
    assertThatThrownBy(() -> percentOff("0.1").yearlyUpkeep(usd("2")).build())
        .hasMessageContaining("has no upkeep");
    assertThatThrownBy(() -> Item.ofShare("a", ItemKind.LABOUR, new BigDecimal("0.1"), NOTHING))
        .hasMessageContaining("not a percentage");
    Item item = extra("a", "1").build();
    assertThatThrownBy(() -> quote("0", false, List.of(item, item)))
        .hasMessageContaining("two items have the id a");
    Item yen = Item.of("y", ItemKind.ACCESSORY, Money.parse("JPY 5")).build();
    assertThatThrownBy(() -> quote("0", false, List.of(yen))).hasMessageContaining("JPY");
  }

  @Test
  void randomBillsAreTheSumsOfTheirLinesAndNeverNegative() {
    Random random = new Random(20_261_127);
    for (int n = 0; n < 2_000; n++) {
      List<Item> items = items(random);
      Quote quote = quote("0.0" + random.nextInt(1_000), random.nextBoolean(), items);
      BigDecimal net = BigDecimal.ZERO;
      BigDecimal tax = BigDecimal.ZERO;
      for (BillLine line : quote.lines()) {
        net = net.add(line.amount().getAmount());
        tax = tax.add(line.tax().getAmount());
        assertThat(net.signum()).isNotNegative();
        assertThat(tax.signum()).isNotNegative();
      }
      assertThat(quote.total().getAmount()).isEqualByComparingTo(net.add(tax));
      assertThat(quote.tax().getAmount().doubleValue())
          .as("within half a cent a line of what an exact sum has")
          .isCloseTo(exactTax(quote), offset(0.005 * quote.lines().size()));
    }
  }

  /** Rate × what is taxed, without any rounding between; untaxed reductions leave it alone. */
  private static double exactTax(Quote quote) {
    BigDecimal taxed = BigDecimal.ZERO;
    BigDecimal own = quote.equipment().getAmount();
    own =
        quote.terms().taxOnInstallation() ? own.add(quote.offer().installation().getAmount()) : own;
    BigDecimal ownAll = quote.equipment().plus(quote.offer().installation()).getAmount();
    taxed = own;
    BigDecimal left = ownAll;
    for (Item item : quote.items()) {
      if (!item.kind().reduces()) {
        BigDecimal price = item.price().getAmount().multiply(BigDecimal.valueOf(item.quantity()));
        left = left.add(price);
        taxed = item.taxed() ? taxed.add(price) : taxed;
      }
    }
    for (Item item : quote.items()) {
      if (item.kind().reduces()) {
        BigDecimal off =
            item.share()
                .map(share -> share.multiply(ownAll).setScale(2, RoundingMode.HALF_EVEN))
                .orElse(item.amount().getAmount())
                .min(left);
        BigDecimal ownTaxed = own;
        BigDecimal offTaxed =
            item.share()
                .map(share -> share.multiply(ownTaxed).setScale(2, RoundingMode.HALF_EVEN))
                .orElse(off);
        left = left.subtract(off);
        taxed = item.taxed() ? taxed.subtract(offTaxed.min(off).min(taxed)) : taxed;
      }
    }
    return taxed.multiply(quote.terms().taxRate()).doubleValue();
  }

  private static List<Item> items(Random random) {
    List<Item> items = new ArrayList<>();
    int count = random.nextInt(6);
    for (int i = 0; i < count; i++) {
      String price = random.nextInt(900) + "." + (10 + random.nextInt(90));
      items.add(
          switch (random.nextInt(3)) {
            case 0 -> off("i" + i, price, random.nextBoolean());
            case 1 ->
                Item.ofShare(
                        "i" + i,
                        ItemKind.DISCOUNT,
                        new BigDecimal("0." + random.nextInt(100)),
                        NOTHING)
                    .taxed(random.nextBoolean())
                    .build();
            default ->
                extra("i" + i, price)
                    .quantity(1 + random.nextInt(3))
                    .taxed(random.nextBoolean())
                    .build();
          });
    }
    return items;
  }
}
