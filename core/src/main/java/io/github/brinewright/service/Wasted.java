package io.github.brinewright.service;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.service.ServiceOption.Kind;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The salt of a year that the right setting takes less, and its two parts: regenerations too many,
 * and salt too much in each of those that are left. So two faults never name the same salt. Source:
 * differences of products of regenerations and salt.
 */
final class Wasted {
  private static final Mass NOTHING = Mass.ofPounds(0);

  private final ServiceOption found;
  private final Optional<ServiceOption> right;

  Wasted(Map<Kind, ServiceOption> options) {
    found = options.get(Kind.AS_FOUND);
    right = Optional.ofNullable(options.get(Kind.SET_RIGHT));
  }

  /** All of it; nothing where no setting serves the home, or the right one takes as much. */
  Mass all() {
    return part(each -> found.salt().minus(each.salt()));
  }

  /** Regenerations too many × salt of each as found. */
  Mass byInterval() {
    return part(each ->
            found.saltPerRegeneration().times(number(found)).minus(saltAtEqualEach(each)))
        .min(all());
  }

  /** Regenerations of the right setting × salt too much in each. */
  Mass bySalt() {
    return part(each -> saltAtEqualEach(each).minus(each.salt())).min(all());
  }

  /** The salt of a year at the right interval, with the salt of each regeneration as found. */
  private Mass saltAtEqualEach(ServiceOption each) {
    return found.saltPerRegeneration().times(number(each));
  }

  private static double number(ServiceOption option) {
    return option.years().regenerations().mean();
  }

  private Mass part(Function<ServiceOption, Mass> of) {
    return right.map(of).orElse(NOTHING).max(NOTHING);
  }
}
