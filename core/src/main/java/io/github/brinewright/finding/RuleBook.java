package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.sizing.Design;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rules in force and what each means: by default every {@link VerdictRule}, {@link HomeRule}
 * and {@link DesignRule} at its own severity. Immutable; may be shared between threads.
 *
 * <pre>{@code
 * RuleBook rules =
 *     RuleBook.builder()
 *         .severity(DesignRule.PRESSURE_LOSS_HIGH, Severity.STOP)
 *         .without(DesignRule.BED_SHALLOW)
 *         .build();
 * PriceList prices = PriceList.builder(offers).rules(rules).build();
 * }</pre>
 *
 * <p>Two are equal when they hold the same rules in the same order at the same severities.
 */
public final class RuleBook {
  /** The usual rules. */
  public static final RuleBook USUAL = builder().build();

  private final Entries entries;

  private RuleBook(Entries entries) {
    this.entries = entries;
  }

  /**
   * The usual rules, to be changed.
   *
   * @return a builder that begins with them
   */
  public static Builder builder() {
    return new Builder(new Entries(VerdictRule.RULES, HomeRule.RULES, DesignRule.RULES, Map.of()));
  }

  /**
   * These rules, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    return new Builder(entries);
  }

  /** {@return what decides on the verdict on a home} */
  public List<ReasonRule> verdictRules() {
    return entries.verdict();
  }

  /** {@return what is looked for in the water and the home} */
  public List<Rule<HomeLoad>> homeRules() {
    return entries.home();
  }

  /** {@return what is looked for in each candidate} */
  public List<Rule<DesignRule.Subject>> designRules() {
    return entries.design();
  }

  /** {@return the codes of all of them: of reasons, of findings on the home and on candidates} */
  public Set<String> codes() {
    return Stream.of(verdictRules(), homeRules(), designRules())
        .flatMap(List::stream)
        .map(Rule::code)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * {@return what a rule means here when it applies}
   *
   * @param rule one of this book
   */
  public Severity severityOf(Rule<?> rule) {
    return entries.severities().getOrDefault(rule, rule.severity());
  }

  /**
   * {@return what is to be said of a home before any softener is named}
   *
   * @param home what the home asks for
   */
  public Verdict verdict(HomeLoad home) {
    return new Verdict(home, findings(verdictRules(), home));
  }

  /**
   * {@return what applies to a home, the gravest first, otherwise in the order of the rules}
   *
   * @param home what the home asks for
   */
  public List<Finding> findings(HomeLoad home) {
    return findings(homeRules(), home);
  }

  /**
   * {@return what applies to a candidate, the gravest first, otherwise in the order of the rules}
   *
   * @param design the candidate as it is set up
   * @param limits those of the dealer
   */
  public List<Finding> findings(Design design, Limits limits) {
    return findings(designRules(), new DesignRule.Subject(design, limits));
  }

  private <S> List<Finding> findings(List<? extends Rule<S>> rules, S subject) {
    return rules.stream()
        .flatMap(
            rule ->
                rule
                    .lookAt(subject)
                    .map(figures -> new Finding(rule, severityOf(rule), figures))
                    .stream())
        .sorted(Comparator.comparing(Finding::severity))
        .toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RuleBook book && entries.equals(book.entries);
  }

  @Override
  public int hashCode() {
    return entries.hashCode();
  }

  @Override
  public String toString() {
    return "RuleBook of "
        + verdictRules().size()
        + " reasons, "
        + homeRules().size()
        + " home rules and "
        + designRules().size()
        + " design rules, severities changed "
        + entries.severities();
  }

  /** The rules in their order. */
  private record Entries(
      List<ReasonRule> verdict,
      List<Rule<HomeLoad>> home,
      List<Rule<DesignRule.Subject>> design,
      Map<Rule<?>, Severity> severities) {
    Entries {
      verdict = List.copyOf(verdict);
      home = List.copyOf(home);
      design = List.copyOf(design);
      severities = Map.copyOf(severities);
    }
  }

  /** Collects rules, beginning with those it was made from. */
  public static final class Builder {
    private final List<ReasonRule> verdict;
    private final List<Rule<HomeLoad>> home;
    private final List<Rule<DesignRule.Subject>> design;
    private final Map<Rule<?>, Severity> severities;

    private Builder(Entries entries) {
      verdict = new ArrayList<>(entries.verdict());
      home = new ArrayList<>(entries.home());
      design = new ArrayList<>(entries.design());
      severities = new HashMap<>(entries.severities());
    }

    /**
     * Adds a reason for a verdict, after those of its kind that there are.
     *
     * @param rule that asks for one of the verdicts
     * @return this builder
     */
    public Builder reason(ReasonRule rule) {
      verdict.add(rule);
      return this;
    }

    /**
     * Adds a rule on the home, after those there are.
     *
     * @param rule on the water or the home
     * @return this builder
     */
    public Builder home(Rule<HomeLoad> rule) {
      home.add(rule);
      return this;
    }

    /**
     * Adds a rule on each candidate, after those there are.
     *
     * @param rule on a softener as it is set up
     * @return this builder
     */
    public Builder design(Rule<DesignRule.Subject> rule) {
      design.add(rule);
      return this;
    }

    /**
     * Leaves a rule out.
     *
     * @param rule of this rule book, and not essential
     * @return this builder
     * @throws IllegalArgumentException when it is not here, or is {@link Rule#essential()}
     */
    public Builder without(Rule<?> rule) {
      requireChangeable(rule);
      verdict.remove(rule);
      home.remove(rule);
      design.remove(rule);
      severities.remove(rule);
      return this;
    }

    /**
     * Gives a rule another severity; what a reason asks for stays as it is.
     *
     * @param rule of this rule book, and not essential
     * @param severity what it is to mean when it applies
     * @return this builder
     * @throws IllegalArgumentException when it is not here, or is {@link Rule#essential()}
     */
    public Builder severity(Rule<?> rule, Severity severity) {
      requireChangeable(rule);
      severities.put(rule, severity);
      return this;
    }

    private void requireChangeable(Rule<?> rule) {
      if (!verdict.contains(rule) && !home.contains(rule) && !design.contains(rule)) {
        throw new IllegalArgumentException(
            "the rule " + rule.code() + " is not in this rule book; add it first");
      }
      if (rule.essential()) {
        throw new IllegalArgumentException(
            "the rule "
                + rule.code()
                + " can neither be left out nor be given another severity: without it a bed that"
                + " cannot serve would be sold");
      }
    }

    /**
     * {@return the finished rule book; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when a code is malformed or two rules share one
     */
    public RuleBook build() {
      Set<String> codes = new HashSet<>();
      List<Rule<?>> all = new ArrayList<>(verdict);
      all.addAll(home);
      all.addAll(design);
      for (Rule<?> rule : all) {
        if (!codes.add(RuleCodes.require(rule.code()))) {
          throw new IllegalArgumentException(
              "two rules have the code " + rule.code() + "; give one of them another");
        }
      }
      severities.entrySet().removeIf(entry -> entry.getKey().severity() == entry.getValue());
      return new RuleBook(new Entries(verdict, home, design, severities));
    }
  }
}
