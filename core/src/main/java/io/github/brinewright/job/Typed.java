package io.github.brinewright.job;

import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.MeterReading;
import io.github.brinewright.home.Place;
import io.github.brinewright.job.Column.Ends;
import io.github.brinewright.job.Column.Kind;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * A column with the format of its cells, before it belongs to a file.
 *
 * @param <T> kind of the values
 */
final class Typed<T> {
  private static final MathContext NINE_DIGITS = new MathContext(9);

  private final String name;
  private final Kind kind;
  private final Format<T> format;
  private String unit = "";
  private Ends bounds = Ends.NONE;
  private List<Enum<?>> choices = List.of();
  private @Nullable T usual;
  private boolean needed;

  private Typed(String name, Kind kind, Format<T> format) {
    this.name = name;
    this.kind = kind;
    this.format = format;
  }

  static Typed<String> shortName(String name) {
    return new Typed<>(name, Kind.SHORT_NAME, Formats.SHORT_NAME_TEXT);
  }

  static Typed<String> text(String name) {
    return new Typed<>(name, Kind.TEXT, Formats.TEXT);
  }

  /** A text in any script, of which documents print another where they cannot print it. */
  static Typed<String> anyScript(String name) {
    return new Typed<>(name, Kind.TEXT, Formats.ANY_SCRIPT);
  }

  static Typed<Double> number(String name, double low, double high) {
    return number(name, low, high, number -> number, number -> number);
  }

  /** A number of which a value is made, and the number of a value. */
  static <Q> Typed<Q> number(
      String name, double low, double high, DoubleFunction<Q> make, ToDoubleFunction<Q> number) {
    return new Typed<>(name, Kind.NUMBER, NumberFormats.of(make, number)).within(low, high);
  }

  /** A number of which a value is made, within the range that its type checks. */
  static <Q extends Comparable<? super Q>> Typed<Q> number(
      String name, Bounds<Q> range, DoubleFunction<Q> make, ToDoubleFunction<Q> number) {
    return number(name, end(range.low(), number), end(range.high(), number), make, number);
  }

  static Typed<Double> number(String name, Bounds<Double> range) {
    return number(name, range.low(), range.high());
  }

  /** The end of a range in the unit of the column, without the noise of its conversion. */
  private static <Q> double end(Q value, ToDoubleFunction<Q> number) {
    return new BigDecimal(number.applyAsDouble(value)).round(NINE_DIGITS).doubleValue();
  }

  static Typed<Integer> whole(String name, Bounds<Integer> range) {
    return whole(name, range.low(), range.high());
  }

  /** Numbers of which values are made, separated by spaces. */
  static <Q extends Comparable<? super Q>> Typed<List<Q>> numbers(
      String name, Bounds<Q> range, DoubleFunction<Q> make, ToDoubleFunction<Q> number) {
    return new Typed<>(name, Kind.NUMBERS, NumberFormats.listOf(NumberFormats.of(make, number)))
        .within(end(range.low(), number), end(range.high(), number));
  }

  static Typed<Integer> whole(String name, int low, int high) {
    return new Typed<>(name, Kind.WHOLE, NumberFormats.WHOLE).within(low, high);
  }

  static Typed<BigDecimal> amount(String name, double low, double high) {
    return new Typed<>(name, Kind.AMOUNT, NumberFormats.AMOUNT).within(low, high);
  }

  /** A number, a reporting limit, or that none was detected. */
  static Typed<LabResult> labResult(String name, Bounds<Concentration> range) {
    return new Typed<>(name, Kind.LAB_RESULT, new LabFormat())
        .within(range.low().milligramsPerLitre(), range.high().milligramsPerLitre());
  }

  static Typed<Place> place(String name) {
    return new Typed<>(name, Kind.PLACE, Formats.PLACE);
  }

  /** Exact decimals separated by spaces. */
  static Typed<List<BigDecimal>> amounts(String name, double low, double high) {
    return new Typed<>(name, Kind.NUMBERS, NumberFormats.listOf(NumberFormats.AMOUNT))
        .within(low, high);
  }

  /** A rate in per cent, kept as a fraction. */
  static Typed<BigDecimal> fraction(String name, double lowPercent, double highPercent) {
    Format<BigDecimal> format =
        NumberFormats.AMOUNT.as(
            percent -> percent.movePointLeft(2).stripTrailingZeros(),
            fraction -> fraction.movePointRight(2));
    return new Typed<>(name, Kind.AMOUNT, format).within(lowPercent, highPercent).unit("%");
  }

  /** A rate in per cent, kept as a fraction that is a double; the point is moved exactly. */
  static Typed<Double> percent(String name, double low, double high) {
    Format<Double> format =
        NumberFormats.AMOUNT.as(
            percent -> percent.movePointLeft(2).doubleValue(),
            fraction -> BigDecimal.valueOf(fraction).movePointRight(2));
    return new Typed<>(name, Kind.AMOUNT, format).within(low, high).unit("%");
  }

  static Typed<LocalDate> date(String name) {
    return new Typed<>(name, Kind.DATE, Formats.DATE);
  }

  static <E extends Enum<E>> Typed<E> choice(String name, Class<E> type) {
    return new Typed<>(name, Kind.CHOICE, Formats.choice(type)).among(type);
  }

  /** One of the constants of a type; some are understood by another word too. */
  static <E extends Enum<E>> Typed<E> choice(String name, Class<E> type, Map<String, E> also) {
    return new Typed<>(name, Kind.CHOICE, Formats.choice(type, also)).among(type);
  }

  /** Weekdays, separated by spaces. */
  static Typed<Set<DayOfWeek>> weekdays(String name) {
    return new Typed<>(name, Kind.CHOICES, new WeekdayFormat()).among(WeekdayFormat.Word.class);
  }

  /** Readings of a meter, each with its date, separated by spaces. */
  static Typed<List<MeterReading>> readings(String name, Bounds<Volume> counter) {
    return new Typed<>(name, Kind.READINGS, new ReadingsFormat())
        .within(counter.low().gallons(), counter.high().gallons());
  }

  static <E extends Enum<E>> Typed<Set<E>> choices(String name, Class<E> type) {
    return new Typed<>(name, Kind.CHOICES, Formats.choices(type)).among(type);
  }

  static <E extends Enum<E>> Typed<Map<E, Integer>> counts(String name, int most, Class<E> type) {
    return new Typed<>(name, Kind.COUNTS, Formats.counts(type)).within(1, most).among(type);
  }

  static Typed<Boolean> yesNo(String name) {
    return choice(name, YesNo.class).as(YesNo.YES::equals, yes -> yes ? YesNo.YES : YesNo.NO);
  }

  private enum YesNo {
    YES,
    NO
  }

  static Typed<Locale> locale(String name) {
    return new Typed<>(name, Kind.LOCALE, Formats.LOCALE);
  }

  static Typed<CurrencyUnit> currency(String name) {
    return new Typed<>(name, Kind.CURRENCY, Formats.CURRENCY);
  }

  static Typed<String> colour(String name) {
    return new Typed<>(name, Kind.COLOUR, Formats.COLOUR_TEXT);
  }

  /** The id of a row of another file; whether it is there is asked where that file is known. */
  static Typed<String> reference(String name) {
    return new Typed<>(name, Kind.REFERENCE, Formats.TEXT);
  }

  /** Ids of rows of another file, or other names that are known elsewhere, separated by spaces. */
  static Typed<List<String>> references(String name) {
    return new Typed<>(
        name,
        Kind.REFERENCE,
        Formats.TEXT.as(
            text -> List.of(text.trim().split("\\s+")), texts -> String.join(" ", texts)));
  }

  /** The name of a picture; whether it can be drawn is asked where the files are at hand. */
  static Typed<String> picture(String name) {
    return new Typed<>(name, Kind.PICTURE, Formats.TEXT);
  }

  private <U> Typed<U> as(Function<T, U> make, Function<U, T> unmake) {
    return new Typed<>(name, kind, format.as(make, unmake)).within(bounds).among(choices);
  }

  private Typed<T> within(double low, double high) {
    return within(new Ends(low, high));
  }

  private Typed<T> within(Ends range) {
    bounds = range;
    return this;
  }

  private Typed<T> among(Class<? extends Enum<?>> type) {
    return among(List.of(type.getEnumConstants()));
  }

  private Typed<T> among(List<Enum<?>> constants) {
    choices = constants;
    return this;
  }

  /** The unit of the numbers. */
  Typed<T> unit(String symbol) {
    unit = symbol;
    return this;
  }

  /** What is taken where the cell is empty. */
  Typed<T> usual(T value) {
    usual = value;
    return this;
  }

  /** The column must be there, and its cells filled. */
  Typed<T> needed() {
    needed = true;
    return this;
  }

  /** What is taken where the cell is empty. */
  Optional<T> usual() {
    return Optional.ofNullable(usual);
  }

  Format<T> format() {
    return format;
  }

  Column in(String file, String part) {
    String otherwise = usual().map(format::write).orElse("");
    return new Column(file, name, kind, unit, bounds, choices, otherwise, needed, part);
  }
}
