package io.github.brinewright.sizing;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is worked out when it is first asked for, by whichever thread asks first.
 *
 * @param <T> what the value is
 */
final class Once<T> {
  private @Nullable Supplier<T> supplier;
  private @Nullable T value;

  Once(Supplier<T> supplier) {
    this.supplier = supplier;
  }

  synchronized T get() {
    T found = value;
    if (found == null) {
      Supplier<T> work = supplier;
      if (work == null) {
        throw new IllegalStateException("a value was asked for while it was worked out");
      }
      supplier = null;
      found = work.get();
      value = found;
    }
    return found;
  }
}
