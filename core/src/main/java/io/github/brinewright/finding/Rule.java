package io.github.brinewright.finding;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One thing to look for. Its words live in the message bundle under its code.
 *
 * @param <S> what it looks at
 */
public interface Rule<S> {
  /** Name of the constant; the code is made from it. */
  String name();

  /** What it means when it applies. */
  Severity severity();

  /** Who says so. */
  Source source();

  /** The figures to speak of, or empty when the rule does not apply. */
  Optional<List<Figure>> lookAt(S subject);

  /** Stable code: the name in lower case with hyphens. */
  default String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The finding, when the rule applies. */
  default Optional<Finding> check(S subject) {
    return lookAt(subject).map(figures -> new Finding(code(), severity(), figures, source()));
  }

  /** All findings of the rules, the gravest first, otherwise in the order of the rules. */
  static <S> List<Finding> checkAll(Rule<S>[] rules, S subject) {
    return Arrays.stream(rules)
        .flatMap(rule -> rule.check(subject).stream())
        .sorted((a, b) -> a.severity().compareTo(b.severity()))
        .toList();
  }

  /** The figures when the condition holds. */
  static Optional<List<Figure>> when(boolean condition, Figure... figures) {
    return condition ? Optional.of(List.of(figures)) : Optional.empty();
  }
}
