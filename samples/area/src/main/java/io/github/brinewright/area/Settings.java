package io.github.brinewright.area;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.service.PresentBed;
import io.github.brinewright.simulation.DemandModel;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.softener.Control;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The settings of the present softener of one home: as found, and what the rules would set. */
final class Settings {
  private final HomeLoad home;
  private final FoundSoftener found;
  private final PresentBed bed;
  private final HardWaterForecast forecast;
  private final Money nothing;
  private final List<Candidate> right;

  /**
   * Works out every setting under the control that there is.
   *
   * @param prices whose terms, limits and margins hold
   */
  Settings(HomeLoad home, PresentSoftener present, Tariff tariff, PriceList prices) {
    this.home = home;
    found = FoundSoftener.of(present, home);
    bed = new PresentBed(found, home, tariff, prices);
    forecast = HardWaterForecast.of(DemandModel.of(home));
    nothing = Money.zero(prices.currency());
    right =
        bed.all(found.control(), nothing, nothing).stream().filter(Candidate::feasible).toList();
  }

  HomeLoad home() {
    return home;
  }

  Hardness hardness() {
    return home.compensatedHardness();
  }

  boolean clock() {
    return found.control().timed();
  }

  Setting asFound() {
    return new Setting(forecast, found::settings, 1);
  }

  /** Empty where no setting of the bed serves the home. */
  Optional<Setting> right() {
    return right.stream().findFirst().map(this::setting);
  }

  /** Empty where the bed serves the home neither with a meter nor without. */
  Optional<Setting> metered() {
    return bed.under(Control.METERED_AT_NIGHT, nothing, nothing).map(this::setting);
  }

  /** The setting of least salt that breaks no more margins than the right one. */
  Optional<Setting> lean() {
    return right.stream()
        .filter(one -> one.marginsBroken().size() <= right.get(0).marginsBroken().size())
        .min(Comparator.comparingDouble(Settings::saltPounds))
        .map(this::setting);
  }

  private static double saltPounds(Candidate candidate) {
    return candidate.design().year().orElseThrow().salt().pounds();
  }

  private Setting setting(Candidate candidate) {
    return new Setting(forecast, unknown -> bed.aged(candidate, unknown), 1);
  }
}
