package io.github.brinewright.section;

import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Tag;
import io.github.brinewright.document.TextStyle;
import io.github.brinewright.hydraulics.Range;
import io.github.brinewright.layout.Block;
import io.github.brinewright.layout.Columns;
import io.github.brinewright.layout.Paragraph;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Finding;
import io.github.brinewright.units.Minutes;
import io.github.brinewright.units.Pressure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** The options side by side, and what sets them apart. */
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

  /** A note on each option but the recommended one, two in a row. */
  private List<Block> notes() {
    List<Block> notes =
        kit.columns().stream()
            .filter(option -> kit.comparison().recommended().filter(option::equals).isEmpty())
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
    OptionTable table =
        new OptionTable(kit)
            .row(kit.text("compare.bed"), o -> words.resin(o.resin()))
            .row(kit.text("compare.control"), o -> words.term(o.candidate().control()))
            .row(kit.text("compare.method"), o -> words.term(o.design().basis().method()))
            .row(kit.text("compare.usable"), o -> figure(Figure.of(o.design().basis().usable())))
            .row(kit.text("compare.full"), o -> words.number(o.design().schedule().designDays(), 1))
            .row(
                kit.text("compare.expected"),
                o -> words.number(o.design().schedule().expectedDays(), 1))
            .row(kit.text("compare.salt"), o -> figure(Figure.of(o.salt(), 1)))
            .row(
                kit.text("compare.refill"),
                o -> words.number(Minutes.of(o.design().refill().set()), 1))
            .row(kit.text("compare.saltYear"), o -> figure(Figure.of(o.design().year().salt(), 0)))
            .row(kit.text("compare.fillings"), this::fillings)
            .row(
                kit.text("compare.chloride"),
                o -> figure(Figure.of(o.design().year().chloride(), 0)))
            .row(kit.text("compare.waterYear"), o -> figure(Figure.of(o.design().year().water())))
            .row(kit.text("compare.service"), this::serviceFlow)
            .row(kit.text("compare.loss"), o -> loss(o.design().flow().pressureLoss()))
            .row(
                kit.text("compare.efficiency"),
                o -> figure(Figure.of(o.design().effect().saltEfficiency())))
            .row(kit.text("compare.price"), o -> words.about(o.quote().total()))
            .row(kit.text("compare.yearly"), o -> words.about(o.yearly().total()))
            .total(
                kit.text("compare.life", Figure.of(kit.explained().life().years())),
                o -> words.about(o.life().total()))
            .row(kit.text("compare.limits"), this::limits);
    return table.in(tag, kit.text("compare.row"));
  }

  private String figure(Figure figure) {
    return words.figure(figure);
  }

  private String fillings(Option option) {
    return option.design().filling().map(filling -> words.number(filling.months(), 1)).orElse("–");
  }

  private String serviceFlow(Option option) {
    return words.number(Figure.of(option.unit().serviceFlow()))
        + " / "
        + figure(Figure.of(option.unit().peakServiceFlow()));
  }

  private String loss(Range<Pressure> range) {
    return words.number(Figure.of(range.low())) + "–" + figure(Figure.of(range.high()));
  }

  private String limits(Option option) {
    long broken = option.findings().stream().filter(Finding::stops).count();
    return broken == 0
        ? kit.text("compare.keeps")
        : kit.text("compare.breaks", Figure.of((int) broken));
  }

  private Block note(Option option) {
    Tag item = tag.child(Tag.Role.PARAGRAPH);
    String text =
        kit.comparison().against(option).map(words::reason).orElseGet(() -> limitsBroken(option));
    return Block.stack(
            List.of(
                new Paragraph(item, option.unit().name(), TextStyle.SMALL.bold()),
                new Paragraph(tag.child(Tag.Role.PARAGRAPH), text, TextStyle.SMALL)))
        .whole();
  }

  private String limitsBroken(Option option) {
    return option.findings().stream()
        .filter(Finding::stops)
        .map(words::finding)
        .reduce((a, b) -> a + " " + b)
        .orElse("");
  }
}
