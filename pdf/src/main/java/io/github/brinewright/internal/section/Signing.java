package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cautions, and the place to sign when there is something to accept. */
public final class Signing {
  private static final double LINE_GAP = 10;

  private final Kit kit;
  private final Tag tag;

  /** The section of a proposal. */
  public Signing(Kit kit) {
    this.kit = kit;
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    List<Block> blocks = new ArrayList<>();
    boolean any = kit.comparison().recommended().isPresent();
    blocks.add(kit.heading(tag, kit.text(any ? "cautions.heading" : "cautions.alone")));
    blocks.add(cautions().after(10));
    kit.comparison()
        .recommended()
        .ifPresent(candidate -> blocks.add(acceptance(candidate).whole().after(34)));
    return Block.stack(blocks);
  }

  private Block cautions() {
    List<String> cautions =
        Caution.applying(
                kit.comparison().home(),
                kit.comparison().homeFindings(),
                kit.columns().stream()
                    .map(candidate -> candidate.softener().regenerant())
                    .collect(Collectors.toSet()))
            .stream()
            .map(kit.words()::caution)
            .toList();
    Tag list = tag.child(Tag.Role.LIST);
    int half = (cautions.size() + 1) / 2;
    return new Columns(
        List.of(
            kit.items(list, cautions.subList(0, half), TextStyle.SMALL),
            kit.items(list, cautions.subList(half, cautions.size()), TextStyle.SMALL)),
        20);
  }

  private Block acceptance(Candidate candidate) {
    Figure dealer = Figure.of(kit.dealer().name());
    String text =
        kit.text(
            "accept.text",
            dealer,
            Figure.of(candidate.softener().name()),
            Figure.of(candidate.quote().total()));
    return Block.stack(
        List.of(
            kit.subheading(tag, kit.text("accept.heading")),
            kit.body(tag, text).after(6),
            party("customer", "accept.customer", kit.text("accept.name")).after(LINE_GAP),
            party("dealer", "accept.forDealer", kit.text("accept.dealer", dealer))
                .after(LINE_GAP)));
  }

  /** A row of fields for one who signs; read aloud, each field says whose it is. */
  private Block party(String id, String who, String nameLabel) {
    String signature = kit.text("accept.signature");
    String date = kit.text("accept.date");
    String name = kit.text(who, Figure.of(kit.text("accept.name")));
    return new Columns(
        List.of(
            kit.line(tag, Field.text(id + "_name", name), nameLabel),
            kit.line(
                tag,
                Field.signature(id + "_signature", kit.text(who, Figure.of(signature))),
                signature),
            kit.line(tag, Field.text(id + "_date", kit.text(who, Figure.of(date))), date)),
        22);
  }
}
