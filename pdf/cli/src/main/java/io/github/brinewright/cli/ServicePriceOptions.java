package io.github.brinewright.cli;

import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.DealerCells;
import io.github.brinewright.job.DealerColumns;
import io.github.brinewright.job.Job;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;

/** Options for what work on a softener that is there costs: keys of dealer.properties. */
final class ServicePriceOptions {
  private static final Map<String, String> NAMES =
      Map.of(
          "meter_retrofit_price", "--meter-price",
          "service_visit_price", "--visit-price");

  private final ColumnOptions prices = new ColumnOptions();

  /** Adds the options to a command. */
  void addTo(CommandSpec command) {
    ArgGroupSpec.Builder group =
        ColumnOptions.group("Prices of service, in place of the dealer's:%n");
    for (Column key : DealerColumns.all()) {
      String name = NAMES.get(key.name());
      if (name != null) {
        group.addArg(prices.add(name, key));
      }
    }
    command.addArgGroup(group.build());
  }

  /** Whether any of them is given. */
  boolean given() {
    return prices.given();
  }

  /** A dealer.properties with what is given, by its name; none where nothing is given. */
  Map<String, String> files() {
    return given() ? Map.of(DealerCells.FILE, DealerCells.text(prices.cells())) : Map.of();
  }

  /**
   * A job of a folder whose dealer asks what is given, in the dealer's currency.
   *
   * @throws UsageException when a price is none of that currency
   */
  Job over(Job job) {
    if (!given()) {
      return job;
    }
    Map<String, String> cells = new LinkedHashMap<>(prices.cells());
    cells.put("currency", job.dealer().currency().getCode());
    ServicePrices given =
        QuickJob.withoutHomes(Map.of(DealerCells.FILE, DealerCells.text(cells)), names())
            .dealer()
            .servicePrices();
    ServicePrices own = job.dealer().servicePrices();
    ServicePrices both =
        new ServicePrices(given.meter().or(own::meter), given.visit().or(own::visit));
    return job.change().dealer(job.dealer().change().servicePrices(both).build()).build();
  }

  /** Names of the options by key of dealer.properties. */
  Map<String, String> names() {
    return prices.names();
  }
}
