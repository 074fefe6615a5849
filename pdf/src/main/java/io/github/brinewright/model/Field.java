package io.github.brinewright.model;

import java.util.List;

/**
 * A field that a reader fills.
 *
 * @param kind what goes into it
 * @param name by which its value is read back; unique within a document but for what is ticked or
 *     marked, without a period
 * @param label of it, and what is read aloud for it
 * @param value it begins with; empty for none; of {@link Kind#ONE_OF} what marking it means
 * @param choices of a field to choose from; otherwise none
 * @param needed whether it must be filled
 */
public record Field(
    Kind kind, String name, Phrase label, String value, List<Choice> choices, boolean needed) {
  /** What goes into a field. */
  public enum Kind {
    /** A line of text. */
    TEXT,
    /** One of some choices. */
    CHOICE,
    /** A tick; the same name at several places is one tick that shows at all of them. */
    TICK,
    /** One of some places to mark: those of one name, told apart by their values. */
    ONE_OF,
    /** A signature. */
    SIGNATURE
  }

  /**
   * Something to choose.
   *
   * @param value read back
   * @param name shown
   */
  public record Choice(String value, Phrase name) {}

  /**
   * Keeps its own copy of {@code choices}.
   *
   * @param kind what goes into it
   * @param name by which its value is read back; unique within a document, without a period
   * @param label of it, and what is read aloud for it
   * @param value it begins with; empty for none
   * @param choices of a field to choose from; otherwise none
   * @param needed whether it must be filled
   * @throws IllegalArgumentException when the name has a period or is empty
   */
  public Field {
    if (name.isEmpty() || name.contains(".")) {
      throw new IllegalArgumentException("\"" + name + "\" cannot be the name of a field");
    }
    choices = List.copyOf(choices);
  }

  /**
   * {@return an empty field without choices}
   *
   * @param kind what goes into it
   * @param name by which its value is read back; unique within a document, without a period
   * @param label of it, and what is read aloud for it
   */
  public static Field of(Kind kind, String name, Phrase label) {
    return new Field(kind, name, label, "", List.of(), false);
  }

  /**
   * {@return an empty field to choose from a list}
   *
   * @param name by which its value is read back; unique within a document, without a period
   * @param label of it, and what is read aloud for it
   * @param choices in the order of the list
   */
  public static Field choice(String name, Phrase label, List<Choice> choices) {
    return new Field(Kind.CHOICE, name, label, "", choices, false);
  }

  /**
   * {@return a place to mark as the one chosen among those of its name, not marked at first} The
   * same value at several places is one choice that shows at all of them.
   *
   * @param name of the choice, by which it is read back; without a period
   * @param label of it, and what is read aloud for it
   * @param value read back when it is marked; letters, digits and hyphens
   */
  public static Field oneOf(String name, Phrase label, String value) {
    return of(Kind.ONE_OF, name, label).containing(value);
  }

  /**
   * {@return the same beginning with a value}
   *
   * @param text that it begins with
   */
  public Field containing(String text) {
    return new Field(kind, name, label, text, choices, needed);
  }

  /** {@return the same as one that must be filled} */
  public Field mandatory() {
    return new Field(kind, name, label, value, choices, true);
  }
}
