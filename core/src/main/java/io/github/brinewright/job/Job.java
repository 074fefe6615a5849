package io.github.brinewright.job;

import io.github.brinewright.comparison.Comparer;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.year.Study;
import java.util.List;
import java.util.Optional;

/**
 * A job folder that was read.
 *
 * @param visits the homes, in the order of the file; those with errors are left out
 * @param comparer the dealer's offers, terms and limits
 * @param dealer who makes the proposals
 * @param tariffs that a home may name, in the order of the file
 * @param notes what was taken from built-in defaults, for the person at the screen
 */
public record Job(
    List<Visit> visits,
    Comparer comparer,
    Dealer dealer,
    List<Tariff> tariffs,
    List<String> notes) {
  /** Keeps its own copies of the lists. */
  public Job {
    visits = List.copyOf(visits);
    tariffs = List.copyOf(tariffs);
    notes = List.copyOf(notes);
  }

  /** Compares the options of one home. */
  public Comparison compare(Visit visit) {
    return comparer.compare(visit.site(), visit.tariff());
  }

  /** The dealer, writing in the language of a home. */
  public Dealer dealerFor(Visit visit) {
    return visit.language().map(dealer::writing).orElse(dealer);
  }

  /** Studies a year in the home with its recommended option; empty when there is none. */
  public Optional<Study> study(Comparison comparison) {
    return Study.of(comparer, comparison, Study.USUAL_YEARS);
  }

  /** The home of an id. */
  public Optional<Visit> visit(String siteId) {
    return visits.stream().filter(visit -> visit.site().id().equals(siteId)).findFirst();
  }
}
