package io.github.brinewright.job;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemKind;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.finding.RuleBook;
import io.github.brinewright.job.Problem.Argument;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/** Reads items.csv: one row for each thing that is sold beside a unit, or taken off. */
final class ItemReader {
  private static final Columns<ItemDraft, Item> COLUMNS = ItemColumns.COLUMNS;
  private static final List<String> CODES = List.copyOf(RuleBook.USUAL.codes());

  private final CurrencyUnit currency;
  private final Set<String> ids = new HashSet<>();
  private final Map<Row, ItemDraft> drafts = new LinkedHashMap<>();

  ItemReader(CurrencyUnit currency) {
    this.currency = currency;
  }

  List<Item> read(JobFiles files, List<Problem> problems) {
    for (Row row : Table.read(files, COLUMNS, problems)) {
      ItemDraft draft = new ItemDraft();
      COLUMNS.read(row, draft);
      if (!draft.id.isEmpty() && !ids.add(draft.id)) {
        row.note("item_id", draft.id, ProblemCode.ID_TWICE);
      }
      drafts.put(row, draft);
    }
    List<Item> items = new ArrayList<>();
    drafts.forEach(
        (row, draft) -> {
          check(row, draft);
          row.build(() -> draft.build(currency)).ifPresent(items::add);
        });
    return items;
  }

  private void check(Row row, ItemDraft draft) {
    checkPrice(row, draft);
    checkNeed(row, draft);
    checkBundle(row, draft);
    checkTreatment(row, draft);
    Stream.of("price", "upkeep_price_per_year", "renewal_price")
        .forEach(column -> checkMoney(row, column, draft));
    if (row.has("renewal_price") && !row.has("renewed_every_years")) {
      row.needed(COLUMNS.column("renewed_every_years"));
    }
  }

  private static void checkPrice(Row row, ItemDraft draft) {
    if (row.isWhole() && row.has("price") == row.has("percent")) {
      row.note("price", "", ProblemCode.PRICE_NEEDED, new Argument.ColumnName("percent"));
    }
    if (row.has("percent") && draft.kind != null && !draft.kind.reduces()) {
      unfit(row, "percent", ProblemCode.PERCENT_UNFIT, reducing());
    }
  }

  private static List<String> reducing() {
    return Stream.of(ItemKind.values()).filter(ItemKind::reduces).map(Formats::word).toList();
  }

  /** Named codes make an item required; a required one needs some, and each must be known. */
  private static void checkNeed(Row row, ItemDraft draft) {
    if (row.has("required_by") && !row.has("need")) {
      draft.need = ItemNeed.REQUIRED;
    }
    if (draft.need == ItemNeed.REQUIRED && !row.has("required_by")) {
      row.needed(COLUMNS.column("required_by"));
    }
    if (draft.need != ItemNeed.REQUIRED && row.has("required_by")) {
      unfit(row, "need", ProblemCode.NEED_UNFIT, List.of(Formats.word(ItemNeed.REQUIRED)));
    }
    draft.requiredBy.stream()
        .filter(code -> !CODES.contains(code))
        .forEach(code -> row.unknown("required_by", code, CODES));
  }

  private void checkBundle(Row row, ItemDraft draft) {
    if (draft.kind == ItemKind.BUNDLE && !row.has("bundled_items")) {
      row.needed(COLUMNS.column("bundled_items"));
    }
    if (draft.kind != null && draft.kind != ItemKind.BUNDLE && row.has("bundled_items")) {
      unfit(row, "bundled_items", ProblemCode.KIND_UNFIT, List.of(Formats.word(ItemKind.BUNDLE)));
    }
    draft.bundled.stream()
        .filter(id -> !ids.contains(id) || id.equals(draft.id))
        .forEach(id -> row.unknown("bundled_items", id, others(draft)));
  }

  /** An effect belongs to a treatment and needs its position; some of it comes in pairs. */
  private static void checkTreatment(Row row, ItemDraft draft) {
    Optional<String> first = TreatmentColumns.NAMES.stream().filter(row::has).findFirst();
    if (first.isEmpty()) {
      return;
    }
    if (draft.kind != null && draft.kind != ItemKind.TREATMENT) {
      unfit(row, first.get(), ProblemCode.KIND_UNFIT, List.of(Formats.word(ItemKind.TREATMENT)));
    } else if (!row.has(TreatmentColumns.POSITION)) {
      row.needed(COLUMNS.column(TreatmentColumns.POSITION));
    }
    row.bothOrNone(COLUMNS.column("neutralizer_mineral"), COLUMNS.column("ph_after"));
    row.bothOrNone(COLUMNS.column("backwash_gal"), COLUMNS.column("backwash_every_days"));
  }

  /** Notes a cell that does not go with the rest of its row, with the words that would. */
  private static void unfit(Row row, String column, ProblemCode code, List<String> words) {
    row.note(column, row.cell(column).orElse(""), code, new Argument.Words(words));
  }

  private List<String> others(ItemDraft draft) {
    return ids.stream().filter(id -> !id.equals(draft.id)).sorted().toList();
  }

  private void checkMoney(Row row, String column, ItemDraft draft) {
    var amount =
        switch (column) {
          case "price" -> draft.price;
          case "renewal_price" -> draft.renewal;
          default -> draft.upkeep;
        };
    if (amount != null) {
      row.checkMoney(column, amount, currency);
    }
  }
}
