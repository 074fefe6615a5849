package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import java.util.Locale;
import java.util.Optional;

/**
 * A rule whose finding is a reason of a {@link Verdict}. The constants of {@link VerdictRule} are
 * such rules; one of one's own is an {@link OwnReason} or implements this interface, and joins a
 * {@link RuleBook}.
 */
public interface ReasonRule extends Rule<HomeLoad> {
  /** {@return what it asks for when it applies; not {@link VerdictKind#READY}} */
  VerdictKind kind();

  /**
   * {@return whether a treatment ahead of the softener, once it is stated, answers it; true unless
   * overridden}
   */
  default boolean answeredByTreatment() {
    return true;
  }

  /**
   * {@return what would change it, in its own words in a language, {0} standing for its first
   * figure} Empty, as it is unless overridden, when the words are texts under the key "finding.",
   * the code and ".change".
   *
   * @param language language of the words, as in {@code Locale.FRENCH}
   */
  default Optional<String> change(Locale language) {
    return Optional.empty();
  }
}
