package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.service.ServiceOption.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What comes of a study. Keeping the bed is the rule. A meter or a new unit is advised where it
 * costs clearly less over the years compared, its price included, and has come back within them;
 * and where it keeps the dealer's margin for hard water, which the present bed, set right and for a
 * new unit also under a meter, does not. A meter without a price is not advised, and one that is
 * there already costs what setting it right costs. Where no setting of the bed serves the home,
 * nothing but these is left.
 */
final class AdviceRule {
  private final Map<Kind, ServiceOption> options;
  private final List<Fault> faults;
  private final int years;

  /**
   * @param years compared
   */
  AdviceRule(Map<Kind, ServiceOption> options, List<Fault> faults, int years) {
    this.options = options;
    this.faults = faults;
    this.years = years;
  }

  Advice advice() {
    Optional<ServiceOption> right = option(Kind.SET_RIGHT);
    Optional<ServiceOption> meter = option(Kind.METERED).filter(one -> one.price().isPresent());
    Optional<ServiceOption> unit = option(Kind.REPLACED);
    if (right.isEmpty()) {
      return meter.isPresent() && unit.isEmpty() ? Advice.ADD_METER : Advice.REPLACE;
    }
    boolean meterBetter = meter.filter(one -> better(one, right.get())).isPresent();
    ServiceOption kept = meterBetter ? meter.get() : right.get();
    if (unit.filter(one -> better(one, kept) && better(one, right.get())).isPresent()) {
      return Advice.REPLACE;
    } else if (meterBetter) {
      return Advice.ADD_METER;
    }
    return faults.isEmpty() ? Advice.LEAVE : Advice.SET_RIGHT;
  }

  private Optional<ServiceOption> option(Kind kind) {
    return Optional.ofNullable(options.get(kind));
  }

  private boolean better(ServiceOption dearer, ServiceOption kept) {
    boolean hardNow = letsHardWater(kept);
    boolean hardThen = letsHardWater(dearer);
    return hardNow == hardThen ? pays(dearer, kept) : hardNow;
  }

  private static boolean letsHardWater(ServiceOption option) {
    return setUp(option).margin(Margin.HARD_WATER_MEAN).filter(MarginCheck::broken).isPresent();
  }

  private boolean pays(ServiceOption dearer, ServiceOption kept) {
    double ratio = overYears(dearer) / overYears(kept);
    return ratio * Comparison.LEVEL < 1
        && dearer.payback().filter(back -> back.within(years)).isPresent();
  }

  private static double overYears(ServiceOption option) {
    return setUp(option).life().total().getAmount().doubleValue();
  }

  private static Candidate setUp(ServiceOption option) {
    return option.candidate().orElseThrow();
  }
}
