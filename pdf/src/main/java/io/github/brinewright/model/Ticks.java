package io.github.brinewright.model;

import java.util.List;

/**
 * A list to tick off, or to mark one of.
 *
 * @param fields each to tick, with what is to be done as its label
 */
public record Ticks(List<Field> fields) implements Element {
  /**
   * Keeps its own copy of {@code fields}.
   *
   * @param fields each to tick, with what is to be done as its label
   * @throws IllegalArgumentException when a field is not one to tick
   */
  public Ticks {
    fields = List.copyOf(fields);
    for (Field field : fields) {
      if (field.kind() != Field.Kind.TICK && field.kind() != Field.Kind.ONE_OF) {
        throw new IllegalArgumentException("\"" + field.name() + "\" is no field to tick");
      }
    }
  }
}
