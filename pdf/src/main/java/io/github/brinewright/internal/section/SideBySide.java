package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The candidates side by side, and what sets them apart. */
public final class SideBySide {
  private final Kit kit;
  private final Wording words;
  private final Tag tag;

  /** The section of a proposal. */
  public SideBySide(Kit kit) {
    this.kit = kit;
    words = kit.words();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    boolean any = kit.comparison().recommended().isPresent();
    List<Block> blocks = new ArrayList<>();
    blocks.add(kit.heading(tag, kit.text("compare.heading")));
    blocks.add(
        kit.body(tag, kit.text(any ? "compare.lead" : "compare.leadNone")).after(8).keptWithNext());
    blocks.add(table().whole().after(14));
    blocks.add(kit.subheading(tag, kit.text("compare.notes")).after(20));
    notes().forEach(pair -> blocks.add(pair.after(7)));
    return Block.stack(blocks);
  }

  /** A note on each candidate but the recommended one, two in a row. */
  private List<Block> notes() {
    List<Block> notes =
        kit.columns().stream()
            .filter(candidate -> !kit.comparison().recommends(candidate))
            .map(this::note)
            .toList();
    List<Block> pairs = new ArrayList<>();
    for (int i = 0; i < notes.size(); i += 2) {
      Block right = i + 1 < notes.size() ? notes.get(i + 1) : Block.stack(List.of());
      pairs.add(new Columns(List.of(notes.get(i), right), 20));
    }
    return pairs;
  }

  private Block table() {
    return new CandidateTable(kit).rows(CandidateRow.values()).in(tag, kit.text("compare.row"));
  }

  private Block note(Candidate candidate) {
    Tag item = tag.child(Tag.Role.PARAGRAPH);
    String text =
        kit.comparison()
            .against(candidate)
            .map(words::reason)
            .orElseGet(() -> limitsBroken(candidate));
    return Block.stack(
            List.of(
                new Paragraph(item, candidate.softener().name(), TextStyle.SMALL.bold()),
                new Paragraph(tag.child(Tag.Role.PARAGRAPH), text, TextStyle.SMALL)))
        .whole();
  }

  private String limitsBroken(Candidate candidate) {
    return candidate.broken().stream().map(words::finding).collect(Collectors.joining(" "));
  }
}
