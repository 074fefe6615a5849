package io.github.brinewright.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * One row of a file. Each reading of a cell that fails notes a problem and returns the default, so
 * that all problems of a row come out in one pass.
 */
final class Row {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,12})?");
  private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?[\\d.]*,[\\d.,]*");
  private static final Pattern FORMULA = Pattern.compile("^[=@].*|^[+-][^\\d(\\s].*");
  private static final String NOT_TESTED = "not tested";

  private final String file;
  private final int line;
  private final List<Problem> problems;
  private final Map<String, String> values = new HashMap<>();
  private boolean broken;

  Row(String file, int line, List<Problem> problems) {
    this.file = file;
    this.line = line;
    this.problems = problems;
  }

  Row with(Map<String, String> cells) {
    values.putAll(cells);
    return this;
  }

  /** Whether any reading of this row has failed. */
  boolean broken() {
    return broken;
  }

  int line() {
    return line;
  }

  void note(String column, String value, String advice) {
    broken = true;
    problems.add(new Problem(file, line, column, value, advice));
  }

  private Optional<String> cell(String column) {
    return Optional.ofNullable(values.get(column))
        .filter(value -> !value.isEmpty() && !value.equalsIgnoreCase(NOT_TESTED));
  }

  boolean has(String column) {
    return cell(column).isPresent();
  }

  /** A text that a person wrote; one that a spreadsheet would run as a formula is refused. */
  Optional<String> text(String column) {
    Optional<String> text = cell(column);
    if (text.filter(value -> FORMULA.matcher(value).matches()).isPresent()) {
      note(column, text.get(), "looks like a spreadsheet formula; write plain text");
      return Optional.empty();
    }
    if (text.filter(value -> value.chars().anyMatch(Character::isISOControl)).isPresent()) {
      note(column, text.get(), "holds a line break or control character; write one plain line");
      return Optional.empty();
    }
    return text;
  }

  /** A short name: letters, digits, hyphen, underscore. */
  String id(String column) {
    String id = text(column).orElse("");
    if (!id.matches("[\\p{L}\\p{N}_-]{1,40}")) {
      note(column, id, "must be 1 to 40 letters, digits, hyphens or underscores");
    }
    return id;
  }

  OptionalDouble number(String column, double low, double high) {
    Optional<String> cell = cell(column);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    Optional<BigDecimal> number = parse(column, cell.get());
    if (number.isEmpty()) {
      return OptionalDouble.empty();
    }
    double value = number.get().doubleValue();
    if (value < low || value > high) {
      note(column, cell.get(), "must be from " + plain(low) + " to " + plain(high));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  private static String plain(double limit) {
    return BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
  }

  private Optional<BigDecimal> parse(String column, String text) {
    if (NUMBER.matcher(text).matches()) {
      return Optional.of(new BigDecimal(text));
    }
    note(
        column,
        text,
        COMMA_NUMBER.matcher(text).matches()
            ? "has a comma; write decimals with a point and thousands without a mark"
            : "is not a number; write digits with a point for decimals, without a unit");
    return Optional.empty();
  }

  /** A number that must be there. */
  double required(String column, double low, double high) {
    if (!has(column)) {
      note(
          column, "", "is empty; a value from " + plain(low) + " to " + plain(high) + " is needed");
      return low;
    }
    return number(column, low, high).orElse(low);
  }

  /** A number that must be greater than zero and is not asked for again when it is missing. */
  double number(String column, double low, double high, double otherwise) {
    return number(column, low, high).orElse(otherwise);
  }

  void ifNumber(String column, double low, double high, Consumer<Double> use) {
    number(column, low, high).ifPresent(use::accept);
  }

  /** An exact decimal of at most six digits after the point, for money and rates. */
  BigDecimal decimal(String column, double low, double high, String otherwise) {
    Optional<String> cell = cell(column);
    if (cell.isEmpty()) {
      return new BigDecimal(otherwise);
    }
    return number(column, low, high).isPresent()
        ? new BigDecimal(cell.get())
        : new BigDecimal(otherwise);
  }

  /** Numbers separated by spaces. */
  List<BigDecimal> numbers(String column, double low, double high) {
    List<BigDecimal> numbers = new ArrayList<>();
    for (String part : parts(column)) {
      Optional<BigDecimal> number = parse(column, part);
      if (number.isPresent()
          && (number.get().doubleValue() < low || number.get().doubleValue() > high)) {
        note(column, part, "must be from " + plain(low) + " to " + plain(high));
      } else {
        number.ifPresent(numbers::add);
      }
    }
    return numbers;
  }

  private List<String> parts(String column) {
    return cell(column).map(text -> Arrays.asList(text.split("\\s+"))).orElse(List.of());
  }

  Optional<LocalDate> date(String column) {
    Optional<String> cell = cell(column);
    try {
      return cell.map(LocalDate::parse);
    } catch (DateTimeParseException notIso) {
      note(column, cell.get(), "is not a date; write year-month-day, as in 2026-03-31");
      return Optional.empty();
    }
  }

  boolean yes(String column, boolean otherwise) {
    return choice(column, YesNo.class).map(answer -> answer == YesNo.YES).orElse(otherwise);
  }

  private enum YesNo {
    YES,
    NO
  }

  <E extends Enum<E>> Optional<E> choice(String column, Class<E> type) {
    return cell(column).flatMap(text -> constant(column, text, type));
  }

  /** Choices separated by spaces. */
  <E extends Enum<E>> Set<E> choices(String column, Class<E> type) {
    Set<E> chosen = EnumSet.noneOf(type);
    parts(column).forEach(text -> constant(column, text, type).ifPresent(chosen::add));
    return chosen;
  }

  /** Pairs of a number and a choice, as in "2 shower 3 lavatory". */
  <E extends Enum<E>> Map<E, Integer> counts(String column, Class<E> type, int most) {
    List<String> parts = parts(column);
    Map<E, Integer> counts = new EnumMap<>(type);
    if (parts.size() % 2 != 0) {
      note(column, String.join(" ", parts), "must be pairs of a number and a name");
      return counts;
    }
    for (int i = 0; i < parts.size(); i += 2) {
      String number = parts.get(i);
      if (!number.matches("\\d{1,3}")
          || Integer.parseInt(number) < 1
          || Integer.parseInt(number) > most) {
        note(column, number, "must be a whole number from 1 to " + most + " before each name");
      } else {
        constant(column, parts.get(i + 1), type)
            .ifPresent(kind -> counts.merge(kind, Integer.valueOf(number), Integer::sum));
      }
    }
    return counts;
  }

  private <E extends Enum<E>> Optional<E> constant(String column, String text, Class<E> type) {
    List<String> names = Arrays.stream(type.getEnumConstants()).map(SiteCells::word).toList();
    int index = names.indexOf(text.toLowerCase(Locale.ROOT));
    if (index < 0) {
      note(column, text, "is not known here; write one of " + String.join(", ", names));
      return Optional.empty();
    }
    return Optional.of(type.getEnumConstants()[index]);
  }

  /** A constant by its id in a map; an unknown one is noted with the nearest known. */
  <T> Optional<T> reference(String column, Map<String, T> known, String otherwise) {
    String id = text(column).orElse(otherwise);
    T found = known.get(id);
    if (found == null) {
      note(column, id, "is not known; " + Nearest.hint(id, known.keySet()));
    }
    return Optional.ofNullable(found);
  }

  /** What the supplier makes, or empty when this row is broken or the library refuses it. */
  <T> Optional<T> build(Supplier<T> supplier) {
    if (broken) {
      return Optional.empty();
    }
    try {
      return Optional.of(supplier.get());
    } catch (IllegalArgumentException refused) {
      note("", "", "cannot be used: " + refused.getMessage());
      return Optional.empty();
    }
  }
}
