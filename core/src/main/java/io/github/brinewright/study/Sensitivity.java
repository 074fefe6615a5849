package io.github.brinewright.study;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Reason;
import io.github.brinewright.home.Site;
import io.github.brinewright.softener.Softener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What would be recommended after one change; made by a {@link HomeStudy}. Immutable; equal when
 * its parts are.
 */
public final class Sensitivity {
  private final Values values;

  private Sensitivity(Values values) {
    this.values = values;
  }

  /** Tries each change on a comparison that recommends something. */
  static List<Sensitivity> of(Comparison comparison, Candidate chosen) {
    List<Sensitivity> all = new ArrayList<>();
    for (WhatIf change : WhatIf.values()) {
      change
          .site(comparison.home().site())
          .map(site -> after(change, site, comparison, chosen))
          .ifPresent(all::add);
    }
    return all;
  }

  private static Sensitivity after(
      WhatIf change, Site site, Comparison comparison, Candidate chosen) {
    Comparison after = comparison.priceList().compare(site, change.tariff(comparison.tariff()));
    Softener then = after.recommended().map(Candidate::softener).orElse(null);
    boolean same = then != null && then.id().equals(chosen.softener().id());
    Reason flips = same ? null : twin(after, chosen).flatMap(after::against).orElse(null);
    return new Sensitivity(new Values(change, then, same, flips));
  }

  /** The setting that is recommended now, after the change. */
  private static Optional<Candidate> twin(Comparison after, Candidate chosen) {
    return after.candidates().stream()
        .filter(one -> one.softener().equals(chosen.softener()))
        .filter(one -> one.setup().control() == chosen.setup().control())
        .filter(one -> one.salt().equals(chosen.salt()))
        .findFirst();
  }

  /** {@return what turned out otherwise} */
  public WhatIf change() {
    return values.change;
  }

  /** {@return the name of the unit then; empty when none would keep every limit} */
  public Optional<String> recommended() {
    return softener().map(Softener::name);
  }

  /** {@return the unit then; empty when none would keep every limit} */
  public Optional<Softener> softener() {
    return Optional.ofNullable(values.softener);
  }

  /** {@return whether it is the unit recommended now} */
  public boolean holds() {
    return values.holds;
  }

  /**
   * {@return what flips the choice: the limit, the margin or the cost by which the unit recommended
   * now falls behind after the change} Empty when the choice holds or nothing is recommended then.
   */
  public Optional<Reason> flips() {
    return Optional.ofNullable(values.flips);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sensitivity sensitivity && values.equals(sensitivity.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return change()
        + (holds() ? " holds" : " becomes " + recommended().orElse("nothing that serves"));
  }

  private record Values(
      WhatIf change, @Nullable Softener softener, boolean holds, @Nullable Reason flips) {}
}
