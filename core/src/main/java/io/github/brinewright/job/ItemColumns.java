package io.github.brinewright.job;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The columns of items.csv: one row for each thing that is sold beside a unit, or taken off. */
public final class ItemColumns {
  /** All of them. */
  static final Columns<ItemDraft, Item> COLUMNS =
      TreatmentColumns.add(need(upkeep(price(texts(new Columns<ItemDraft, Item>("items.csv"))))));

  private ItemColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<ItemDraft, Item> texts(Columns<ItemDraft, Item> columns) {
    columns
        .always(Typed.shortName("item_id").needed(), (draft, id) -> draft.id = id, Item::id)
        .always(
            Typed.choice("kind", ItemKind.class).needed(),
            (draft, kind) -> draft.kind = kind,
            Item::kind);
    LocalTexts.add(
        columns, "name", (draft, change) -> draft.name = change.apply(draft.name), Item::name);
    return LocalTexts.add(
        columns, "text", (draft, change) -> draft.text = change.apply(draft.text), Item::text);
  }

  private static Columns<ItemDraft, Item> price(Columns<ItemDraft, Item> columns) {
    return columns
        .add(
            Measures.price("price"),
            (draft, price) -> draft.price = price,
            item -> item.share().isPresent() ? Optional.empty() : amount(item.price()))
        .add(Typed.fraction("percent", 0, 100), (draft, share) -> draft.share = share, Item::share)
        .always(Typed.yesNo("taxed"), (draft, yes) -> draft.taxed = yes, Item::taxed)
        .always(
            Typed.whole("quantity", Item.QUANTITY).usual(1),
            (draft, quantity) -> draft.quantity = quantity,
            Item::quantity);
  }

  private static Columns<ItemDraft, Item> upkeep(Columns<ItemDraft, Item> columns) {
    return columns
        .always(
            Measures.price("upkeep_price_per_year").usual(BigDecimal.ZERO),
            (draft, price) -> draft.upkeep = price,
            item -> item.yearlyUpkeep().getAmount())
        .add(
            Typed.whole("renewed_every_years", Item.RENEWAL).unit("years"),
            (draft, years) -> draft.renewedEvery = years,
            item -> item.renewedEvery().stream().boxed().findFirst())
        .add(
            Measures.price("renewal_price"),
            (draft, price) -> draft.renewal = price,
            item ->
                item.renewedEvery().isPresent() ? amount(item.renewalOfOne()) : Optional.empty());
  }

  private static Columns<ItemDraft, Item> need(Columns<ItemDraft, Item> columns) {
    return columns
        .always(
            Typed.choice("need", ItemNeed.class).usual(ItemNeed.OFFERED),
            (draft, need) -> draft.need = need,
            Item::need)
        .add(
            Typed.references("required_by"),
            (draft, codes) -> draft.requiredBy = codes,
            item -> several(item.requiredBy()))
        .add(
            Typed.references("bundled_items"),
            (draft, ids) -> draft.bundled = ids,
            item -> several(item.bundled()));
  }

  private static Optional<BigDecimal> amount(Money money) {
    return Optional.of(money.getAmount());
  }

  private static Optional<List<String>> several(List<String> texts) {
    return Optional.of(texts).filter(all -> !all.isEmpty());
  }
}
