package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.layout.Pages;
import io.github.brinewright.internal.section.DealerHead;
import io.github.brinewright.internal.section.ProposalSections;
import io.github.brinewright.internal.section.QuoteHead;
import io.github.brinewright.internal.section.Subject;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.QuoteRecord;
import io.github.brinewright.model.Document;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Section;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A proposal for one home as PDF. The same comparison, dealer and date give the same bytes. {@link
 * Proposals} writes it of a job, with all that belongs to it.
 *
 * @param comparison what to propose
 * @param study of a year in the home; without one its section is left out
 * @param service study of the softener that is already in the house, which is set beside the new
 *     ones; null where there is none
 * @param dealer who proposes it
 * @param date of the proposal
 * @param carried the job that the file carries, so that it can be opened again; null for none
 * @param revision what it changes against an earlier proposal; null for a first one
 * @param record what the quote is known by
 * @param sections what it says, in the order in which it is read
 */
public record Proposal(
    Comparison comparison,
    @Nullable HomeStudy study,
    @Nullable ServiceStudy service,
    Dealer dealer,
    LocalDate date,
    @Nullable CarriedJob carried,
    @Nullable Revision revision,
    QuoteRecord record,
    List<Section> sections) {
  /**
   * Keeps its own copy of {@code sections}.
   *
   * @param comparison what to propose
   * @param study of a year in the home; without one its section is left out
   * @param service study of the softener that is already in the house, which is set beside the new
   *     ones; null where there is none
   * @param dealer who proposes it
   * @param date of the proposal
   * @param carried the job that the file carries, so that it can be opened again; null for none
   * @param revision what it changes against an earlier proposal; null for a first one
   * @param record what the quote is known by
   * @param sections what it says, in the order in which it is read
   */
  public Proposal {
    sections = List.copyOf(sections);
  }

  /**
   * A proposal with all sections that apply.
   *
   * @param comparison what to propose
   * @param study of a year in the home; without one its section is left out
   * @param service study of the softener that is already in the house, which is set beside the new
   *     ones; null where there is none
   * @param dealer who proposes it
   * @param date of the proposal
   * @param carried the job that the file carries, so that it can be opened again; null for none
   * @param revision what it changes against an earlier proposal; null for a first one
   * @throws IllegalArgumentException when the study of the softener is of another comparison
   */
  public Proposal(
      Comparison comparison,
      @Nullable HomeStudy study,
      @Nullable ServiceStudy service,
      Dealer dealer,
      LocalDate date,
      @Nullable CarriedJob carried,
      @Nullable Revision revision) {
    this(comparison, study, service, dealer, date, carried, revision, null, QuoteRecord.NONE);
  }

  /**
   * A proposal that quotes what the customer asked for beside what is recommended.
   *
   * @param comparison what to propose
   * @param study of a year in the home; without one its section is left out
   * @param service study of the softener that is already in the house; null where there is none
   * @param dealer who proposes it
   * @param date of the proposal
   * @param carried the job that the file carries, so that it can be opened again; null for none
   * @param revision what it changes against an earlier proposal; null for a first one
   * @param wished a candidate of the comparison that keeps every limit; null where nothing was
   *     asked for
   * @param record what the quote is known by
   * @throws IllegalArgumentException when the study of the softener is of another comparison
   */
  public Proposal(
      Comparison comparison,
      @Nullable HomeStudy study,
      @Nullable ServiceStudy service,
      Dealer dealer,
      LocalDate date,
      @Nullable CarriedJob carried,
      @Nullable Revision revision,
      @Nullable Candidate wished,
      QuoteRecord record) {
    this(
        comparison,
        study,
        service,
        dealer,
        date,
        carried,
        revision,
        record,
        ProposalSections.of(
            new Subject(comparison, dealer, date, service, wished, record), study, revision));
  }

  /**
   * A proposal for a home without a softener, with all sections that apply.
   *
   * @param comparison what to propose
   * @param study of a year in the home; without one its section is left out
   * @param dealer who proposes it
   * @param date of the proposal
   * @param carried the job that the file carries, so that it can be opened again; null for none
   * @param revision what it changes against an earlier proposal; null for a first one
   */
  public Proposal(
      Comparison comparison,
      @Nullable HomeStudy study,
      Dealer dealer,
      LocalDate date,
      @Nullable CarriedJob carried,
      @Nullable Revision revision) {
    this(comparison, study, null, dealer, date, carried, revision);
  }

  /**
   * A proposal without a study of the year.
   *
   * @param comparison what to propose
   * @param dealer who proposes it
   * @param date of the proposal
   */
  public Proposal(Comparison comparison, Dealer dealer, LocalDate date) {
    this(comparison, null, dealer, date, null, null);
  }

  /**
   * A proposal that carries no data of its own.
   *
   * @param comparison what to propose
   * @param study of a year in the home; without one its section is left out
   * @param dealer who proposes it
   * @param date of the proposal
   */
  public Proposal(Comparison comparison, @Nullable HomeStudy study, Dealer dealer, LocalDate date) {
    this(comparison, study, dealer, date, null, null);
  }

  /**
   * {@return the same with other sections: some added, left out, or in another order} Keys of its
   * own sections are {@code verdict}, {@code opening}, {@code revision}, {@code choices}, {@code
   * year}, {@code price} and {@code signing}; {@code page.1} to {@code page.3}; in the appendix
   * {@code water}, {@code compare}, {@code changes}, {@code grid}, {@code cost}, {@code worked} and
   * {@code every}.
   *
   * <pre>{@code
   * byte[] pdf =
   *     proposal
   *         .withSections(
   *             all -> {
   *               List<Section> mine = new ArrayList<>(all);
   *               mine.removeIf(section -> section.key().equals("worked"));
   *               mine.add(1, Section.of("own.service", Phrase.plain("Service"),
   *                   Paragraph.of(Phrase.plain("We come by every second Tuesday."))));
   *               return mine;
   *             })
   *         .toPdf();
   * }</pre>
   *
   * @param change from the sections there are to those wanted
   */
  public Proposal withSections(UnaryOperator<List<Section>> change) {
    return new Proposal(
        comparison,
        study,
        service,
        dealer,
        date,
        carried,
        revision,
        record,
        change.apply(sections));
  }

  /** {@return what the proposal says, in no language yet} */
  public Document model() {
    Phrase name = Phrase.plain(comparison.home().site().contact().printedName());
    return new Document(
        Document.Kind.PROPOSAL,
        Phrase.text("title", name),
        DealerHead.of(dealer),
        Phrase.text("opening.heading", name),
        QuoteHead.of(comparison.home().site().contact(), record, date, dealer.validDays()),
        sections);
  }

  /**
   * {@return the PDF file}
   *
   * @throws IllegalArgumentException when two sections have the same key
   */
  public byte[] toPdf() {
    return toPdf(PdfPages.words(dealer));
  }

  /**
   * {@return the PDF file in other words than the library's own}
   *
   * @param words of {@link DocumentTexts#words}
   * @throws IllegalArgumentException when two sections have the same key
   */
  public byte[] toPdf(Wording words) {
    return new Pages(dealer, words, date)
        .write(
            model(), carried == null ? null : PdfPages.attachment(carried, words.text("carried")));
  }
}
