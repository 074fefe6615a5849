package io.github.brinewright.job;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.study.HomeStudy;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job folder that was read.
 *
 * @param visits the homes, in the order of the file; those with errors are left out
 * @param comparer the dealer's offers, terms and limits
 * @param dealer who makes the proposals
 * @param tariffs that a home may name, in the order of the file
 * @param notes what was taken from built-in defaults, for the person at the screen
 * @param files that it was read from, for documents to carry; none for a job made otherwise
 */
public record Job(
    List<QuotedHome> visits,
    PriceList comparer,
    Dealer dealer,
    List<Tariff> tariffs,
    List<String> notes,
    JobFiles files) {
  /** Keeps its own copies of the lists. */
  public Job {
    visits = List.copyOf(visits);
    tariffs = List.copyOf(tariffs);
    notes = List.copyOf(notes);
  }

  /** A job that was not read from files. */
  public Job(
      List<QuotedHome> visits,
      PriceList comparer,
      Dealer dealer,
      List<Tariff> tariffs,
      List<String> notes) {
    this(visits, comparer, dealer, tariffs, notes, JobFiles.of(Map.of()));
  }

  /** Compares the candidates of one home. */
  public Comparison compare(QuotedHome visit) {
    return comparer.compare(visit.site(), visit.tariff());
  }

  /** The dealer, writing in the language of a home. */
  public Dealer dealerFor(QuotedHome visit) {
    return visit.language().map(dealer::writing).orElse(dealer);
  }

  /** Studies a year in the home with its recommended candidate; empty when there is none. */
  public Optional<HomeStudy> study(Comparison comparison) {
    return HomeStudy.of(comparison, HomeStudy.USUAL_YEARS);
  }

  /** The home of an id. */
  public Optional<QuotedHome> visit(String siteId) {
    return visits.stream().filter(visit -> visit.site().id().equals(siteId)).findFirst();
  }
}
