package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import java.util.Optional;
import java.util.function.Function;

/** The keys of the dealer's own pages. */
final class PageColumns {
  static final String TITLE = "title";
  static final String TEXT = "text";
  static final String PICTURE = "picture";
  static final String ALTERNATIVE = "picture_alt";

  private PageColumns() {}

  /** The key of a part of a page, as {@code page_1_title}. */
  static String key(int page, String what) {
    return "page_" + (page + 1) + "_" + what;
  }

  static Columns<DealerDraft, DealerColumns.Source> add(
      Columns<DealerDraft, DealerColumns.Source> columns) {
    for (int page = 0; page < OwnPage.MOST; page++) {
      text(columns, page, TITLE, OwnPage::title);
      text(columns, page, TEXT, OwnPage::text);
      int index = page;
      columns.add(
          Typed.picture(key(page, PICTURE)),
          (draft, file) -> draft.pages.get(index).picture = file,
          source -> page(source, index).flatMap(OwnPage::drawn).map(Logo::file));
      text(columns, page, ALTERNATIVE, OwnPage::alternative);
    }
    return columns;
  }

  private static void text(
      Columns<DealerDraft, DealerColumns.Source> columns,
      int page,
      String what,
      Function<OwnPage, LocalText> get) {
    columns.add(
        Typed.text(key(page, what)),
        (draft, text) -> draft.pages.get(page).say(what, "", text),
        source -> page(source, page).map(get).map(LocalText::usual).filter(t -> !t.isEmpty()));
    for (String code : Languages.CODES) {
      columns.add(
          Typed.text(key(page, what) + "_" + code),
          (draft, text) -> draft.pages.get(page).say(what, code, text),
          source -> page(source, page).map(get).map(texts -> texts.byLanguage().get(code)));
    }
  }

  private static Optional<OwnPage> page(DealerColumns.Source source, int index) {
    return source.dealer().pages().stream().skip(index).findFirst();
  }
}
