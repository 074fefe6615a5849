package io.github.brinewright.job;

import java.util.Optional;
import java.util.function.Function;

/**
 * How the text of a cell becomes a value, and the other way.
 *
 * @param <T> kind of the value
 */
interface Format<T> {
  /** The value of a filled cell, or empty after noting what is wrong with it. */
  Optional<T> read(Cell cell);

  /** The text that {@link #read} takes for the value. */
  String write(T value);

  /** The same text for a value that is made from this one. */
  default <U> Format<U> as(Function<T, U> make, Function<U, T> unmake) {
    Format<T> plain = this;
    return new Format<>() {
      @Override
      public Optional<U> read(Cell cell) {
        return plain.read(cell).map(make);
      }

      @Override
      public String write(U value) {
        return plain.write(unmake.apply(value));
      }
    };
  }
}
