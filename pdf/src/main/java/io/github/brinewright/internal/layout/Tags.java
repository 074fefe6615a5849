package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Tag;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The tags of one document, opened in the order in which its parts come onto the pages: so it is
 * read in the order of its pages.
 */
final class Tags {
  private final Tag root = new Tag(Tag.Role.DOCUMENT);
  private final Map<Part, Tag> opened = new IdentityHashMap<>();

  /** The tag of the document itself. */
  Tag root() {
    return root;
  }

  /** The tag of a part, opened now unless a piece of the part stands on a page already. */
  Tag of(Part part) {
    Tag known = opened.get(part);
    if (known != null) {
      return known;
    }
    Part whole = part.whole();
    Tag tag = part.tagBelow(whole == null ? root : of(whole));
    opened.put(part, tag);
    return tag;
  }
}
