package io.github.brinewright.model;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A document as what it says.
 *
 * @param kind what it is for
 * @param title by which a reader's program lists it
 * @param letterhead who it comes from
 * @param heading on its first page
 * @param details below the heading, in one line
 * @param sections in the order in which they are read
 */
public record Document(
    Kind kind,
    Phrase title,
    Letterhead letterhead,
    Phrase heading,
    List<Phrase> details,
    List<Section> sections) {
  /** What a document is for. */
  public enum Kind {
    /** A proposal for a homeowner. */
    PROPOSAL,
    /** One page for a homeowner. */
    PAGE,
    /** A report on what a home has already. */
    REPORT,
    /** A sheet for an installer. */
    SHEET,
    /** A form to fill. */
    FORM
  }

  /**
   * Keeps its own copies of the lists.
   *
   * @param kind what it is for
   * @param title by which a reader's program lists it
   * @param letterhead who it comes from
   * @param heading on its first page
   * @param details below the heading, in one line
   * @param sections in the order in which they are read
   * @throws IllegalArgumentException when two sections have the same key
   */
  public Document {
    details = List.copyOf(details);
    sections = List.copyOf(sections);
    Set<String> keys = new HashSet<>();
    for (Section section : sections) {
      if (!keys.add(section.key())) {
        throw new IllegalArgumentException("two sections have the key \"" + section.key() + "\"");
      }
    }
  }

  /**
   * {@return the same with other sections: some added, left out, or in another order}
   *
   * <pre>{@code
   * Document shorter =
   *     document.withSections(
   *         all -> all.stream().filter(section -> !section.key().equals("worked")).toList());
   * }</pre>
   *
   * @param change from the sections there are to those wanted
   * @throws IllegalArgumentException when two sections have the same key
   */
  public Document withSections(UnaryOperator<List<Section>> change) {
    return new Document(kind, title, letterhead, heading, details, change.apply(sections));
  }
}
