package io.github.brinewright.proposal;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuoteRecord;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.sizing.ControlOptions;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All documents of a job, as the command line writes them: each proposal with a study of the year,
 * in the language of the home, carrying the data by which it can be opened again. Immutable; the
 * same job, home and date give the same bytes.
 *
 * <pre>{@code
 * Job job = JobFolder.read(Path.of("job")).job().orElseThrow();
 * byte[] pdf = Proposals.of(job).write(job.homes().get(0), LocalDate.now());
 * byte[] page = Proposals.of(job).onePage().write(job.homes().get(0), LocalDate.now());
 * }</pre>
 */
public final class Proposals {
  private final Job job;
  private final boolean onePage;
  private final boolean withData;
  private final @Nullable Earlier earlier;
  private final @Nullable CandidateChoice wish;

  /** An earlier quote for the same home. */
  private record Earlier(Comparison comparison, LocalDate date, int revision) {
    Revision until(Comparison now) {
      Revision changes = Revision.between(comparison, date, now);
      return revision == 0 ? changes : changes.of(revision);
    }
  }

  private Proposals(
      Job job,
      boolean onePage,
      boolean withData,
      @Nullable Earlier earlier,
      @Nullable CandidateChoice wish) {
    this.job = job;
    this.onePage = onePage;
    this.withData = withData;
    this.earlier = earlier;
    this.wish = wish;
  }

  /**
   * {@return the documents of a job}
   *
   * @param job with the homes, the price list and the dealer
   */
  public static Proposals of(Job job) {
    return new Proposals(job, false, true, null, null);
  }

  /**
   * {@return the same kind of documents of another job, such as this one with one home alone}
   *
   * @param other job with the homes to write for
   */
  public Proposals ofJob(Job other) {
    return new Proposals(other, onePage, withData, earlier, wish);
  }

  /** {@return proposals that carry no data, and so cannot be opened again} */
  public Proposals withoutData() {
    return new Proposals(job, onePage, false, earlier, wish);
  }

  /** {@return the one-page comparison of three sizes in place of the proposal} */
  public Proposals onePage() {
    return new Proposals(job, true, withData, earlier, wish);
  }

  /**
   * {@return proposals that quote what the customer asked for beside what is recommended, and say
   * how the two differ}
   *
   * @param choice a unit of the price list and, where they are named, its dosage and control
   */
  public Proposals wishing(CandidateChoice choice) {
    return new Proposals(job, onePage, withData, earlier, choice);
  }

  /**
   * {@return revised proposals, which say what has changed}
   *
   * @param earlier proposal for the same home
   * @throws IllegalArgumentException when its data have errors, so that it gives no comparison
   */
  public Proposals since(Reopened earlier) {
    Comparison before =
        earlier
            .comparison()
            .orElseThrow(
                () -> new IllegalArgumentException("the data of the earlier proposal have errors"));
    int revision = earlier.home().orElseThrow().record().revision();
    return since(new Earlier(before, earlier.date(), revision));
  }

  /**
   * {@return revised proposals, which say what has changed}
   *
   * @param before what was proposed for the same home
   * @param date of that proposal
   */
  public Proposals since(Comparison before, LocalDate date) {
    return since(new Earlier(before, date, 0));
  }

  private Proposals since(Earlier quote) {
    return new Proposals(job, onePage, withData, quote, wish);
  }

  /**
   * {@return the document of a home as PDF}
   *
   * @param home of this job
   * @param date of the document
   * @throws IllegalArgumentException when it is to revise a proposal for another home, is to carry
   *     data and the job's files do not have the home, or what was asked for is not sold or breaks
   *     a limit
   */
  public byte[] write(QuotedHome home, LocalDate date) {
    return document(home, date).pdf();
  }

  /**
   * {@return the document of a home with its usual name and what it was made from}
   *
   * @param home of this job
   * @param date of the document
   * @throws IllegalArgumentException as {@link #write} does
   */
  public HomeDocument document(QuotedHome home, LocalDate date) {
    Comparison comparison = job.compare(home);
    return new HomeDocument(home, comparison, fileName(home), pdf(home, comparison, date));
  }

  private byte[] pdf(QuotedHome home, Comparison comparison, LocalDate date) {
    Dealer dealer = job.dealerFor(home);
    ServiceStudy service = job.service(comparison).orElse(null);
    return onePage
        ? new ComparisonPage(comparison, dealer, date, service).toPdf()
        : new Proposal(
                comparison,
                job.study(comparison).orElse(null),
                service,
                dealer,
                date,
                carried(home, date),
                revision(comparison),
                wished(comparison),
                home.record())
            .toPdf();
  }

  private @Nullable Candidate wished(Comparison comparison) {
    return wish == null ? null : wish.quotable(comparison);
  }

  private @Nullable CarriedJob carried(QuotedHome home, LocalDate date) {
    return withData ? Carrying.home(job, home, date) : null;
  }

  private @Nullable Revision revision(Comparison now) {
    if (earlier == null) {
      return null;
    }
    String before = earlier.comparison().home().site().id();
    if (!before.equals(now.home().site().id())) {
      throw new IllegalArgumentException(
          "the earlier proposal is about home \""
              + before
              + "\", not \""
              + now.home().site().id()
              + "\"");
    }
    return earlier.until(now);
  }

  /**
   * {@return the documents of all homes, in the order of the job} Each is written when the stream
   * comes to it; the stream may be made parallel.
   *
   * @param date of the documents
   */
  public Stream<HomeDocument> all(LocalDate date) {
    return job.homes().stream().map(home -> document(home, date));
  }

  /**
   * {@return the usual name of a home's document, as in {@code proposal-A1.pdf}; that of a revised
   * quote says so, as in {@code proposal-A1-r2.pdf}}
   *
   * @param home of this job
   */
  public String fileName(QuotedHome home) {
    QuoteRecord record = home.record();
    String revision = record.isRevised() ? "-r" + record.revision() : "";
    return (onePage ? "comparison-" : "proposal-") + home.site().id() + revision + ".pdf";
  }

  /**
   * The installer's settings sheet as PDF. It is in the dealer's language and not in that of the
   * home, because the installer reads it.
   *
   * @param home of this job
   * @param choice which candidate is set up
   * @param date of the sheet
   * @return empty when the home has no such candidate
   */
  public Optional<byte[]> settings(QuotedHome home, CandidateChoice choice, LocalDate date) {
    return settings(home, choice, date, ControlOptions.on(date));
  }

  /**
   * The installer's settings sheet as PDF, for another hour, day or form of the reserve than the
   * usual ones.
   *
   * @param home of this job
   * @param choice which candidate is set up
   * @param date of the sheet
   * @param options hour, day and form of the reserve
   * @return empty when the home has no such candidate
   */
  public Optional<byte[]> settings(
      QuotedHome home, CandidateChoice choice, LocalDate date, ControlOptions options) {
    Comparison comparison = job.compare(home);
    return choice
        .in(comparison)
        .map(
            candidate ->
                new SettingsSheet(comparison, candidate, job.dealer(), date, options).toPdf());
  }

  /**
   * The sheet by which the softener that is already in a home is set right, or set under a meter,
   * as PDF in the dealer's language.
   *
   * @param home of this job, whose site has a present softener
   * @param kind {@link ServiceOption.Kind#SET_RIGHT} or {@link ServiceOption.Kind#METERED}
   * @param date of the sheet
   * @param options hour, day and form of the reserve
   * @return empty when no setting of its bed serves the home
   * @throws IllegalArgumentException when there is no present softener, or the kind is another one
   */
  public Optional<byte[]> presentSettings(
      QuotedHome home, ServiceOption.Kind kind, LocalDate date, ControlOptions options) {
    ServiceStudy study = job.service(home);
    return study
        .option(PresentSettingsSheet.requireSet(kind))
        .map(option -> new PresentSettingsSheet(study, kind, job.dealer(), date, options).toPdf());
  }

  /**
   * The report on the softener that is already in a home as PDF, in the language of the home.
   *
   * @param home of this job, whose site has a present softener
   * @param date of the report
   * @return the report with its usual name, as in {@code service-A1.pdf}
   * @throws IllegalArgumentException when there is no present softener, or the report is to carry
   *     data and the job's files do not have the home
   */
  public HomeDocument serviceReport(QuotedHome home, LocalDate date) {
    ServiceStudy study = job.service(home);
    ServiceReport report = new ServiceReport(study, job.dealerFor(home), date, carried(home, date));
    String name = "service-" + home.site().id() + ".pdf";
    return new HomeDocument(home, study.comparison(), name, report.toPdf());
  }

  /**
   * {@return a blank form for a site visit as PDF, in the dealer's language, because the dealer
   * fills it} It carries the job without its homes.
   *
   * @param date of the form
   */
  public byte[] form(LocalDate date) {
    return form(Map.of(), date);
  }

  /**
   * {@return a form for a site visit that begins with what is known of a home}
   *
   * @param home of this job
   * @param date of the form
   */
  public byte[] form(QuotedHome home, LocalDate date) {
    return form(SiteCells.of(home), date);
  }

  /**
   * {@return a form for a site visit that begins with a row as it stands, not yet understood}
   *
   * @param cells of sites.csv by column, as {@code SiteCells} reads them; may have errors
   * @param date of the form
   */
  public byte[] form(Map<String, String> cells, LocalDate date) {
    return new VisitSheet(job.dealer(), job.tariffs(), cells, Carrying.noHome(job, date)).toPdf();
  }

  /**
   * {@return whether the dealer's accent is too light to read on white (contrast below 4.5 by WCAG
   * 2.1), so that documents darken it}
   */
  public boolean darkensAccent() {
    Ink accent = Ink.of(job.dealer().accent());
    return !accent.equals(accent.readable());
  }
}
