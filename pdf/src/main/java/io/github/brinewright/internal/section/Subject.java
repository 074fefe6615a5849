package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.QuoteRecord;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.sale.SigningTerms;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceStudy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the sections about one home speak of.
 *
 * @param comparison the home with its candidates
 * @param dealer who proposes them
 * @param date of the document
 * @param service of the softener that is in the house; null where there is none
 * @param wished what the customer asked for instead of the recommended one; null for nothing
 * @param record what the quote is known by
 */
public record Subject(
    Comparison comparison,
    Dealer dealer,
    LocalDate date,
    @Nullable ServiceStudy service,
    @Nullable Candidate wished,
    QuoteRecord record) {
  /** Most candidates that a page has room for. */
  private static final int MOST_COLUMNS = 5;

  /**
   * Checks that all speak of one home.
   *
   * @throws IllegalArgumentException when the study is of another comparison
   */
  public Subject {
    if (service != null && !service.comparison().equals(comparison)) {
      throw new IllegalArgumentException(
          "the study of the present softener is of home \""
              + service.comparison().home().site().id()
              + "\" at other prices or of another home than \""
              + comparison.home().site().id()
              + "\"; study the comparison that is proposed");
    }
  }

  /** What sections speak of where nothing was asked for instead of the recommended one. */
  public Subject(
      Comparison comparison, Dealer dealer, LocalDate date, @Nullable ServiceStudy service) {
    this(comparison, dealer, date, service, null, QuoteRecord.NONE);
  }

  /** The packages to choose from. */
  Packages packages() {
    return Packages.of(comparison, service, wished);
  }

  /** Whether there is more than one package, or something to add to it, at a known price. */
  boolean offersChoices() {
    return isPriced() && (packages().all().size() > 1 || !packages().extras().isEmpty());
  }

  /** Whether there is something to recommend, and the price of all that may be chosen is known. */
  boolean isPriced() {
    return recommends() && packages().all().stream().noneMatch(SalePackage::isUnpriced);
  }

  /** Whether there is something to recommend. */
  boolean recommends() {
    return showsOptions() && comparison.recommended().isPresent();
  }

  /**
   * Whether options are shown: not of water that is soft enough, and not sized for water that is to
   * be treated first.
   */
  boolean showsOptions() {
    return comparison.verdict().permitsRecommendation();
  }

  /**
   * Whether there is something to sign for: recommended, no test is missing, and the rules of the
   * place are kept.
   */
  boolean signs() {
    return recommends()
        && comparison.verdict().permitsSignature()
        && signing().obstacle().isEmpty();
  }

  /** What the rules of the place ask of a proposal that is signed. */
  SigningTerms signing() {
    return SigningTerms.of(
        comparison.home().site().place(), dealer.homeSale(), dealer.locale(), date);
  }

  /**
   * Sees that no package asks for a higher deposit than the place allows.
   *
   * @throws IllegalArgumentException when one does
   */
  void requireDeposits() {
    for (SalePackage each : packages().all()) {
      signing().requireDeposit(each.total(), each.quote().deposit());
      comparison
          .priceList()
          .ways()
          .forEach(
              way ->
                  signing()
                      .requireDeposit(each.total(), new PaymentPlan(way, each.total()).down()));
    }
  }

  /** The softener that is in the house; empty where there is none. */
  Optional<PresentColumn> present() {
    return Optional.ofNullable(service).map(PresentColumn::new);
  }

  /** Whether the advice is to keep the softener that is in the house. */
  boolean keeps() {
    return service != null && service.advice() != Advice.REPLACE;
  }

  /** The candidates to show as columns: one less where the softener in the house has the first. */
  List<Candidate> columns() {
    return comparison.columns(service == null ? MOST_COLUMNS : MOST_COLUMNS - 1);
  }

  /**
   * The candidate to explain in full: the recommended one, or the best of those that break a limit.
   */
  Candidate explained() {
    return comparison.closest();
  }
}
