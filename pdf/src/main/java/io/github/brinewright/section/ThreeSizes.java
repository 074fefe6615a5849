package io.github.brinewright.section;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Tag;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.layout.Block;
import io.github.brinewright.layout.Paragraph;
import io.github.brinewright.sizing.Contact;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The homeowner's page: a smaller one, the recommended one, a bigger one, and what changes. */
public final class ThreeSizes {
  private final Kit kit;
  private final Wording words;
  private final Comparison comparison;
  private final Tag tag;

  /** The page of a home. */
  public ThreeSizes(Kit kit) {
    this.kit = kit;
    words = kit.words();
    comparison = kit.comparison();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The page as a block. */
  public Block block() {
    Contact contact = comparison.home().site().contact();
    List<Block> blocks = new ArrayList<>();
    blocks.add(kit.quiet(tag, kit.dealer().name()));
    blocks.add(
        new Paragraph(
                tag.child(Tag.Role.H1),
                kit.text("three.heading", Figure.of(contact.name())),
                TextStyle.HEADING.sized(23))
            .after(10));
    blocks.add(
        kit.body(
                tag,
                kit.text(
                    "three.lead",
                    Figure.of(comparison.home().site().water().hardness()),
                    Figure.of(comparison.home().use().expected()),
                    Figure.of(words.date(kit.date()))))
            .after(8));
    blocks.add(table().whole().after(18));
    options().forEach(option -> blocks.add(note(option).after(10)));
    Stream.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.SODIUM)
        .forEach(caution -> blocks.add(kit.quiet(tag, words.caution(caution)).after(6)));
    return Block.stack(blocks);
  }

  private List<Option> options() {
    return comparison.columns(3);
  }

  private Block table() {
    return new OptionTable(kit, options())
        .row(kit.text("price.total"), o -> words.about(o.quote().total()))
        .row(kit.text("compare.yearly"), o -> words.about(o.yearly().total()))
        .total(
            kit.text("compare.life", Figure.of(kit.explained().life().years())),
            o -> words.about(o.life().total()))
        .row(
            kit.text("compare.expected"),
            o -> words.number(o.design().schedule().expectedDays(), 1))
        .row(
            kit.text("compare.saltYear"), o -> words.figure(Figure.of(o.design().year().salt(), 0)))
        .row(
            kit.text("compare.fillings"),
            o -> o.design().filling().map(f -> words.number(f.months(), 1)).orElse("–"))
        .row(kit.text("compare.waterYear"), o -> words.figure(Figure.of(o.design().year().water())))
        .row(
            kit.text("compare.service"),
            o ->
                words.number(Figure.of(o.unit().serviceFlow()))
                    + " / "
                    + words.figure(Figure.of(o.unit().peakServiceFlow())))
        .row(
            kit.text("compare.limits"),
            o ->
                o.feasible()
                    ? kit.text("compare.keeps")
                    : kit.text("compare.breaks", Figure.of(o.limitsBroken())))
        .in(tag, kit.text("compare.row"));
  }

  private Block note(Option option) {
    String text =
        comparison
            .against(option)
            .or(() -> comparison.whyRecommended().filter(reason -> option.feasible()))
            .map(words::reason)
            .orElseGet(
                () ->
                    option.findings().stream().limit(1).map(words::finding).findFirst().orElse(""));
    return Block.stack(
        List.of(
            new Paragraph(tag.child(Tag.Role.H2), option.unit().name(), TextStyle.BODY.bold()),
            kit.body(tag, text)));
  }
}
