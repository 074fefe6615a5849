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
  /**
   * {@return a row whose label is the text of its key}
   *
   * @param key by which the row is known in every language; unique within its element
   * @param value of the row
   */
  public static Row of(String key, Phrase value) {
    return of(key, Phrase.text(key), value);
  }

  /**
   * {@return a row whose label is the text of its key}
   *
   * @param key by which the row is known in every language; unique within its element
   * @param value of the row
   */
  public static Row of(String key, Figure value) {
    return of(key, Phrase.of(value));
  }

  /**
   * {@return a row with a label of its own}
   *
   * @param key by which the row is known in every language; unique within its element
   * @param label what the value is
   * @param value of the row
   */
  public static Row of(String key, Phrase label, Phrase value) {
    return new Row(key, label, value, Phrase.NONE, null, false);
  }

  /**
   * {@return a row labelled by a word of the trade, known by its type and constant}
   *
   * @param term a constant that the words have a text for
   * @param value of the row
   */
  public static Row of(Enum<?> term, Phrase value) {
    return of(key(term), Phrase.of(term), value);
  }

  /**
   * {@return the key of a row that is labelled by a word of the trade: its type, a period, its
   * constant}
   *
   * @param term a constant that the words have a text for
   */
  public static String key(Enum<?> term) {
    return term.getDeclaringClass().getSimpleName() + "." + term.name();
  }

  /**
   * {@return the same with a note}
   *
   * @param other where the value comes from or what it means
   */
  public Row noting(Phrase other) {
    return new Row(key, label, value, other, source, total);
  }

  /**
   * {@return the same with the source of its value}
   *
   * @param other where the value comes from
   */
  public Row from(Source other) {
    return new Row(key, label, value, note, other, total);
  }

  /** {@return the same as a sum of the rows above it} */
  public Row summing() {
    return new Row(key, label, value, note, source, true);
  }
}
