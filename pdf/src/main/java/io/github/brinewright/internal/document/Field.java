package io.github.brinewright.internal.document;

import java.util.List;

/**
 * A field that a reader fills on the screen.
 *
 * @param kind what goes into it
 * @param name by which its value is read back; unique within a document but for shared fields,
 *     without a period
 * @param label read aloud for it; never blank
 * @param value it begins with; empty for none
 * @param choices of a field to choose from; otherwise none
 * @param look how its edge is drawn
 * @param needed whether it must be filled
 */
public record Field(
    Kind kind,
    String name,
    String label,
    String value,
    List<Choice> choices,
    Look look,
    boolean needed) {
  /** What goes into a field. */
  public enum Kind {
    TEXT,
    CHOICE,
    TICK,
    ONE_OF,
    SIGNATURE
  }

  /** How the edge of a field is drawn. */
  public enum Look {
    /** A box around it. */
    BOXED,
    /** Nothing of its own: the page has a line to write on, or a box to tick. */
    OPEN
  }

  /**
   * Something to choose.
   *
   * @param value read back
   * @param name shown
   */
  public record Choice(String value, String name) {}

  /**
   * Keeps its own copy of {@code choices}.
   *
   * @throws IllegalArgumentException when the name has a period or is empty, or the label is blank
   */
  public Field {
    if (name.isEmpty() || name.contains(".")) {
      throw new IllegalArgumentException("\"" + name + "\" cannot be the name of a field");
    }
    if (label.isBlank()) {
      throw new IllegalArgumentException("the field \"" + name + "\" has no label");
    }
    if (kind == Kind.ONE_OF && !value.matches("[A-Za-z0-9-]+")) {
      throw new IllegalArgumentException(
          "\"" + value + "\" of the field \"" + name + "\" must be letters, digits and hyphens");
    }
    choices = List.copyOf(choices);
  }

  /** A field for one line of text. */
  public static Field text(String name, String label) {
    return new Field(Kind.TEXT, name, label, "", List.of(), Look.BOXED, false);
  }

  /** A field to choose from a list. */
  public static Field choice(String name, String label, List<Choice> choices) {
    return new Field(Kind.CHOICE, name, label, "", choices, Look.BOXED, false);
  }

  /** A box to tick. */
  public static Field tick(String name, String label) {
    return new Field(Kind.TICK, name, label, "", List.of(), Look.OPEN, false);
  }

  /** A place to mark as the one of its name that is chosen. */
  public static Field oneOf(String name, String label, String value) {
    return new Field(Kind.ONE_OF, name, label, value, List.of(), Look.OPEN, false);
  }

  /** A place to sign. */
  public static Field signature(String name, String label) {
    return new Field(Kind.SIGNATURE, name, label, "", List.of(), Look.OPEN, false);
  }

  /** The same beginning with a value. */
  public Field containing(String text) {
    return new Field(kind, name, label, text, choices, look, needed);
  }

  /** The same without an edge of its own. */
  public Field open() {
    return new Field(kind, name, label, value, choices, Look.OPEN, needed);
  }

  /** The same as one that must be filled. */
  public Field mandatory() {
    return new Field(kind, name, label, value, choices, look, true);
  }

  /** Whether it is ticked or marked, at every place of its name. */
  public boolean shared() {
    return kind == Kind.TICK || kind == Kind.ONE_OF;
  }

  /** What it is called when it is on. */
  String state() {
    return kind == Kind.ONE_OF ? value : "Yes";
  }

  /** What a reader sees in it: the name of what is chosen, or the value itself. */
  String shown() {
    return choices.stream()
        .filter(choice -> choice.value().equals(value))
        .map(Choice::name)
        .findFirst()
        .orElse(value);
  }
}
