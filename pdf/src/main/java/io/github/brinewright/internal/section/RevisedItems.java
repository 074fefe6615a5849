package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Revision;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import java.util.List;

/** What a revised quote changes. */
public final class RevisedItems {
  private final Revision revision;

  /** The section of a proposal. */
  public RevisedItems(Revision revision) {
    this.revision = revision;
  }

  /** The section. */
  public Section section() {
    Element matter =
        revision.changes().isEmpty() ? Paragraph.of(Phrase.text("revision.nothing")) : table();
    return Section.of("revision", heading(), matter);
  }

  private Phrase heading() {
    Phrase since = new Phrase.Day(revision.since());
    return revision.number().isPresent()
        ? Phrase.text(
            "revision.headingOf", Phrase.plain(String.valueOf(revision.number().getAsInt())), since)
        : Phrase.text("revision.heading", since);
  }

  private Table table() {
    List<Table.Column> columns =
        List.of(
            new Table.Column("revision.before", Phrase.text("revision.before"), Table.Kind.VALUES),
            new Table.Column("revision.now", Phrase.text("revision.now"), Table.Kind.MAIN));
    List<Table.Line> lines = revision.changes().stream().map(RevisedItems::line).toList();
    return new Table("revision", Phrase.text("revision.what"), columns, lines);
  }

  private static Table.Line line(Revision.Item item) {
    return Table.Line.of(
        "revision." + item.kind().name(), List.of(Phrase.of(item.before()), Phrase.of(item.now())));
  }
}
