package io.github.brinewright.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What may stand in a column of a job's CSV file, or under a key of dealer.properties: all that a
 * form, a command line or a page needs to ask for it.
 *
 * <pre>{@code
 * for (Column column : SiteColumns.all()) {
 *   System.out.println(column.name() + ": " + column.meaning(Locale.US));
 * }
 * }</pre>
 *
 * @param file that it belongs to, as {@code sites.csv}
 * @param name in the header
 * @param kind of what is written in a cell
 * @param unit of a number; empty for a plain number and for text
 * @param bounds of a number, in that unit
 * @param constants that may be chosen, where there are only these
 * @param usual what is taken where the cell is empty; empty when nothing is
 * @param needed whether the column must be there
 * @param part of a form that asks for it, as {@code water}; empty where no form does
 */
public record Column(
    String file,
    String name,
    Kind kind,
    String unit,
    Ends bounds,
    List<Enum<?>> constants,
    String usual,
    boolean needed,
    String part) {
  /** What is written in a cell. */
  public enum Kind {
    /** 1 to 40 letters, digits, points, hyphens or underscores. */
    SHORT_NAME,
    /** One plain line. */
    TEXT,
    /** A number, with a point for decimals. */
    NUMBER,
    /** A whole number. */
    WHOLE,
    /** An exact decimal: money, or a rate in per cent. */
    AMOUNT,
    /** A number, {@code <} before a reporting limit, or {@code ND} for not detected. */
    LAB_RESULT,
    /** Numbers separated by spaces. */
    NUMBERS,
    /** A day as year-month-day. */
    DATE,
    /** One of the choices. */
    CHOICE,
    /** Any of the choices, separated by spaces. */
    CHOICES,
    /** Pairs of a number and a choice, as in {@code 2 shower 3 lavatory}. */
    COUNTS,
    /** What a meter stood at by dates, as in {@code 2026-01-03:12345 2026-04-02:18900}. */
    READINGS,
    /** A language with its country, as {@code es-US}. */
    LOCALE,
    /** A country or a part of one by ISO 3166, as {@code US-CA}. */
    PLACE,
    /** Three letters of a currency. */
    CURRENCY,
    /** A colour as {@code #RRGGBB}. */
    COLOUR,
    /** Name of a row of another file of the job. */
    REFERENCE,
    /** Name of a picture in the job. */
    PICTURE;

    /** {@return whether decimals are written in it} */
    public boolean numeric() {
      return this == NUMBER
          || this == WHOLE
          || this == AMOUNT
          || this == LAB_RESULT
          || this == NUMBERS;
    }
  }

  /**
   * The range of a number.
   *
   * @param low the lowest
   * @param high the highest; not below {@code low}
   */
  public record Ends(double low, double high) {
    /** Any number. */
    public static final Ends NONE = new Ends(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /**
     * {@return whether a number lies within}
     *
     * @param number in the unit of the column
     */
    public boolean hold(double number) {
      return number >= low && number <= high;
    }
  }

  /**
   * Keeps its own copy of the constants.
   *
   * @param file that it belongs to, as {@code sites.csv}
   * @param name in the header
   * @param kind of what is written in a cell
   * @param unit of a number; empty for a plain number and for text
   * @param bounds of a number, in that unit
   * @param constants that may be chosen, where there are only these
   * @param usual what is taken where the cell is empty; empty when nothing is
   * @param needed whether the column must be there
   * @param part of a form that asks for it, as {@code water}; empty where no form does
   */
  public Column {
    constants = List.copyOf(constants);
  }

  /** {@return the range of a number; empty where the kind has none} */
  public Optional<Ends> range() {
    return bounds.equals(Ends.NONE) ? Optional.empty() : Optional.of(bounds);
  }

  /** {@return the words that may be written, where there are only these} */
  public List<String> choices() {
    return constants.stream().map(Formats::word).toList();
  }

  /**
   * {@return what it means, in a sentence without a full stop}
   *
   * @param locale language of the sentence
   */
  public String meaning(Locale locale) {
    return new JobTexts(locale).get("column." + file + "." + name);
  }
}
