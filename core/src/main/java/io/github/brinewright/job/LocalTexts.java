package io.github.brinewright.job;

import io.github.brinewright.cost.LocalText;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The columns of a text in one language or in several: {@code name}, {@code name_es} … */
final class LocalTexts {
  private LocalTexts() {}

  /**
   * Adds them.
   *
   * @param name of the first; the others have the code of their language behind it
   * @param change puts what is read into the draft
   * @param text of what is written
   */
  static <D, S> Columns<D, S> add(
      Columns<D, S> columns,
      String name,
      BiConsumer<D, UnaryOperator<LocalText>> change,
      Function<S, LocalText> text) {
    columns.add(
        Typed.text(name),
        (draft, usual) -> change.accept(draft, old -> new LocalText(usual, old.byLanguage())),
        source -> Optional.of(text.apply(source).usual()).filter(known -> !known.isEmpty()));
    for (String code : Languages.CODES) {
      columns.add(
          Typed.text(name + "_" + code),
          (draft, own) -> change.accept(draft, old -> old.with(code, own)),
          source -> Optional.ofNullable(text.apply(source).byLanguage().get(code)));
    }
    return columns;
  }
}
