package io.github.brinewright.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Numbers in cells: digits with a point for decimals, without a unit. */
final class NumberFormats {
  private static final int MOST_DECIMALS = 20;
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1," + MOST_DECIMALS + "})?");
  private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?[\\d.]*,[\\d.,]*");
  private static final int SHORTEST = 1;
  private static final int LONGEST = 19;

  private NumberFormats() {}

  /** Whether a text is a number as {@link #AMOUNT} takes it. */
  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** Whether a text would be a number but for its commas. */
  static boolean hasComma(String text) {
    return COMMA_NUMBER.matcher(text).matches();
  }

  /** An exact decimal within the bounds of its column. */
  static final Format<BigDecimal> AMOUNT =
      new Format<>() {
        @Override
        public Optional<BigDecimal> read(Cell cell) {
          if (!isNumber(cell.text())) {
            return cell.refuse(
                hasComma(cell.text()) ? ProblemCode.COMMA : ProblemCode.NOT_A_NUMBER);
          }
          BigDecimal number = new BigDecimal(cell.text());
          return cell.column().bounds().hold(number.doubleValue())
              ? Optional.of(number)
              : cell.refuseWithBounds(ProblemCode.OUT_OF_RANGE);
        }

        @Override
        public String write(BigDecimal value) {
          return value.toPlainString();
        }
      };

  /** A whole number within the bounds of its column. */
  static final Format<Integer> WHOLE =
      new Format<>() {
        @Override
        public Optional<Integer> read(Cell cell) {
          Optional<BigDecimal> number = AMOUNT.read(cell);
          boolean broken = number.filter(n -> n.stripTrailingZeros().scale() > 0).isPresent();
          return broken
              ? cell.refuseWithBounds(ProblemCode.NOT_WHOLE)
              : number.map(BigDecimal::intValue);
        }

        @Override
        public String write(Integer value) {
          return value.toString();
        }
      };

  /**
   * A value made from a number. It is written with the fewest digits that give it back.
   *
   * @param make makes the value from the number that is written
   * @param number the number of a value, but for the last bit
   */
  static <Q> Format<Q> of(DoubleFunction<Q> make, ToDoubleFunction<Q> number) {
    return new Format<>() {
      @Override
      public Optional<Q> read(Cell cell) {
        return AMOUNT.read(cell).map(decimal -> make.apply(decimal.doubleValue()));
      }

      @Override
      public String write(Q value) {
        return shortest(number.applyAsDouble(value), value, make);
      }
    };
  }

  /** Values separated by spaces. */
  static <T> Format<List<T>> listOf(Format<T> one) {
    return new Format<>() {
      @Override
      public Optional<List<T>> read(Cell cell) {
        List<T> values = new ArrayList<>();
        List<String> parts = Arrays.asList(cell.text().split("\\s+"));
        parts.forEach(part -> one.read(cell.part(part)).ifPresent(values::add));
        return values.size() == parts.size() ? Optional.of(values) : Optional.empty();
      }

      @Override
      public String write(List<T> values) {
        return values.stream().map(one::write).collect(Collectors.joining(" "));
      }
    };
  }

  /** Unit conversion may miss the last bit, so its neighbours are tried too. */
  private static <Q> String shortest(double number, Q value, DoubleFunction<Q> make) {
    for (double near : new double[] {number, Math.nextUp(number), Math.nextDown(number)}) {
      for (int digits = SHORTEST; digits <= LONGEST; digits++) {
        BigDecimal decimal = new BigDecimal(near).round(new MathContext(digits));
        if (decimal.scale() <= MOST_DECIMALS && make.apply(decimal.doubleValue()).equals(value)) {
          return decimal.toPlainString();
        }
      }
    }
    return new BigDecimal(number)
        .setScale(MOST_DECIMALS, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
