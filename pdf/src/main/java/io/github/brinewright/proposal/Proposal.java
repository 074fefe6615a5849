package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.section.Costs;
import io.github.brinewright.internal.section.Kit;
import io.github.brinewright.internal.section.Opening;
import io.github.brinewright.internal.section.Price;
import io.github.brinewright.internal.section.RevisedItems;
import io.github.brinewright.internal.section.SideBySide;
import io.github.brinewright.internal.section.Signing;
import io.github.brinewright.internal.section.WaterAndHome;
import io.github.brinewright.internal.section.WorkedOut;
import io.github.brinewright.internal.section.YearInHome;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A proposal for one home as PDF. The same comparison, dealer and date give the same bytes. {@link
 * Proposals} writes it of a job, with all that belongs to it.
 *
 * @param comparison what to propose
 * @param study of a year in the home; without one its section is left out
 * @param dealer who proposes it
 * @param date of the proposal
 * @param carried the job that the file carries, so that it can be opened again; null for none
 * @param revision what it changes against an earlier proposal; null for a first one
 */
public record Proposal(
    Comparison comparison,
    @Nullable HomeStudy study,
    Dealer dealer,
    LocalDate date,
    @Nullable CarriedJob carried,
    @Nullable Revision revision) {
  private static final double SECTION_GAP = 32;

  /** A proposal without a study of the year. */
  public Proposal(Comparison comparison, Dealer dealer, LocalDate date) {
    this(comparison, null, dealer, date);
  }

  /** A proposal that carries no data of its own. */
  public Proposal(Comparison comparison, @Nullable HomeStudy study, Dealer dealer, LocalDate date) {
    this(comparison, study, dealer, date, null, null);
  }

  /** The PDF file. */
  public byte[] toPdf() {
    Wording words = PdfPages.words(dealer);
    Kit kit = new Kit(comparison, Optional.ofNullable(study), dealer, words, date);
    String title = words.text("title", Figure.of(comparison.home().site().contact().name()));
    return new PdfPages(kit, title)
        .write(
            parts(kit),
            carried == null ? null : PdfPages.attachment(carried, words.text("carried")));
  }

  private List<Block> parts(Kit kit) {
    List<Block> parts = new ArrayList<>();
    boolean any = kit.comparison().recommended().isPresent();
    parts.add(new Opening(kit).block());
    if (revision != null) {
      parts.add(new RevisedItems(kit, revision).block());
    }
    parts.add(new WaterAndHome(kit).block());
    parts.add(new SideBySide(kit).block());
    if (any) {
      parts.add(new Costs(kit).block());
      parts.add(new Price(kit).block());
    }
    kit.study().ifPresent(year -> parts.add(new YearInHome(kit, year).block()));
    Block signing = new Signing(kit).block();
    Block workedOut = new WorkedOut(kit).block();
    if (any) {
      return List.of(spaced(parts), signing, workedOut);
    }
    parts.add(signing);
    return List.of(spaced(parts), workedOut);
  }

  /** Sections below one another; the room above the first is the page's own. */
  private static Block spaced(List<Block> sections) {
    return Block.stack(sections.stream().map(section -> section.after(SECTION_GAP)).toList());
  }
}
