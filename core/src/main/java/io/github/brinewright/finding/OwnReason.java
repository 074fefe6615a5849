package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A reason that a dealer adds to the verdict on a home, with its words:
 *
 * <pre>{@code
 * OwnRule<HomeLoad> salty =
 *     OwnRule.of("water-salty", (HomeLoad home) -> Rule.when(chlorideOf(home) > 1_000))
 *         .words(Locale.ENGLISH, "This water is too salty for a softener.")
 *         .build();
 * OwnReason reason =
 *     OwnReason.of(VerdictKind.TREAT_FIRST, salty)
 *         .change(Locale.ENGLISH, "Have it desalted first.");
 * RuleBook rules = RuleBook.builder().reason(reason).build();
 * }</pre>
 *
 * <p>Immutable. Equal when rule, kind and words are.
 */
public final class OwnReason implements ReasonRule {
  private final VerdictKind kind;
  private final OwnRule<HomeLoad> rule;
  private final Map<Locale, String> changes;

  private OwnReason(VerdictKind kind, OwnRule<HomeLoad> rule, Map<Locale, String> changes) {
    this.kind = kind;
    this.rule = rule;
    this.changes = Map.copyOf(changes);
  }

  /**
   * A reason that applies when a rule does.
   *
   * @param kind what it asks for
   * @param rule on homes, which the reason follows
   * @return the reason, as yet without words of its own on what would change it
   * @throws IllegalArgumentException when the kind is {@link VerdictKind#READY}, which has no
   *     reasons
   */
  public static OwnReason of(VerdictKind kind, OwnRule<HomeLoad> rule) {
    if (kind == VerdictKind.READY) {
      throw new IllegalArgumentException(
          "the reason " + rule.code() + " asks for nothing; give it another kind than READY");
    }
    return new OwnReason(kind, rule, Map.of());
  }

  /**
   * The same reason with what would change it, in a language; needed for each language written,
   * unless the texts have it.
   *
   * @param language as in {@code Locale.FRENCH}, or with a country
   * @param text {0} stands for the first figure
   * @return a new reason; this one is left as it is
   * @throws IllegalArgumentException when the text is blank
   */
  public OwnReason change(Locale language, String text) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(
          "what would change " + code() + " in " + language + " is empty; write a sentence");
    }
    Map<Locale, String> more = new HashMap<>(changes);
    more.put(language, text);
    return new OwnReason(kind, rule, more);
  }

  @Override
  public VerdictKind kind() {
    return kind;
  }

  @Override
  public String code() {
    return rule.code();
  }

  @Override
  public Severity severity() {
    return rule.severity();
  }

  @Override
  public Source source() {
    return rule.source();
  }

  @Override
  public Optional<List<Figure>> lookAt(HomeLoad home) {
    return rule.lookAt(home);
  }

  @Override
  public Optional<String> words(Locale language) {
    return rule.words(language);
  }

  /** The words for exactly this locale, or else for its language. */
  @Override
  public Optional<String> change(Locale language) {
    return OwnRule.inLanguage(changes, language);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OwnReason reason
        && kind == reason.kind
        && rule.equals(reason.rule)
        && changes.equals(reason.changes);
  }

  @Override
  public int hashCode() {
    return rule.hashCode();
  }

  @Override
  public String toString() {
    return code();
  }
}
