package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Tag;
import org.jspecify.annotations.Nullable;

/**
 * What a piece of a document is, for those who have it read aloud. Several pieces may belong to one
 * part, also on several pages. Parts are told apart by identity. To make one changes nothing: its
 * tag is opened when its first piece is put on a page, see {@link Tags}.
 */
final class Part {
  private final @Nullable Part whole;
  private final Tag.Role role;
  private final @Nullable String alternative;
  private final @Nullable String language;
  private final Tag.@Nullable Scope scope;

  private Part(
      @Nullable Part whole,
      Tag.Role role,
      @Nullable String alternative,
      @Nullable String language,
      Tag.@Nullable Scope scope) {
    this.whole = whole;
    this.role = role;
    this.alternative = alternative;
    this.language = language;
    this.scope = scope;
  }

  /** A part of the document itself. */
  static Part of(Tag.Role role) {
    return new Part(null, role, null, null, null);
  }

  /** A part of this one. */
  Part child(Tag.Role of) {
    return new Part(this, of, null, null, null);
  }

  /** A figure within this part, with the text that stands for it. */
  Part figure(String inWords) {
    return new Part(this, Tag.Role.FIGURE, inWords, null, null);
  }

  /** A paragraph within this part, in a language that is not the document's. */
  Part paragraph(String languageTag) {
    return new Part(this, Tag.Role.PARAGRAPH, null, languageTag, null);
  }

  /** A cell of this row that heads others. */
  Part head(Tag.Scope heads) {
    return new Part(this, Tag.Role.HEADER_CELL, null, null, heads);
  }

  /** Whether a reader would look for it among the bookmarks. */
  boolean bookmarked() {
    return role == Tag.Role.H1 || role == Tag.Role.H2;
  }

  /** What it is a part of; the document itself where there is nothing between. */
  @Nullable Part whole() {
    return whole;
  }

  /** A tag for it below that of its whole. */
  Tag tagBelow(Tag parent) {
    Tag tag = parent.child(role);
    if (alternative != null) {
      tag.alternative(alternative);
    }
    if (language != null) {
      tag.language(language);
    }
    if (scope != null) {
      tag.scope(scope);
    }
    return tag;
  }
}
