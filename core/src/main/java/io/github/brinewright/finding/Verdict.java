package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a careful dealer says of a home before any softener is named, with all reasons.
 *
 * <pre>{@code
 * Verdict verdict = Verdict.of(new HomeLoad(site));
 * for (Finding reason : verdict.reasons()) {
 *   System.out.println(words.finding(reason) + " " + words.change(reason));
 * }
 * }</pre>
 *
 * <p>The gravest reason decides. A treatment that is stated ahead of the softener answers what is
 * wrong with the raw water; the water that it leaves is looked at in its place. Immutable.
 */
public final class Verdict {
  private final List<Finding> reasons;
  private final boolean treated;

  /**
   * A verdict for reasons that were found.
   *
   * @param reasons each of a {@link ReasonRule}
   */
  Verdict(HomeLoad home, List<Finding> reasons) {
    this.reasons = reasons.stream().sorted(Comparator.comparing(Verdict::kindOf)).toList();
    treated = home.site().treated().isPresent();
  }

  /**
   * {@return the verdict by the usual rules; {@link RuleBook#verdict} has those of a dealer}
   *
   * @param home what the home asks for
   */
  public static Verdict of(HomeLoad home) {
    return RuleBook.USUAL.verdict(home);
  }

  private static ReasonRule ruleOf(Finding reason) {
    return (ReasonRule) reason.rule();
  }

  private static VerdictKind kindOf(Finding reason) {
    return ruleOf(reason).kind();
  }

  /** {@return what is to be done: what the gravest reason asks for} */
  public VerdictKind kind() {
    return reasons.stream().findFirst().map(Verdict::kindOf).orElse(VerdictKind.READY);
  }

  /** {@return all reasons, the gravest first; none when a softener can be chosen} */
  public List<Finding> reasons() {
    return reasons;
  }

  /**
   * {@return what a rule found; empty when it does not apply}
   *
   * @param rule the rule asked for
   */
  public Optional<Finding> reason(ReasonRule rule) {
    return reasons.stream().filter(reason -> reason.isOf(rule)).findFirst();
  }

  /** {@return whether everything rests on a treatment ahead of the softener that is stated} */
  public boolean isConditional() {
    return treated;
  }

  /** {@return whether a missing test may still change the figures} */
  public boolean isProvisional() {
    return asksFor(VerdictKind.TEST_FIRST);
  }

  /**
   * {@return whether a softener may be recommended: not for water that is soft enough, nor for one
   * that is to be treated first where the water after treatment is not stated, or is not fit
   * either}
   */
  public boolean permitsRecommendation() {
    return !asksFor(VerdictKind.SOFT_ENOUGH) && reasons.stream().allMatch(this::mayWait);
  }

  /**
   * {@return whether an acceptance may be signed: a softener may be recommended, and no test is
   * missing}
   */
  public boolean permitsSignature() {
    return permitsRecommendation() && !isProvisional();
  }

  /**
   * {@return whether the treatment that the water is sized behind answers a reason}
   *
   * @param reason of this verdict
   */
  public boolean isAnswered(Finding reason) {
    return treated
        && kindOf(reason) == VerdictKind.TREAT_FIRST
        && ruleOf(reason).answeredByTreatment();
  }

  private boolean asksFor(VerdictKind kind) {
    return reasons.stream().anyMatch(reason -> kindOf(reason) == kind);
  }

  private boolean mayWait(Finding reason) {
    return kindOf(reason) != VerdictKind.TREAT_FIRST || isAnswered(reason);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Verdict verdict
        && treated == verdict.treated
        && reasons.equals(verdict.reasons);
  }

  @Override
  public int hashCode() {
    return reasons.hashCode();
  }

  /** Kind and codes, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return kind() + " " + reasons.stream().map(Finding::code).toList();
  }
}
