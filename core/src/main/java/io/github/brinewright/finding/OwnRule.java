package io.github.brinewright.finding;

import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A rule that a dealer adds, with its words:
 *
 * <pre>{@code
 * Rule<HomeLoad> largeHousehold =
 *     OwnRule.of(
 *             "large-household",
 *             (HomeLoad home) -> {
 *               int people = home.site().household().people();
 *               return Rule.when(people > 6, Figure.of(people));
 *             })
 *         .severity(Severity.CAUTION)
 *         .words(Locale.ENGLISH, "With {0} people, ask for a second opinion.")
 *         .build();
 * RuleBook rules = RuleBook.builder().home(largeHousehold).build();
 * }</pre>
 *
 * <p>Two are equal when they are the same object, since conditions cannot be compared.
 *
 * @param <S> what it looks at
 */
public final class OwnRule<S> implements Rule<S> {
  private final String code;
  private final Function<S, Optional<List<Figure>>> condition;
  private final Severity severity;
  private final Source source;
  private final Map<Locale, String> words;

  private OwnRule(Builder<S> builder) {
    code = builder.code;
    condition = builder.condition;
    severity = builder.severity;
    source = builder.source;
    words = Map.copyOf(builder.words);
  }

  /**
   * Begins a rule.
   *
   * @param <S> what it looks at
   * @param code 1 to 60 lower-case letters, digits and hyphens, beginning with a letter
   * @param condition the figures to speak of, or empty; see {@link Rule#when}
   * @return a builder of the rule
   * @throws IllegalArgumentException when the code is another one
   */
  public static <S> Builder<S> of(String code, Function<S, Optional<List<Figure>>> condition) {
    return new Builder<>(RuleCodes.require(code), condition);
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Optional<List<Figure>> lookAt(S subject) {
    return condition.apply(subject);
  }

  /** The words for exactly this locale, or else for its language. */
  @Override
  public Optional<String> words(Locale language) {
    return inLanguage(words, language);
  }

  static Optional<String> inLanguage(Map<Locale, String> words, Locale language) {
    return Optional.ofNullable(words.get(language))
        .or(() -> Optional.ofNullable(words.get(new Locale(language.getLanguage()))));
  }

  @Override
  public String toString() {
    return code;
  }

  /**
   * Collects a rule: a note, by the dealer's own figure, worded by the texts under its code.
   *
   * @param <S> what it looks at
   */
  public static final class Builder<S> {
    private final String code;
    private final Function<S, Optional<List<Figure>>> condition;
    private Severity severity = Severity.NOTE;
    private Source source = Sources.DEALER;
    private final Map<Locale, String> words = new LinkedHashMap<>();

    private Builder(String code, Function<S, Optional<List<Figure>>> condition) {
      this.code = code;
      this.condition = condition;
    }

    /**
     * What it means when it applies; a note unless set.
     *
     * @param severity what it means, unless a rule book gives it another
     * @return this builder
     */
    public Builder<S> severity(Severity severity) {
      this.severity = severity;
      return this;
    }

    /**
     * Who says so; the dealer unless set.
     *
     * @param source whom documents are to name
     * @return this builder
     */
    public Builder<S> source(Source source) {
      this.source = source;
      return this;
    }

    /**
     * Words in a language; needed for each language written, unless the texts have them.
     *
     * @param language as in {@code Locale.FRENCH}, or with a country
     * @param text {0} stands for the first figure
     * @return this builder
     * @throws IllegalArgumentException when the text is blank
     */
    public Builder<S> words(Locale language, String text) {
      if (text.isBlank()) {
        throw new IllegalArgumentException(
            "the words of " + code + " in " + language + " are empty; write a sentence");
      }
      words.put(language, text);
      return this;
    }

    /** {@return the finished rule; later calls of this builder do not change it} */
    public OwnRule<S> build() {
      return new OwnRule<>(this);
    }
  }
}
