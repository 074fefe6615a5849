package io.github.brinewright.job;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.treatment.Treatment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What a row of items.csv says, column by column, until the item can be built from it. */
final class ItemDraft {
  String id = "";
  @Nullable ItemKind kind;
  @Nullable BigDecimal price;
  @Nullable BigDecimal share;
  LocalText name = LocalText.NONE;
  LocalText text = LocalText.NONE;
  @Nullable Boolean taxed;
  int quantity = 1;
  BigDecimal upkeep = BigDecimal.ZERO;
  @Nullable Integer renewedEvery;
  @Nullable BigDecimal renewal;
  ItemNeed need = ItemNeed.OFFERED;
  List<String> requiredBy = List.of();
  List<String> bundled = List.of();
  final TreatmentDraft treatment = new TreatmentDraft();

  Item build(CurrencyUnit currency) {
    Item.Builder item =
        begin(currency)
            .name(name)
            .text(text)
            .quantity(quantity)
            .yearlyUpkeep(Money.of(currency, upkeep))
            .need(need)
            .bundled(bundled);
    Treatment effect = treatment.build();
    if (effect != null) {
      item.treatment(effect);
    }
    if (taxed != null) {
      item.taxed(taxed);
    }
    if (renewedEvery != null && renewal != null) {
      item.renewedEvery(renewedEvery, Money.of(currency, renewal));
    } else if (renewedEvery != null) {
      item.renewedEvery(renewedEvery);
    }
    return need == ItemNeed.REQUIRED ? item.requiredBy(requiredBy).build() : item.build();
  }

  private Item.Builder begin(CurrencyUnit currency) {
    ItemKind known = Objects.requireNonNull(kind);
    return share == null
        ? Item.of(id, known, Money.of(currency, Objects.requireNonNull(price)))
        : Item.ofShare(id, known, share, Money.zero(currency));
  }
}
