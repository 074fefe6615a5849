package io.github.brinewright.service;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.RunningYear;
import io.github.brinewright.quantity.Energy;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.softener.Regenerant;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * One way to go on, before its years are run.
 *
 * @param kind which one
 * @param candidate empty where it is the softener as found
 * @param bed as it runs in a draw of what is not known
 * @param price once; empty where none is stated
 * @param running what does not depend on its regenerations
 */
record Way(
    ServiceOption.Kind kind,
    Optional<Candidate> candidate,
    Function<FoundUnknowns, BedSettings> bed,
    Optional<Money> price,
    Running running) {

  /**
   * What does not depend on the regenerations.
   *
   * @param regenerant the kind of salt
   * @param electricity of the control
   * @param service what a year's service costs
   */
  record Running(Regenerant regenerant, Energy electricity, Money service) {}

  BedSettings settings() {
    return bed.apply(FoundUnknowns.MIDDLE);
  }

  /** The same under another name. */
  Way as(ServiceOption.Kind other) {
    return new Way(other, candidate, bed, price, running);
  }

  /** Whether another way is this one, maybe under another name. */
  boolean sameAs(Way other) {
    return bed == other.bed;
  }

  /** What it takes in a mean year. */
  RunningYear year(SimulatedYears years) {
    return new RunningYear(
        running.regenerant(),
        years.salt(),
        years.water(),
        running.electricity(),
        running.service());
  }
}
