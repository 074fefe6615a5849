package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Revision;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.trace.Figure;
import java.util.List;

/** What a revised quote changes. */
public final class RevisedItems {
  private final Kit kit;
  private final Revision revision;
  private final Tag tag;

  /** The section of a proposal. */
  public RevisedItems(Kit kit, Revision revision) {
    this.kit = kit;
    this.revision = revision;
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    String since = kit.words().date(revision.since());
    Block heading = kit.heading(tag, kit.text("revision.heading", Figure.of(since)));
    Block matter =
        revision.changes().isEmpty()
            ? kit.body(tag, kit.text("revision.nothing"))
            : table().whole();
    return Block.stack(List.of(heading, matter.after(8)));
  }

  private Block table() {
    List<Cell> header =
        List.of(
            kit.strong(kit.text("revision.what")),
            kit.strong(kit.text("revision.before")).right(),
            kit.strong(kit.text("revision.now")).right());
    List<List<Cell>> rows = revision.changes().stream().map(this::row).toList();
    return new Table(tag.child(Tag.Role.TABLE), List.of(0.46, 0.27, 0.27), header, rows, -1);
  }

  private List<Cell> row(Revision.Item item) {
    return List.of(
        kit.cell(kit.text("revision." + item.kind().name())).heading(),
        kit.cell(kit.words().figure(item.before())).right(),
        kit.strong(kit.words().figure(item.now())).right());
  }
}
