package io.github.brinewright.model;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import org.jspecify.annotations.Nullable;

/**
 * A label with its value.
 *
 * @param key by which the row is known in every language; unique within its element
 * @param label what the value is
 * @param value of it
 * @param note on the value: where it comes from or what it means; may be {@link Phrase#NONE}
 * @param source of the value, where it has one of its own
 * @param total whether it sums up the rows above it
 */
public record Row(
    String key, Phrase label, Phrase value, Phrase note, @Nullable Source source, boolean total) {
  /** A row whose label is the text of its key. */
  public static Row of(String key, Phrase value) {
    return of(key, Phrase.text(key), value);
  }

  /** A row whose label is the text of its key. */
  public static Row of(String key, Figure value) {
    return of(key, Phrase.of(value));
  }

  /** A row with a label of its own. */
  public static Row of(String key, Phrase label, Phrase value) {
    return new Row(key, label, value, Phrase.NONE, null, false);
  }

  /** A row labelled by a word of the trade, known by its type and constant. */
  public static Row of(Enum<?> term, Phrase value) {
    return of(key(term), Phrase.of(term), value);
  }

  /** The key of a row that is labelled by a word of the trade: its type, a period, its constant. */
  public static String key(Enum<?> term) {
    return term.getDeclaringClass().getSimpleName() + "." + term.name();
  }

  /** The same with a note. */
  public Row noting(Phrase other) {
    return new Row(key, label, value, other, source, total);
  }

  /** The same with the source of its value. */
  public Row from(Source other) {
    return new Row(key, label, value, note, other, total);
  }

  /** The same as a sum of the rows above it. */
  public Row summing() {
    return new Row(key, label, value, note, source, true);
  }
}
