package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.home.Customer;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.internal.layout.Drawing;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.sizing.AddedIons;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The first page: what we recommend, why, and what to know before deciding. */
public final class Opening {
  private static final double SPACE = 14;

  private final Kit kit;
  private final Comparison comparison;
  private final Tag tag;

  /** The first page of a proposal. */
  public Opening(Kit kit) {
    this.kit = kit;
    comparison = kit.comparison();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The page as a block. */
  public Block block() {
    List<Block> blocks =
        new ArrayList<>(List.of(new Masthead(kit, tag).block(), title().after(28)));
    comparison
        .recommended()
        .ifPresentOrElse(candidate -> recommend(candidate, blocks), () -> nothingToSell(blocks));
    if (comparison.recommended().isPresent() || !cautions().isEmpty()) {
      blocks.add(check().after(SPACE));
    }
    return Block.stack(blocks);
  }

  private Block title() {
    Customer contact = kit.comparison().home().site().contact();
    String until = kit.words().date(kit.date().plusDays(kit.dealer().validDays()));
    Stream<String> details =
        Stream.of(
            contact.street(),
            contact.town(),
            kit.words().date(kit.date()),
            kit.text("valid", Figure.of(until)));
    return Block.stack(
        List.of(
            new Paragraph(
                tag.child(Tag.Role.H1),
                kit.text("opening.heading", Figure.of(contact.name())),
                TextStyle.HEADING.sized(27)),
            kit.details(tag, details).after(5)));
  }

  private void recommend(Candidate candidate, List<Block> blocks) {
    blocks.add(
        kit.beside(tag, kit.text("opening.recommend"), at -> recommended(candidate, at)).after(24));
    blocks.add(facts(candidate).after(20));
    blocks.add(neighbour("opening.smaller", comparison.smaller(), "opening.noSmaller").after(20));
    blocks.add(neighbour("opening.larger", comparison.larger(), "opening.noLarger").after(SPACE));
    blocks.add(
        kit.beside(tag, kit.text("opening.taste"), at -> kit.body(at, taste(candidate)))
            .after(SPACE));
  }

  private Block recommended(Candidate candidate, Tag at) {
    String setting =
        kit.text(
            "opening.setting",
            Figure.of(candidate.setup().control()),
            Figure.of(candidate.salt(), 1));
    String why = comparison.whyRecommended().map(kit.words()::reason).orElseThrow();
    return Block.stack(
        List.of(
            new Paragraph(
                at.child(Tag.Role.H3), candidate.softener().name(), TextStyle.HEADING.sized(19)),
            kit.quiet(at, setting).after(1),
            kit.body(at, why).after(7)));
  }

  private Block facts(Candidate candidate) {
    String price =
        candidate.offer().installation().isZero() ? "opening.fact.equipment" : "opening.fact.price";
    return new Columns(
        List.of(
            fact(Figure.days(candidate.design().schedule().expectedDays(), 1), "opening.fact.days"),
            fact(Figure.of(candidate.design().year().salt(), 0), "opening.fact.salt"),
            fact(Figure.of(candidate.design().year().water()), "opening.fact.drain"),
            fact(Figure.of(candidate.quote().total()), price)),
        16);
  }

  private Block fact(Figure figure, String captionKey) {
    return Block.stack(
        List.of(
            Drawing.rule(0.8, Ink.HAIRLINE),
            new Paragraph(
                    tag.child(Tag.Role.PARAGRAPH),
                    kit.words().figure(figure),
                    TextStyle.HEADING.sized(18))
                .after(6),
            kit.quiet(tag, kit.text(captionKey))));
  }

  private Block neighbour(String labelKey, Optional<Candidate> candidate, String noneKey) {
    return kit.beside(
        tag,
        kit.text(labelKey),
        at ->
            candidate
                .map(other -> described(other, at))
                .orElseGet(() -> kit.body(at, kit.text(noneKey))));
  }

  private Block described(Candidate candidate, Tag at) {
    String reason = comparison.against(candidate).map(kit.words()::reason).orElse("");
    return Block.stack(
        List.of(
            new Paragraph(
                at.child(Tag.Role.PARAGRAPH), candidate.softener().name(), TextStyle.BODY.bold()),
            kit.body(at, reason)));
  }

  private String taste(Candidate candidate) {
    AddedIons added = candidate.design().addedIons();
    return candidate.design().basis().regenerant() == Regenerant.SODIUM_CHLORIDE
        ? kit.text(
            "opening.tasteText",
            Figure.of(added.sodiumMilligramsPerGlass(), 0),
            Figure.of(added.sodium(), 0),
            Figure.of(added.sodiumMilligramsPerDay(), 0))
        : kit.text("opening.tastePotassium", Figure.of(added.potassium(), 0));
  }

  private void nothingToSell(List<Block> blocks) {
    blocks.add(
        Block.stack(
                List.of(
                    new Paragraph(
                        tag.child(Tag.Role.H2),
                        kit.text("opening.none"),
                        TextStyle.HEADING.sized(19)),
                    kit.body(
                            tag,
                            kit.text(
                                "opening.noneText",
                                Figure.of(comparison.home().dailyLoad()),
                                Figure.of(comparison.home().peakFlow())))
                        .after(8)))
            .after(34));
  }

  private List<String> cautions() {
    Stream<Finding> ofOption =
        comparison.recommended().stream().flatMap(candidate -> candidate.findings().stream());
    return Stream.concat(comparison.homeFindings().stream(), ofOption)
        .filter(finding -> finding.severity() == Severity.CAUTION)
        .map(kit.words()::finding)
        .toList();
  }

  private Block check() {
    List<String> cautions = cautions();
    return kit.beside(
        tag,
        kit.text("opening.check"),
        at ->
            cautions.isEmpty()
                ? kit.body(at, kit.text("opening.nothing"))
                : kit.list(at, cautions));
  }
}
