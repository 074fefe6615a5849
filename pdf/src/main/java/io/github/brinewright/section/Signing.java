package io.github.brinewright.section;

import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Ink;
import io.github.brinewright.document.Tag;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.layout.Block;
import io.github.brinewright.layout.Columns;
import io.github.brinewright.layout.Drawing;
import io.github.brinewright.layout.Paragraph;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cautions, and the place to sign when there is something to accept. */
public final class Signing {
  private static final double LINE_ROOM = 34;

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
        .ifPresent(option -> blocks.add(acceptance(option).whole().after(34)));
    return Block.stack(blocks);
  }

  private Block cautions() {
    List<String> cautions =
        Caution.applying(
                kit.comparison().home(),
                kit.comparison().homeFindings(),
                kit.columns().stream()
                    .map(option -> option.unit().regenerant())
                    .collect(Collectors.toSet()))
            .stream()
            .map(kit.words()::caution)
            .toList();
    Tag list = tag.child(Tag.Role.LIST);
    int half = (cautions.size() + 1) / 2;
    Columns columns =
        new Columns(
            List.of(
                items(list, cautions.subList(0, half)),
                items(list, cautions.subList(half, cautions.size()))),
            20);
    return columns;
  }

  private static Block items(Tag list, List<String> cautions) {
    return Block.stack(
        cautions.stream()
            .map(
                caution ->
                    new Paragraph(
                            list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY),
                            caution,
                            TextStyle.SMALL)
                        .after(4))
            .toList());
  }

  private Block acceptance(Option option) {
    String text =
        kit.text(
            "accept.text",
            Figure.of(kit.dealer().name()),
            Figure.of(option.unit().name()),
            Figure.of(option.quote().total()));
    return Block.stack(
        List.of(
            kit.subheading(tag, kit.text("accept.heading")),
            kit.body(tag, text).after(6),
            new Columns(
                    List.of(
                        signing(kit.text("accept.name")),
                        signing(kit.text("accept.signature")),
                        signing(kit.text("accept.date"))),
                    22)
                .after(LINE_ROOM),
            new Columns(
                    List.of(
                        signing(kit.text("accept.dealer", Figure.of(kit.dealer().name()))),
                        signing(kit.text("accept.signature")),
                        signing(kit.text("accept.date"))),
                    22)
                .after(LINE_ROOM)));
  }

  private Block signing(String label) {
    return Block.stack(List.of(Drawing.rule(0.8, Ink.TEXT), kit.quiet(tag, label).after(3)));
  }
}
