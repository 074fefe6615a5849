package io.github.brinewright.service;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.Spread;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

/** Whatever a visit finds, or does not: figures make sense, and faults do not contradict. */
class AnySoftenerTest {
  private static final double ROUND_OFF = 1e-6;

  private static final Set<FaultKind> STARTS_LATE =
      EnumSet.of(
          FaultKind.RATING_AS_CAPACITY,
          FaultKind.HARDNESS_WITHOUT_IRON,
          FaultKind.HARDNESS_SET_TOO_LOW,
          FaultKind.INTERVAL_TOO_LONG,
          FaultKind.VOLUME_TOO_LARGE,
          FaultKind.REFILL_TOO_SMALL);

  private static final Set<FaultKind> STARTS_EARLY =
      EnumSet.of(
          FaultKind.HARDNESS_SET_TOO_HIGH, FaultKind.RESERVE_TWICE, FaultKind.INTERVAL_TOO_SHORT);

  private static final List<Set<FaultKind>> OPPOSITES =
      List.of(
          EnumSet.of(FaultKind.REFILL_TOO_SMALL, FaultKind.REFILL_TOO_LARGE),
          EnumSet.of(FaultKind.DOSAGE_TOO_LEAN, FaultKind.DOSAGE_TOO_RICH),
          EnumSet.of(FaultKind.DOSAGE_TOO_LEAN, FaultKind.REFILL_TOO_LARGE),
          EnumSet.of(FaultKind.REFILL_TOO_LARGE, FaultKind.DOSAGE_TOO_RICH),
          EnumSet.of(FaultKind.RATING_AS_CAPACITY, FaultKind.REFILL_TOO_LARGE),
          EnumSet.of(FaultKind.RATING_AS_CAPACITY, FaultKind.DOSAGE_TOO_RICH),
          EnumSet.of(FaultKind.RATING_AS_CAPACITY, FaultKind.INTERVAL_TOO_LONG),
          EnumSet.of(FaultKind.RATING_AS_CAPACITY, FaultKind.VOLUME_TOO_LARGE),
          EnumSet.of(FaultKind.HARDNESS_WITHOUT_IRON, FaultKind.HARDNESS_SET_TOO_LOW),
          EnumSet.of(FaultKind.HARDNESS_WITHOUT_IRON, FaultKind.HARDNESS_SET_TOO_HIGH),
          EnumSet.of(FaultKind.SALT_BOUGHT_ABOVE, FaultKind.SALT_BOUGHT_BELOW));

  @Property(tries = 60, seed = "20261126", shrinking = ShrinkingMode.OFF)
  void everyStudyMakesSense(@ForAll long seed) {
    ServiceStudy study = new RandomVisit(seed).study();
    Spread[] spreads =
        study.options().stream().flatMap(AnySoftenerTest::spreads).toArray(Spread[]::new);

    assertThat(spreads).allSatisfy(AnySoftenerTest::isSensible);
    study.options().forEach(AnySoftenerTest::isSensible);
    doNotContradict(study);
    isNotBurdenedMoreThanNeedBe(study);
    assertThat(study.faults().stream().map(Object::toString))
        .noneMatch(text -> text.contains("NaN"));
    assertThat(study.toString()).doesNotContain("NaN");
  }

  private static java.util.stream.Stream<Spread> spreads(ServiceOption option) {
    return java.util.stream.Stream.of(
        option.saltPounds(),
        option.waterGallons(),
        option.hardGallons(),
        option.runOutDays(),
        option.costs());
  }

  private static void isSensible(Spread spread) {
    assertThat(spread.low()).isNotNegative().isLessThanOrEqualTo(spread.mean() + ROUND_OFF);
    assertThat(spread.high()).isFinite().isGreaterThanOrEqualTo(spread.mean() - ROUND_OFF);
  }

  private static void isSensible(ServiceOption option) {
    assertThat(option.daysBetweenRegenerations()).isFinite().isGreaterThan(0.04);
    assertThat(option.years().unusedShare()).isBetween(0.0, 1 + ROUND_OFF);
    assertThat(option.hardWater().total().isNegative()).isFalse();
    assertThat(option.runOutDays().high()).isLessThanOrEqualTo(366);
    option.payback().ifPresent(AnySoftenerTest::isOrdered);
    option.paybackAgainstFound().ifPresent(AnySoftenerTest::isOrdered);
  }

  private static void isOrdered(Payback payback) {
    double middle = orNever(payback.years());
    assertThat(orNever(payback.low())).isNotNegative().isLessThanOrEqualTo(middle);
    assertThat(orNever(payback.high())).isGreaterThanOrEqualTo(middle);
    assertThat(payback.never()).isEqualTo(payback.years().isEmpty());
  }

  private static double orNever(OptionalDouble years) {
    return years.orElse(Double.POSITIVE_INFINITY);
  }

  private static void doNotContradict(ServiceStudy study) {
    Set<FaultKind> kinds = study.faults().stream().map(Fault::kind).collect(Collectors.toSet());
    assertThat(study.faults()).as("each once").hasSameSizeAs(kinds);
    assertThat(OPPOSITES).noneMatch(kinds::containsAll);
    List<FaultKind> late = new ArrayList<>(kinds);
    late.retainAll(STARTS_LATE);
    List<FaultKind> early = new ArrayList<>(kinds);
    early.retainAll(STARTS_EARLY);
    assertThat(late.isEmpty() || early.isEmpty()).as("%s and %s", late, early).isTrue();
    assertThat(kinds.contains(FaultKind.BED_TOO_SMALL))
        .isEqualTo(study.option(Kind.SET_RIGHT).isEmpty());
  }

  /** No setting of the bed keeps all that the right one keeps, and more. */
  private static void isNotBurdenedMoreThanNeedBe(ServiceStudy study) {
    study
        .option(Kind.SET_RIGHT)
        .flatMap(ServiceOption::candidate)
        .ifPresent(right -> isNotBurdenedMoreThanNeedBe(study, right));
  }

  private static void isNotBurdenedMoreThanNeedBe(ServiceStudy study, Candidate right) {
    Set<?> broken = margins(right);
    List<Candidate> others =
        new PresentBed(study.found(), study.comparison())
            .all(right.setup().control(), Visit.dollars(0), Visit.dollars(0));

    assertThat(others)
        .filteredOn(Candidate::feasible)
        .noneMatch(
            other -> broken.containsAll(margins(other)) && margins(other).size() < broken.size());
  }

  private static Set<?> margins(Candidate candidate) {
    return candidate.marginsBroken().stream()
        .map(check -> check.margin())
        .collect(Collectors.toSet());
  }
}
