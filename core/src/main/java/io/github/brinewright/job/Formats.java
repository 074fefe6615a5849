package io.github.brinewright.job;

import io.github.brinewright.home.Place;
import io.github.brinewright.job.Problem.Argument;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Texts, dates and choices in cells. */
final class Formats {
  private static final Pattern FORMULA = Pattern.compile("^[=@].*|^[+-][^\\d(\\s].*");
  private static final Pattern SHORT_NAME =
      Pattern.compile("[\\p{L}\\p{N}_-][\\p{L}\\p{N}._-]{0,39}");
  private static final Pattern COLOUR = Pattern.compile("#[0-9A-Fa-f]{6}");
  private static final Pattern COUNT = Pattern.compile("\\d{1,3}");

  private Formats() {}

  /** What joins letters of some scripts, and signs of some emoji. */
  private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);

  /**
   * A text that a person wrote; one that a spreadsheet would run as a formula, or that documents
   * cannot print, is refused.
   */
  static final Format<String> TEXT =
      text(cell -> plain(cell, Set.of()).flatMap(text -> printable(cell)));

  /** The same in any script; who reads it sees to what is printed in its place. */
  static final Format<String> ANY_SCRIPT = text(cell -> plain(cell, JOINERS));

  private static Optional<String> plain(Cell cell, Set<Integer> permitted) {
    if (FORMULA.matcher(cell.text()).matches()) {
      return cell.refuse(ProblemCode.FORMULA);
    }
    List<Integer> invisible =
        cell.text()
            .codePoints()
            .filter(c -> Printable.isInvisible(c) && !permitted.contains(c))
            .distinct()
            .boxed()
            .toList();
    return invisible.isEmpty()
        ? Optional.of(cell.text())
        : cell.refuse(ProblemCode.CONTROL_CHARACTER, new Argument.Text(Printable.named(invisible)));
  }

  private static Optional<String> printable(Cell cell) {
    List<Integer> lacking = Printable.lacking(cell.text());
    return lacking.isEmpty()
        ? Optional.of(cell.text())
        : cell.refuse(ProblemCode.NOT_PRINTABLE, new Argument.Text(Printable.named(lacking)));
  }

  /** Letters, digits, points, hyphens and underscores. */
  static final Format<String> SHORT_NAME_TEXT = matching(SHORT_NAME, ProblemCode.NOT_A_SHORT_NAME);

  /** A number sign and six hexadecimal digits. */
  static final Format<String> COLOUR_TEXT = matching(COLOUR, ProblemCode.NOT_A_COLOUR);

  /** Year-month-day. */
  static final Format<LocalDate> DATE =
      parsed(Formats::date, DateTimeException.class, ProblemCode.NOT_A_DATE);

  /** A language that documents are written in, with its country. */
  static final Format<Locale> LOCALE =
      text(cell ->
              Languages.canWrite(Locale.forLanguageTag(cell.text()))
                  ? Optional.of(cell.text())
                  : cell.refuse(ProblemCode.NOT_A_LOCALE))
          .as(Locale::forLanguageTag, Locale::toLanguageTag);

  /** Three letters. */
  static final Format<CurrencyUnit> CURRENCY =
      parsed(CurrencyUnit::of, IllegalCurrencyException.class, ProblemCode.NOT_A_CURRENCY);

  /** A country or a part of one, in letters of either case. */
  static final Format<Place> PLACE =
      parsed(
              text -> Place.of(text.toUpperCase(Locale.ROOT)).code(),
              IllegalArgumentException.class,
              ProblemCode.NOT_A_PLACE)
          .as(Place::of, Place::code);

  /** A day that somebody alive may have written: of the years 1900 to 2199. */
  private static LocalDate date(String text) {
    LocalDate day = LocalDate.parse(text);
    if (day.getYear() < 1900 || day.getYear() > 2199) {
      throw new DateTimeException("not of our time");
    }
    return day;
  }

  /** Whether a text is a colour. */
  static boolean isColour(String text) {
    return COLOUR.matcher(text).matches();
  }

  /** How a constant is written in a cell. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** How all constants of a type are written. */
  static List<String> words(Class<? extends Enum<?>> type) {
    return Stream.of(type.getEnumConstants()).map(Formats::word).toList();
  }

  /** One of the constants of a type. */
  static <E extends Enum<E>> Format<E> choice(Class<E> type) {
    return choice(type, Map.of());
  }

  /** One of the constants of a type; some are understood by another word too. */
  static <E extends Enum<E>> Format<E> choice(Class<E> type, Map<String, E> also) {
    return new Format<>() {
      @Override
      public Optional<E> read(Cell cell) {
        String text = cell.text().toLowerCase(Locale.ROOT);
        return Stream.of(type.getEnumConstants())
            .filter(each -> word(each).equals(text))
            .findFirst()
            .or(() -> Optional.ofNullable(also.get(text)))
            .or(() -> cell.refuse(ProblemCode.NOT_A_CHOICE, new Argument.Words(words(type))));
      }

      @Override
      public String write(E value) {
        return word(value);
      }
    };
  }

  /** Constants separated by spaces. */
  static <E extends Enum<E>> Format<Set<E>> choices(Class<E> type) {
    return NumberFormats.listOf(choice(type)).as(EnumSet::copyOf, List::copyOf);
  }

  /** Pairs of a number and a constant, as in "2 shower 3 lavatory". */
  static <E extends Enum<E>> Format<Map<E, Integer>> counts(Class<E> type) {
    Format<E> name = choice(type);
    return new Format<>() {
      @Override
      public Optional<Map<E, Integer>> read(Cell cell) {
        List<String> parts = Arrays.asList(cell.text().split("\\s+"));
        if (parts.size() % 2 != 0) {
          return cell.refuse(ProblemCode.NOT_PAIRS);
        }
        Map<E, Integer> counts = new EnumMap<>(type);
        for (int i = 0; i < parts.size(); i += 2) {
          Optional<Integer> count = count(cell.part(parts.get(i)));
          Optional<E> kind = name.read(cell.part(parts.get(i + 1)));
          if (count.isPresent() && kind.isPresent()) {
            counts.merge(kind.get(), count.get(), Integer::sum);
          }
        }
        return Optional.of(counts);
      }

      @Override
      public String write(Map<E, Integer> counts) {
        return new EnumMap<>(counts)
            .entrySet().stream()
                .map(each -> each.getValue() + " " + name.write(each.getKey()))
                .collect(Collectors.joining(" "));
      }
    };
  }

  private static Optional<Integer> count(Cell cell) {
    boolean digits = COUNT.matcher(cell.text()).matches();
    return digits && cell.column().bounds().hold(Integer.parseInt(cell.text()))
        ? Optional.of(Integer.valueOf(cell.text()))
        : cell.refuse(ProblemCode.NOT_A_COUNT, Argument.Number.of(cell.column().bounds().high()));
  }

  private static Format<String> matching(Pattern pattern, ProblemCode otherwise) {
    return text(
        cell -> pattern.matcher(cell.text()).matches() ? printable(cell) : cell.refuse(otherwise));
  }

  private static Format<String> text(Function<Cell, Optional<String>> read) {
    return new Format<>() {
      @Override
      public Optional<String> read(Cell cell) {
        return read.apply(cell);
      }

      @Override
      public String write(String value) {
        return value;
      }
    };
  }

  private static <T> Format<T> parsed(
      Function<String, T> parse, Class<? extends RuntimeException> refusal, ProblemCode code) {
    return new Format<>() {
      @Override
      public Optional<T> read(Cell cell) {
        try {
          return Optional.of(parse.apply(cell.text()));
        } catch (RuntimeException refused) {
          if (refusal.isInstance(refused)) {
            return cell.refuse(code);
          }
          throw refused;
        }
      }

      @Override
      public String write(T value) {
        return value.toString();
      }
    };
  }
}
