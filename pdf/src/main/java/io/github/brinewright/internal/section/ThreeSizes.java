package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.home.Customer;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The homeowner's page: a smaller one, the recommended one, a bigger one, and what changes. */
public final class ThreeSizes {
  private static final CandidateRow[] ROWS = {
    CandidateRow.PRICE,
    CandidateRow.YEARLY,
    CandidateRow.LIFE,
    CandidateRow.EXPECTED,
    CandidateRow.SALT_YEAR,
    CandidateRow.FILLINGS,
    CandidateRow.WATER_YEAR,
    CandidateRow.SERVICE,
    CandidateRow.LIMITS
  };

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
    Customer contact = comparison.home().site().contact();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Masthead(kit, tag).block());
    blocks.add(
        new Paragraph(
                tag.child(Tag.Role.H1),
                kit.text("three.heading", Figure.of(contact.name())),
                TextStyle.HEADING.sized(23))
            .after(20));
    blocks.add(
        kit.body(
                tag,
                kit.text(
                    "three.lead",
                    Figure.of(comparison.home().site().water().hardness()),
                    Figure.of(comparison.home().use().expected()),
                    Figure.of(words.date(kit.date()))))
            .after(8));
    blocks.add(table().whole().after(14));
    blocks.add(new Columns(candidates().stream().map(this::note).toList(), 20).after(16));
    blocks.add(new CostParts(kit, tag, candidates()).block().whole().after(20));
    blocks.add(cautions().after(12));
    return Block.stack(blocks);
  }

  private Block cautions() {
    List<Block> blocks = new ArrayList<>();
    Stream.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.SODIUM)
        .forEach(caution -> blocks.add(kit.quiet(tag, words.caution(caution)).after(6)));
    return Block.stack(blocks);
  }

  private List<Candidate> candidates() {
    return comparison.columns(3);
  }

  private Block table() {
    return new CandidateTable(kit, candidates()).rows(ROWS).in(tag, kit.text("compare.row"));
  }

  private Block note(Candidate candidate) {
    String text =
        comparison
            .against(candidate)
            .or(() -> comparison.whyRecommended().filter(reason -> candidate.feasible()))
            .map(words::reason)
            .orElseGet(
                () -> candidate.broken().stream().findFirst().map(words::finding).orElse(""));
    return Block.stack(
        List.of(
            new Paragraph(
                tag.child(Tag.Role.H2), candidate.softener().name(), TextStyle.BODY.bold()),
            new Paragraph(tag.child(Tag.Role.PARAGRAPH), text, TextStyle.SMALL)));
  }
}
