package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margin;
import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.service.ServiceOption.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What comes of a study. Keeping the bed is the rule; a meter or a new unit is advised where it
 * costs less over the years compared by more than what is level, and a new unit also where no
 * setting of the bed serves the home, or every setting lets more hard water pass than the dealer's
 * margin allows while the new unit does not.
 */
final class AdviceRule {
  private final Map<Kind, ServiceOption> options;
  private final List<Fault> faults;

  AdviceRule(Map<Kind, ServiceOption> options, List<Fault> faults) {
    this.options = options;
    this.faults = faults;
  }

  Advice advice() {
    Optional<Candidate> right = candidate(Kind.SET_RIGHT);
    Optional<Candidate> metered = candidate(Kind.METERED).filter(one -> meterIsNew());
    Optional<Candidate> replaced = candidate(Kind.REPLACED);
    if (right.isEmpty()) {
      return replaced.isPresent() || metered.isEmpty() ? Advice.REPLACE : Advice.ADD_METER;
    }
    if (replaced.filter(unit -> serves(unit, right.get(), metered)).isPresent()) {
      return Advice.REPLACE;
    }
    if (metered.filter(one -> better(one, right.get())).isPresent()) {
      return Advice.ADD_METER;
    }
    return faults.isEmpty() ? Advice.LEAVE : Advice.SET_RIGHT;
  }

  private boolean meterIsNew() {
    return options.get(Kind.METERED).payback().isPresent()
        && !options.get(Kind.AS_FOUND).bed().control().metered();
  }

  private Optional<Candidate> candidate(Kind kind) {
    return Optional.ofNullable(options.get(kind)).flatMap(ServiceOption::candidate);
  }

  private static boolean serves(Candidate unit, Candidate right, Optional<Candidate> metered) {
    boolean noneSoft = letsHardWater(right) && metered.filter(one -> !letsHardWater(one)).isEmpty();
    boolean cheapest = cheaper(unit, right) && metered.filter(one -> !cheaper(unit, one)).isEmpty();
    return (noneSoft && !letsHardWater(unit)) || cheapest;
  }

  private static boolean better(Candidate metered, Candidate right) {
    return (letsHardWater(right) && !letsHardWater(metered))
        || (letsHardWater(right) == letsHardWater(metered) && cheaper(metered, right));
  }

  private static boolean letsHardWater(Candidate candidate) {
    return candidate.margin(Margin.HARD_WATER_MEAN).filter(MarginCheck::broken).isPresent();
  }

  private static boolean cheaper(Candidate one, Candidate other) {
    Money level = other.life().total();
    double ratio = one.life().total().getAmount().doubleValue() / level.getAmount().doubleValue();
    return ratio * Comparison.LEVEL < 1;
  }
}
