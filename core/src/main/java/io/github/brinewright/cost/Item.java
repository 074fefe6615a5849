package io.github.brinewright.cost;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.treatment.Treatment;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Something that is sold beside the softener, or taken off its price.
 *
 * <pre>{@code
 * Item alarm =
 *     Item.of("alarm", ItemKind.ACCESSORY, Money.parse("USD 85"))
 *         .name(LocalText.of("Leak alarm").with("es", "Alarma de fugas"))
 *         .need(ItemNeed.OFFERED)
 *         .build();
 * }</pre>
 *
 * <p>Immutable; equal items are equal.
 */
public final class Item {
  /** How many of one item a quote may have: 1 to 99. */
  public static final Bounds<Integer> QUANTITY = Bounds.of(1, 99);

  /** After how many years a part may have to be bought again: 1 to 30. */
  public static final Bounds<Integer> RENEWAL = Bounds.of(1, LifeCost.MOST_YEARS);

  private final Values values;

  private Item(Values values) {
    this.values = values;
  }

  /**
   * Begins an item with a price.
   *
   * @param id short name within a price list; not blank
   * @param kind what it is
   * @param price of one; what is taken off where the kind reduces a bill; 0 to 10^12
   * @return a builder of the item
   * @throws IllegalArgumentException when the id is blank or the price outside that range
   */
  public static Builder of(String id, ItemKind kind, Money price) {
    return new Builder(
        id, kind, Prices.require("price of item " + id, price, price.getCurrencyUnit()));
  }

  /**
   * Begins an item that takes a share off the softener, its installation and what comes with it.
   *
   * @param id short name within a price list; not blank
   * @param kind one that reduces a bill
   * @param share that is taken off, as a fraction; 0 to 1, with at most 8 decimals
   * @param nothing zero in the currency of the price list
   * @return a builder of the item
   * @throws IllegalArgumentException when the id is blank, the kind reduces nothing, or the share
   *     is outside that range
   */
  public static Builder ofShare(String id, ItemKind kind, BigDecimal share, Money nothing) {
    if (!kind.reduces()) {
      throw new IllegalArgumentException(
          "item " + id + " is of the kind " + kind + ", which has a price, not a percentage");
    }
    Builder builder = of(id, kind, nothing);
    builder.share = Prices.rate("share of item " + id, share, "1");
    return builder;
  }

  /**
   * Sees that items may stand side by side.
   *
   * @param items of a quote or a price list
   * @param currency of their prices
   * @throws IllegalArgumentException when two have one id, or one is in another currency
   */
  public static void check(List<Item> items, CurrencyUnit currency) {
    Set<String> ids = new HashSet<>();
    for (Item item : items) {
      Prices.requireCurrency("the price of item " + item.id(), item.price(), currency);
      if (!ids.add(item.id())) {
        throw new IllegalArgumentException(
            "two items have the id " + item.id() + "; leave one out or give it another");
      }
    }
  }

  /** {@return the short name within a price list} */
  public String id() {
    return values.id;
  }

  /** {@return what it is} */
  public ItemKind kind() {
    return values.kind;
  }

  /** {@return the name on paper} */
  public LocalText name() {
    return values.name;
  }

  /**
   * {@return the name on paper in a language}
   *
   * @param locale whose language is written
   */
  public String name(Locale locale) {
    return name().in(locale);
  }

  /** {@return what the homeowner reads of it; may be empty} */
  public LocalText text() {
    return values.text;
  }

  /** {@return the price of one, or what is taken off; zero where a share is} */
  public Money price() {
    return values.price;
  }

  /** {@return the share that is taken off, as a fraction; empty where a price is stated} */
  public Optional<BigDecimal> share() {
    return Optional.ofNullable(values.share);
  }

  /** {@return whether sales tax applies; of what is taken off, whether it lowers the taxed sum} */
  public boolean taxed() {
    return values.taxed;
  }

  /** {@return how many there are of it} */
  public int quantity() {
    return values.quantity;
  }

  /** {@return price × quantity, before tax; zero where a share is taken off} */
  public Money amount() {
    return price().multipliedBy(quantity());
  }

  /** {@return what a year's upkeep of one costs} */
  public Money yearlyUpkeep() {
    return values.yearlyUpkeep;
  }

  /** {@return the upkeep of a year × quantity} */
  public Money upkeep() {
    return yearlyUpkeep().multipliedBy(quantity());
  }

  /** {@return after how many years it is bought again; empty where it lasts} */
  public OptionalInt renewedEvery() {
    return values.renewedEvery == 0 ? OptionalInt.empty() : OptionalInt.of(values.renewedEvery);
  }

  /** What a year of upkeep of all of some items costs. */
  static Money upkeep(List<Item> items, CurrencyUnit currency) {
    return items.stream().map(Item::upkeep).reduce(Money.zero(currency), Money::plus);
  }

  /** {@return what buying one of it, or its part, again costs; zero where it lasts} */
  public Money renewalOfOne() {
    return values.renewal;
  }

  /** {@return what buying it again costs, for all of it; zero where it lasts} */
  public Money renewal() {
    return renewalOfOne().multipliedBy(quantity());
  }

  /** {@return when it stands in a quote} */
  public ItemNeed need() {
    return values.need;
  }

  /** {@return codes of the findings and reasons that ask for it; empty unless it is required} */
  public List<String> requiredBy() {
    return values.requiredBy;
  }

  /** {@return ids of the items that must stand in a quote with a bundle; empty of other kinds} */
  public List<String> bundled() {
    return values.bundled;
  }

  /** {@return what it does to the water; empty where that is not stated, or it does nothing} */
  public Optional<Treatment> treatment() {
    return Optional.ofNullable(values.treatment);
  }

  /** {@return whether a softener is sized on the water behind it where it is in a quote} */
  public boolean changesWater() {
    return treatment().filter(Treatment::changesWater).isPresent();
  }

  /** {@return whether a customer may choose it; a bundle applies by itself} */
  public boolean isExtra() {
    return need() == ItemNeed.OFFERED && kind() != ItemKind.BUNDLE;
  }

  /**
   * {@return whether one of its codes is among these}
   *
   * @param codes of findings and reasons
   */
  public boolean requiredBy(Set<String> codes) {
    return need() == ItemNeed.REQUIRED && requiredBy().stream().anyMatch(codes::contains);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Item item && values.equals(item.values);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(values);
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Item");
  }

  private record Values(
      String id,
      ItemKind kind,
      LocalText name,
      LocalText text,
      Money price,
      @Nullable BigDecimal share,
      boolean taxed,
      int quantity,
      Money yearlyUpkeep,
      int renewedEvery,
      Money renewal,
      ItemNeed need,
      List<String> requiredBy,
      List<String> bundled,
      @Nullable Treatment treatment) {}

  /** Collects an item. */
  public static final class Builder {
    private final String id;
    private final ItemKind kind;
    private final Money price;
    private @Nullable BigDecimal share;
    private LocalText name;
    private LocalText text = LocalText.NONE;
    private boolean taxed;
    private int quantity = 1;
    private Money yearlyUpkeep;
    private int renewedEvery;
    private @Nullable Money renewal;
    private ItemNeed need = ItemNeed.OFFERED;
    private List<String> requiredBy = List.of();
    private List<String> bundled = List.of();
    private @Nullable Treatment treatment;

    private Builder(String id, ItemKind kind, Money price) {
      this.id = Require.notBlank("item id", id);
      this.kind = kind;
      this.price = price;
      name = LocalText.of(id);
      taxed = kind.goods();
      yearlyUpkeep = Money.zero(price.getCurrencyUnit());
    }

    private Money require(String what, Money amount) {
      return Prices.require(what + " of item " + id, amount, price.getCurrencyUnit());
    }

    /**
     * The name on paper; the id unless set.
     *
     * @param name short, without a full stop
     * @return this builder
     */
    public Builder name(LocalText name) {
      this.name = name.usual().isEmpty() ? new LocalText(id, name.byLanguage()) : name;
      return this;
    }

    /**
     * What the homeowner reads of it; nothing unless set.
     *
     * @param text a sentence or two
     * @return this builder
     */
    public Builder text(LocalText text) {
      this.text = text;
      return this;
    }

    /**
     * Whether sales tax applies; to treatment and accessories unless set.
     *
     * @param taxed true to tax it; of what is taken off, true to lower the taxed sum
     * @return this builder
     */
    public Builder taxed(boolean taxed) {
      this.taxed = taxed;
      return this;
    }

    /**
     * How many there are of it; one unless set.
     *
     * @param quantity 1 to 99
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder quantity(int quantity) {
      this.quantity = QUANTITY.require("quantity of item " + id, quantity);
      return this;
    }

    /**
     * What a year's upkeep of one costs; nothing unless set.
     *
     * @param amount 0 to 10^12 in the currency of the price
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder yearlyUpkeep(Money amount) {
      yearlyUpkeep = require("upkeep", amount);
      return this;
    }

    /**
     * When it is bought again, at its own price; never unless set.
     *
     * @param years 1 to 30
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder renewedEvery(int years) {
      return renewedEvery(years, price);
    }

    /**
     * When a part of it is bought again, and for how much; never unless set.
     *
     * @param years 1 to 30
     * @param cost of the part for one; 0 to 10^12 in the currency of the price
     * @return this builder
     * @throws IllegalArgumentException outside these ranges, or in another currency
     */
    public Builder renewedEvery(int years, Money cost) {
      renewedEvery = RENEWAL.require("years to the renewal of item " + id, years);
      renewal = require("renewal", cost);
      return this;
    }

    /**
     * When it stands in a quote; where the customer chooses it unless set.
     *
     * @param need included in every quote, or offered
     * @return this builder
     */
    public Builder need(ItemNeed need) {
      this.need = need;
      return this;
    }

    /**
     * Findings and reasons that put it into a quote.
     *
     * @param codes of at least one finding, reason or margin, such as {@code PRESSURE_HIGH}
     * @return this builder
     */
    public Builder requiredBy(List<String> codes) {
      requiredBy = List.copyOf(codes);
      return need(ItemNeed.REQUIRED);
    }

    /**
     * Items that must stand in a quote for this bundle to apply.
     *
     * @param ids of other items of the price list
     * @return this builder
     */
    public Builder bundled(List<String> ids) {
      bundled = List.copyOf(ids);
      return this;
    }

    /**
     * What it does to the water; nothing unless set.
     *
     * @param effect of an item of the kind treatment
     * @return this builder
     */
    public Builder treatment(Treatment effect) {
      treatment = effect;
      return this;
    }

    /**
     * {@return the finished item; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when it is required by nothing, when a bundle names fewer
     *     than one item or another kind names any, or when what is taken off has upkeep or is
     *     renewed
     */
    public Item build() {
      refuse(
          need == ItemNeed.REQUIRED && requiredBy.isEmpty(),
          "is required, but by no finding; name its code");
      refuse(
          (kind == ItemKind.BUNDLE) == bundled.isEmpty(),
          kind == ItemKind.BUNDLE
              ? "is a bundle of no items; name them"
              : "is no bundle, but names items; leave them out");
      refuse(
          treatment != null && kind != ItemKind.TREATMENT,
          "is no treatment, but says what it does to the water; leave that out");
      refuse(
          kind.reduces() && (renewedEvery > 0 || yearlyUpkeep.isPositive()),
          "is taken off the price, so that it has no upkeep and is not renewed");
      return new Item(
          new Values(
              id,
              kind,
              name,
              text,
              price,
              share,
              taxed,
              quantity,
              yearlyUpkeep,
              renewedEvery,
              renewal == null ? Money.zero(price.getCurrencyUnit()) : renewal,
              need,
              requiredBy,
              bundled,
              treatment));
    }

    private void refuse(boolean wrong, String why) {
      if (wrong) {
        throw new IllegalArgumentException("item " + id + " " + why);
      }
    }
  }
}
