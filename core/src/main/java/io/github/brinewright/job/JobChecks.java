package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/** What must agree between the parts of a job. */
final class JobChecks {
  private JobChecks() {}

  /**
   * @throws IllegalArgumentException when two homes or two tariffs have one id, or prices are in
   *     another currency than the dealer's
   */
  static void check(Job job) {
    unique("homes", job.homes().stream().map(home -> home.site().id().toLowerCase(Locale.ROOT)));
    unique("tariffs", job.tariffs().stream().map(Tariff::id));
    CurrencyUnit currency = job.dealer().currency();
    for (Offer offer : job.prices().offers()) {
      same(offer.softener().id(), offer.equipment().getCurrencyUnit(), currency);
    }
    Stream.concat(job.tariffs().stream(), job.homes().stream().map(QuotedHome::tariff))
        .forEach(tariff -> same(tariff.id(), tariff.currency(), currency));
  }

  private static void unique(String what, Stream<String> ids) {
    Set<String> seen = new HashSet<>();
    ids.filter(id -> !seen.add(id))
        .findFirst()
        .ifPresent(
            id -> {
              throw new IllegalArgumentException("two " + what + " have the id \"" + id + "\"");
            });
  }

  private static void same(String id, CurrencyUnit used, CurrencyUnit dealers) {
    if (!used.equals(dealers)) {
      throw new IllegalArgumentException(
          "prices of \"" + id + "\" are in " + used + ", but those of the dealer in " + dealers);
    }
  }
}
