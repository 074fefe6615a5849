package io.github.brinewright.trace;

/**
 * Where a figure or a formula comes from.
 *
 * @param id a short stable name; not blank
 * @param standing how far it can be relied on
 * @param citation author, title, year and place, in the language of the publication; not blank
 */
public record Source(String id, Standing standing, String citation) {
  /**
   * @param id a short stable name
   * @param standing how far it can be relied on
   * @param citation author, title, year and place, in the language of the publication
   * @throws IllegalArgumentException when the name or the citation is blank
   */
  public Source {
    if (id.isBlank() || citation.isBlank()) {
      throw new IllegalArgumentException(
          "a source needs a name and a citation, but has \"" + id + "\" and \"" + citation + "\"");
    }
  }

  static Source published(String id, String citation) {
    return new Source(id, Standing.PUBLISHED, citation);
  }

  static Source derived(String id, String citation) {
    return new Source(id, Standing.DERIVED, citation);
  }

  static Source commonPractice(String id, String citation) {
    return new Source(id, Standing.COMMON_PRACTICE, citation);
  }

  static Source fromMemory(String id, String citation) {
    return new Source(id, Standing.FROM_MEMORY, citation);
  }

  /**
   * {@return a figure that the home or the dealer gave, for instance a resin table of the dealer's
   * own}
   *
   * @param citation who gave it; not blank
   * @throws IllegalArgumentException when the citation is blank
   */
  public static Source given(String citation) {
    return new Source("given", Standing.GIVEN, citation);
  }
}
