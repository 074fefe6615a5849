package io.github.brinewright.internal.document;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.jspecify.annotations.Nullable;

/**
 * A node of the document's logical structure. Parts of it may lie on several pages; what is drawn
 * within {@link Canvas#tagged} belongs to it.
 */
public final class Tag {
  /** Standard structure types of PDF. */
  public enum Role {
    DOCUMENT("Document"),
    SECTION("Sect"),
    DIVISION("Div"),
    H1("H1"),
    H2("H2"),
    H3("H3"),
    PARAGRAPH("P"),
    LIST("L"),
    LIST_ITEM("LI"),
    LIST_BODY("LBody"),
    TABLE("Table"),
    ROW("TR"),
    HEADER_CELL("TH"),
    DATA_CELL("TD"),
    FIGURE("Figure"),
    FORM("Form");

    private final String type;

    Role(String type) {
      this.type = type;
    }

    String type() {
      return type;
    }
  }

  /** Which cells a header cell heads. */
  public enum Scope {
    COLUMN("Column"),
    ROW("Row");

    private final String value;

    Scope(String value) {
      this.value = value;
    }

    String value() {
      return value;
    }
  }

  /** A run of marked content. */
  record Run(int page, int id) {}

  /** A field on a page. */
  record Widget(int page, PDAnnotationWidget annotation) {}

  private final Role role;
  private final List<Object> kids = new ArrayList<>();
  private @Nullable String alternative;
  private @Nullable Scope scope;
  private @Nullable String language;

  /** A node with nothing in it. */
  public Tag(Role role) {
    this.role = role;
  }

  /** Adds a new child. */
  public Tag child(Role of) {
    Tag child = new Tag(of);
    kids.add(child);
    return child;
  }

  /** Text that stands for a figure when the document is read aloud. */
  public Tag alternative(String text) {
    alternative = text;
    return this;
  }

  /** Language of its text where it is not that of the document. */
  public Tag language(String tag) {
    language = tag;
    return this;
  }

  /** What a header cell heads. */
  public Tag scope(Scope of) {
    scope = of;
    return this;
  }

  void add(Run run) {
    kids.add(run);
  }

  void add(Widget widget) {
    kids.add(widget);
  }

  /** Whether a reader would look for it among the bookmarks. */
  public boolean bookmarked() {
    return role == Role.H1 || role == Role.H2;
  }

  Role role() {
    return role;
  }

  /** Children, runs and fields in their order. */
  public List<Object> kids() {
    return kids;
  }

  @Nullable String alternative() {
    return alternative;
  }

  @Nullable String language() {
    return language;
  }

  @Nullable Scope scope() {
    return scope;
  }
}
