package io.github.brinewright.finding;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import java.util.List;

/**
 * Something a careful practitioner would say about the home or the candidate. Ask for it by its
 * rule:
 *
 * <pre>{@code
 * comparison.homeFinding(HomeRule.IRON_STAINS).map(words::finding)
 * }</pre>
 *
 * @param rule that applies
 * @param severity what it means by the rules in force
 * @param figures the values its words speak of, in their order
 */
public record Finding(Rule<?> rule, Severity severity, List<Figure> figures) {
  /**
   * Keeps its own copy of {@code figures}.
   *
   * @param rule that applies
   * @param severity what it means by the rules in force
   * @param figures the values its words speak of, in their order
   */
  public Finding {
    figures = List.copyOf(figures);
  }

  /**
   * {@return whether it is what a rule found}
   *
   * @param other the rule asked for
   */
  public boolean isOf(Rule<?> other) {
    return rule.equals(other);
  }

  /** {@return the stable code of its rule} */
  public String code() {
    return rule.code();
  }

  /** {@return who says so} */
  public Source source() {
    return rule.source();
  }

  /** {@return whether this forbids the candidate} */
  public boolean stops() {
    return severity == Severity.STOP;
  }
}
