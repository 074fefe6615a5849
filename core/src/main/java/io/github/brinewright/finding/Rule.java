package io.github.brinewright.finding;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One thing to look for. The constants of {@link HomeRule} and {@link DesignRule} are rules; a rule
 * of one's own is made with {@link OwnRule} or implements this interface.
 *
 * <p>Immutable; asked by several threads at once.
 *
 * @param <S> what it looks at: {@link io.github.brinewright.demand.HomeLoad} or {@link
 *     DesignRule.Subject}
 */
public interface Rule<S> {
  /**
   * {@return a stable code, which files and programs may keep: lower-case letters, digits and
   * hyphens, beginning with a letter} No two rules of a {@link RuleBook} share one.
   */
  String code();

  /** {@return what it means when it applies, unless a {@link RuleBook} says otherwise} */
  Severity severity();

  /** {@return who says so} */
  Source source();

  /**
   * {@return the figures to speak of, in the order of its words; empty when the rule does not
   * apply}
   *
   * @param subject a home or a candidate, whichever the rule is on
   */
  Optional<List<Figure>> lookAt(S subject);

  /**
   * {@return the rule's own words in a language, {0} standing for its first figure} Empty, as it is
   * unless overridden, when the words are texts under the key "finding." and the code.
   *
   * @param language language of the words, as in {@code Locale.FRENCH}
   */
  default Optional<String> words(Locale language) {
    return Optional.empty();
  }

  /**
   * {@return whether every rule book must hold it at its own severity: without it nothing is sized}
   */
  default boolean essential() {
    return false;
  }

  /**
   * The figures when the condition holds.
   *
   * @param condition whether the rule applies
   * @param figures to speak of, in the order of the rule's words
   * @return {@code figures}, or empty when {@code condition} is false
   */
  static Optional<List<Figure>> when(boolean condition, Figure... figures) {
    return condition ? Optional.of(List.of(figures)) : Optional.empty();
  }

  /**
   * {@return the code of a constant: its name in lower case with hyphens}
   *
   * @param constant of an enum that is a rule
   */
  static String codeOf(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
