package io.github.brinewright.model;

import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.comparison.Reason;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.Payback;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.study.MeterSaving;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import io.github.brinewright.words.Wording;
import io.github.brinewright.words.WorkedStep;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Something that is said, in no language yet.
 *
 * <pre>{@code
 * Phrase days = Phrase.text("home.basis", Phrase.of(Figure.days(3.2, 1)));
 * String inFrench = days.in(words);
 * }</pre>
 */
public sealed interface Phrase {
  /** Nothing. */
  Phrase NONE = new Plain("");

  /**
   * {@return the phrase in a language}
   *
   * @param words of the language
   * @throws IllegalArgumentException when the words have no text for a key
   */
  String in(Wording words);

  /** {@return whether nothing is said} */
  default boolean isEmpty() {
    return equals(NONE);
  }

  /**
   * A text of the language's bundle.
   *
   * @param key of the text
   * @param parts put into it, by position
   */
  record Text(String key, List<Phrase> parts) implements Phrase {
    /**
     * Keeps its own copy of {@code parts}.
     *
     * @param key of the text
     * @param parts put into it, by position
     */
    public Text {
      parts = List.copyOf(parts);
    }

    @Override
    public String in(Wording words) {
      return words.text(
          key, parts.stream().map(part -> figure(part, words)).toArray(Figure[]::new));
    }

    private static Figure figure(Phrase part, Wording words) {
      return part instanceof Value value ? value.figure() : Figure.of(part.in(words));
    }
  }

  /**
   * A figure with its unit.
   *
   * @param figure to write
   */
  record Value(Figure figure) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.figure(figure);
    }
  }

  /**
   * A figure whose unit stands elsewhere: in its label, or after the second of a pair.
   *
   * @param figure to write
   */
  record Bare(Figure figure) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.number(figure);
    }
  }

  /**
   * A forecast with the range that it lies in; without the range where both ends are printed alike.
   *
   * @param middle of it
   * @param low end of the range
   * @param high end of the range
   */
  record Ranged(Figure middle, Figure low, Figure high) implements Phrase {
    @Override
    public String in(Wording words) {
      String from = words.number(low);
      String to = words.number(high);
      return from.equals(to)
          ? words.figure(middle)
          : words.text("year.range", middle, Figure.of(from), Figure.of(to));
    }
  }

  /**
   * A range; the one figure alone where both ends are printed alike.
   *
   * @param low end of the range
   * @param high end of the range
   */
  record Span(Figure low, Figure high) implements Phrase {
    @Override
    public String in(Wording words) {
      String from = words.number(low);
      return from.equals(words.number(high)) ? words.figure(high) : from + "–" + words.figure(high);
    }
  }

  /**
   * A volume of resin, in the unit that beds are sold by.
   *
   * @param volume to write
   */
  record Bed(Volume volume) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.resin(volume);
    }
  }

  /**
   * A hardness in the unit that the reader does not use.
   *
   * @param hardness to write
   */
  record InOtherUnit(Hardness hardness) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.hardnessInOtherUnit(hardness);
    }
  }

  /**
   * A figure with its unit and, for a reader who uses metric units, the same in US units besides:
   * controls are often marked in these alone.
   *
   * @param figure to write
   */
  record InUsUnitsToo(Figure figure) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.figureInUsUnitsToo(figure);
    }
  }

  /**
   * A phrase, or another one where it says the same as what it stands beside.
   *
   * @param phrase said where it differs
   * @param beside what it is compared with, as it is printed
   * @param same said where it does not
   */
  record Unlike(Phrase phrase, Phrase beside, Phrase same) implements Phrase {
    @Override
    public String in(Wording words) {
      String said = phrase.in(words);
      return said.equals(beside.in(words)) ? same.in(words) : said;
    }
  }

  /**
   * The same in every language: a name, or a text of an embedder's own.
   *
   * @param text to write
   */
  record Plain(String text) implements Phrase {
    @Override
    public String in(Wording words) {
      return text;
    }
  }

  /**
   * A dealer's own text in the reader's language.
   *
   * @param text in one language or in several
   */
  record Local(LocalText text) implements Phrase {
    @Override
    public String in(Wording words) {
      return text.in(words.locale());
    }
  }

  /**
   * A date.
   *
   * @param date written in full
   */
  record Day(LocalDate date) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.date(date);
    }
  }

  /**
   * What was found, as a sentence or two.
   *
   * @param finding to say
   */
  record Found(Finding finding) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.finding(finding);
    }
  }

  /**
   * What would change a reason of a verdict, as a sentence or two.
   *
   * @param reason of a verdict
   */
  record Change(Finding reason) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.change(reason);
    }
  }

  /**
   * How a candidate stands to a margin, as a sentence.
   *
   * @param check to say
   */
  record Margin(MarginCheck check) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.margin(check);
    }
  }

  /**
   * What a meter saves, and what drives it.
   *
   * @param saving to say
   */
  record Saved(MeterSaving saving) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.meterSaving(saving);
    }
  }

  /**
   * A reason, as a sentence or two.
   *
   * @param reason to say
   */
  record Because(Reason reason) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.reason(reason);
    }
  }

  /**
   * What is wrong with a present softener and what comes of it, as a sentence or two.
   *
   * @param fault to say
   */
  record Wrong(Fault fault) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.fault(fault);
    }
  }

  /**
   * What is taken as so of a present softener, as a sentence.
   *
   * @param assumption to say
   */
  record Assumed(Assumption assumption) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.assumption(assumption);
    }
  }

  /**
   * What comes of a study of a present softener, as a sentence.
   *
   * @param advice to say
   */
  record Advised(Advice advice) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.advice(advice);
    }
  }

  /**
   * When a price has come back: a range in years, or that it never does.
   *
   * @param payback to say
   */
  record Returned(Payback payback) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.payback(payback);
    }
  }

  /**
   * A caution, as a sentence or two.
   *
   * @param caution to say
   */
  record Warned(Caution caution) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.caution(caution);
    }
  }

  /**
   * A source with its standing.
   *
   * @param source to cite
   */
  record Cited(Source source) implements Phrase {
    @Override
    public String in(Wording words) {
      return words.source(source);
    }
  }

  /**
   * One part of a step of the calculation, in US units.
   *
   * @param step to write
   * @param part of it
   */
  record Worked(Step step, Part part) implements Phrase {
    /** Parts of a step. */
    public enum Part {
      /** What is worked out, and its formula in words. */
      FORMULA(worked -> worked.name() + " = " + worked.formula()),
      /** The formula with its numbers. */
      NUMBERS(WorkedStep::numbers),
      /** What comes out, with its unit. */
      RESULT(WorkedStep::result);

      private final Function<WorkedStep, String> text;

      Part(Function<WorkedStep, String> text) {
        this.text = text;
      }
    }

    @Override
    public String in(Wording words) {
      return part.text.apply(words.step(step));
    }
  }

  /**
   * Phrases one after another; those that say nothing are left out.
   *
   * @param parts in order
   * @param between them
   */
  record Joined(List<Phrase> parts, String between) implements Phrase {
    /**
     * Keeps its own copy of {@code parts}.
     *
     * @param parts in order
     * @param between them
     */
    public Joined {
      parts = List.copyOf(parts);
    }

    @Override
    public String in(Wording words) {
      return parts.stream()
          .map(part -> part.in(words))
          .filter(text -> !text.isEmpty())
          .collect(Collectors.joining(between));
    }

    @Override
    public boolean isEmpty() {
      return parts.stream().allMatch(Phrase::isEmpty);
    }
  }

  /**
   * One thing or several, the last one after the language's "and".
   *
   * @param items one or more
   */
  record Listed(List<Phrase> items) implements Phrase {
    /**
     * Keeps its own copy of {@code items}.
     *
     * @param items one or more
     * @throws IllegalArgumentException when there are none
     */
    public Listed {
      if (items.isEmpty()) {
        throw new IllegalArgumentException("a list of phrases needs one at least");
      }
      items = List.copyOf(items);
    }

    @Override
    public String in(Wording words) {
      int last = items.size() - 1;
      String end = items.get(last).in(words);
      return last == 0
          ? end
          : new Joined(items.subList(0, last), ", ").in(words)
              + " "
              + words.text("and")
              + " "
              + end;
    }
  }

  /**
   * {@return a text of the language's bundle}
   *
   * @param key of the text
   * @param parts put into it, by position
   */
  static Phrase text(String key, Phrase... parts) {
    return new Text(key, Arrays.asList(parts));
  }

  /**
   * {@return a figure with its unit}
   *
   * @param figure to write
   */
  static Phrase of(Figure figure) {
    return new Value(figure);
  }

  /**
   * {@return a word of the trade}
   *
   * @param term a constant that the words have a text for
   */
  static Phrase of(Enum<?> term) {
    return new Value(Figure.of(term));
  }

  /**
   * {@return a phrase that is the same in every language}
   *
   * @param text as it is written
   */
  static Phrase plain(String text) {
    return new Plain(text);
  }

  /**
   * {@return sentences one after another}
   *
   * @param sentences in order, each with its full stop
   */
  static Phrase sentences(List<? extends Phrase> sentences) {
    return new Joined(List.copyOf(sentences), " ");
  }
}
